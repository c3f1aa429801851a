package outrigger.functions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Classes made plain run as they were compiled. Judge of both is Java itself: it verifies each class it loads as the Java
 * Virtual Machine Specification (SE 17, chapter 4.10) says, and makes function values up at run time for the one.
 */
class PlainFunctionsTest {
  /** Every form of function value: what is captured, boxed, widened, called, given. */
  private static final String SOURCE = """
      package sample;
      import java.util.*;
      import java.util.function.*;
      import java.util.stream.*;
      public class Sample implements Supplier<String> {
        private final int base;
        private final StringBuilder told = new StringBuilder();
        public Sample() { this(7); }
        private Sample(int base) { this.base = base; }
        private int plus(int x) { return base + x; }
        private static long twice(int x) { return 2L * x; }
        private String own(Object o) { return "own " + o; }
        interface Shape { double area(); private double half() { return area() / 2; }
          default Supplier<Double> halved() { return this::half; } static Shape of(double a) { return () -> a; } }
        record Pair<A, B>(A a, B b) { static <T extends Comparable<T>> T most(T a, T b) { return a.compareTo(b) > 0 ? a : b; } }
        interface Many { String join(byte b, short s, char c, int i, long l, float f, double d, boolean z, String t); }
        interface Wide { double of(int x, long y, float z); }
        interface Bytes { Object of(byte x); }
        static double sum(double x, double y, double z) { return x + 2 * y + 4 * z; }
        static String list(Object... all) { return Arrays.toString(all); }
        static <T, R> R use(T t, Function<T, R> f) { return f.apply(t); }
        private final class Inner { private String hidden() { return "hidden " + base; }
          Supplier<String> later() { return () -> hidden() + plus(1); } }
        static class Up { protected String say() { return "up"; } }
        static class Down extends Up { @Override protected String say() { return "down"; }
          Supplier<String> over() { return super::say; } }
        void tell(Object o) { told.append(o).append(' '); }
        @Override public String get() {
          byte b = 1; short s = -2; char c = 'c'; int i = 4; long l = 5_000_000_000L; float f = 6.5f; double d = 7.25; boolean z = true;
          Supplier<String> caught = () -> "" + b + s + c + i + l + f + d + z + base + told.length();
          tell(caught.get());
          Many many = (b2, s2, c2, i2, l2, f2, d2, z2, t) -> t + b2 + s2 + c2 + i2 + l2 + f2 + d2 + z2 + base;
          tell(many.join(b, s, c, i, l, f, d, z, "t"));
          tell(IntStream.range(0, 4).map(this::plus).boxed().map(String::valueOf).collect(Collectors.joining(",")));
          IntToLongFunction twice = Sample::twice; tell(twice.applyAsLong(21));
          Function<Integer, Long> boxed = Sample::twice; tell(boxed.apply(22));
          ToDoubleFunction<Integer> widened = Sample::twice; tell(widened.applyAsDouble(23));
          Wide wide = Sample::sum; tell(wide.of(1, 2L, 3f));
          Bytes bytes = x -> x; tell(bytes.of((byte) -3));
          Bytes known = Byte::valueOf; tell(known.of((byte) 9));
          tell(Shape.of(8).halved().get());
          BinaryOperator<String> most = Pair::most; tell(most.apply("a", "b"));
          BiFunction<String, Integer, Pair<String, Integer>> pair = Pair::new; tell(pair.apply("p", 1));
          Function<Integer, int[]> array = int[]::new; tell(array.apply(3).length);
          Function<Integer, List<String>> room = ArrayList::new; tell(room.apply(3));
          Supplier<Inner> inner = Inner::new; tell(inner.get().later().get());
          tell(new Down().over().get());
          Function<Object, String> own = this::own; tell(own.apply(1.5));
          BiFunction<String, String, String> join = Sample::list; tell(join.apply("x", "y"));
          Consumer<String> drops = new HashSet<String>()::add; drops.accept("q");
          List<Integer> adding = new ArrayList<>(); IntConsumer takes = adding::add; takes.accept(5); tell(adding);
          LongSupplier length = told::length; tell(length.getAsLong() > 9);
          Function<Pair<String, Integer>, Integer> second = Pair::b; int got = second.apply(new Pair<>("z", 26)); tell(got);
          ToIntFunction<Pair<String, Integer>> plain = Pair::b; tell(plain.applyAsInt(new Pair<>("z", 27)));
          Comparator<String> order = Comparator.comparing(String::length); order = order.thenComparing(Comparator.naturalOrder());
          tell(Stream.of("ccc", "b", "a").sorted(order).toList());
          Supplier<Supplier<String>> nested = () -> () -> "nested" + base + i; tell(nested.get().get());
          Runnable runs = () -> tell("ran"); runs.run();
          Callback same = () -> 1; tell(use(same, Callback::call));
          Supplier<Runnable> none = () -> Sample::nothing; tell(none.get() == none.get());
          Function<String, Object> cast = String.class::cast; tell(cast.apply("cast"));
          int[] numbers = {3, 4}; Supplier<int[]> copied = numbers::clone; tell(copied.get()[1]);
          Map<String, Integer> counted = new TreeMap<>(); counted.merge("k", 2, Integer::sum); counted.merge("k", 3, Integer::sum);
          tell(counted);
          switch (i) { case 1 -> tell("one"); case 4 -> tell(Optional.of("four").map(x -> x + base).get()); default -> tell("?"); }
          switch (told.length() % 2 == 5 ? "never" : "x" + i) { case "x4" -> tell(use(d, x -> x * i)); default -> tell("?"); }
          return told.toString();
        }
        static void nothing() { }
        interface Callback { int call(); }
      }
      """;

  @TempDir
  private Path folder;

  /** Keeps classes to itself, so that each kind of the same class runs. */
  private static final class Memory extends ClassLoader {
    private final Map<String, byte[]> files;

    Memory(Map<String, byte[]> files) {
      super(PlainFunctionsTest.class.getClassLoader());
      this.files = files;
    }

    @Override
    protected Class<?> findClass(String name) throws ClassNotFoundException {
      byte[] bytes = files.get(name.replace('.', '/') + ".class");
      if (bytes == null) {
        throw new ClassNotFoundException(name);
      }
      return defineClass(name, bytes, 0, bytes.length);
    }
  }

  private Map<String, byte[]> compiled() throws IOException {
    Path source = Files.writeString(folder.resolve("Sample.java"), SOURCE);
    int result = ToolProvider.getSystemJavaCompiler().run(null, null, null, "-d", folder.toString(),
        "-XDstringConcat=inline", source.toString());
    assertEquals(0, result);
    Map<String, byte[]> files = new LinkedHashMap<>();
    try (Stream<Path> all = Files.list(folder.resolve("sample"))) {
      for (Path file : all.sorted().toList()) {
        files.put("sample/" + file.getFileName(), Files.readAllBytes(file));
      }
    }
    return files;
  }

  private static String run(Map<String, byte[]> files) throws ReflectiveOperationException {
    Object sample = new Memory(files).loadClass("sample.Sample").getConstructor().newInstance();
    return (String) ((Supplier<?>) sample).get();
  }

  private static int madeUp(Map<String, byte[]> files) {
    int[] count = new int[1];
    files.values().forEach(bytes -> {
      ClassFile file = new ClassFile(bytes);
      file.eachMadeUp(place -> {
        int maker = file.pool().number(file.maker(file.pool().number(file.constant(place), 0)).get(0), 1);
        count[0] += file.pool().owner(maker).endsWith("LambdaMetafactory") ? 1 : 0;
      });
    });
    return count[0];
  }

  @Test
  void of_everyForm_runsAsCompiled() throws IOException, ReflectiveOperationException {
    Map<String, byte[]> files = compiled();
    Map<String, byte[]> plain = PlainFunctions.of(files);
    assertTrue(madeUp(files) >= 40, () -> "only " + madeUp(files));
    // left alone: b of a pair as an int, of which the class file says only that it is an object
    assertEquals(1, madeUp(plain));
    assertEquals(run(files), run(plain));
  }

  @Test
  void of_everyForm_verifiesEveryClass() throws IOException, ReflectiveOperationException {
    Map<String, byte[]> plain = PlainFunctions.of(compiled());
    Memory memory = new Memory(plain);
    for (String entry : plain.keySet()) {
      String name = entry.substring(0, entry.length() - ".class".length()).replace('/', '.');
      assertEquals(name, Class.forName(name, true, memory).getName());
    }
  }

  @Test
  void of_sameTwice_isTheSameAndNothingMore() throws IOException {
    Map<String, byte[]> once = PlainFunctions.of(compiled());
    Map<String, byte[]> again = PlainFunctions.of(compiled());
    Map<String, byte[]> twice = PlainFunctions.of(once);
    assertEquals(hashes(once), hashes(again));
    assertEquals(hashes(once), hashes(twice));
    assertNotEquals(hashes(compiled()), hashes(once));
  }

  private static Map<String, Integer> hashes(Map<String, byte[]> files) {
    Map<String, Integer> hashes = new LinkedHashMap<>();
    files.forEach((name, bytes) -> hashes.put(name, Arrays.hashCode(bytes)));
    return hashes;
  }

  @Test
  void main_ownClassesInAJar_replacesTheJar() throws Exception {
    Path jar = folder.resolve("own.jar");
    Map<String, byte[]> files = compiled();
    try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(jar))) {
      files.forEach((name, bytes) -> {
        try {
          out.putNextEntry(new ZipEntry(name));
          out.write(bytes);
        } catch (IOException e) {
          throw new UncheckedIOException(e);
        }
      });
    }
    PlainFunctions.main(new String[] {jar.toString()});
    try (URLClassLoader loader = new URLClassLoader(new URL[] {jar.toUri().toURL()})) {
      Object sample = loader.loadClass("sample.Sample").getConstructor().newInstance();
      assertEquals(run(files), ((Supplier<?>) sample).get());
    }
  }
}
