package outrigger.functions;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/** Makes plain classes of the function values in jars. */
public final class PlainFunctions {
  private static final String ENDING = ".class";
  /** Classes of one nest may call what is private among them from this version of class files on (Java 11). */
  private static final int NESTS = 55;

  private final Map<String, byte[]> entries;
  private final Map<String, ClassFile> classes = new LinkedHashMap<>();

  private PlainFunctions(Map<String, byte[]> entries) {
    this.entries = entries;
    entries.forEach((entry, bytes) -> {
      if (entry.endsWith(ENDING) && !entry.endsWith("-info" + ENDING)) {
        ClassFile file = new ClassFile(bytes);
        if ((file.version() & 0xffff) >= NESTS && entry.equals(file.name() + ENDING)) {
          classes.put(file.name(), file);
        }
      }
    });
  }

  /** @param args jars; each is replaced by one that does the same */
  public static void main(String[] args) throws IOException {
    for (String arg : args) {
      Path jar = Path.of(arg);
      Path made = jar.resolveSibling(jar.getFileName() + ".made");
      write(of(read(jar)), made);
      Files.move(made, jar, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  /**
   * The files of a jar with the classes made plain and those of their function values added.
   *
   * @param entries bytes by path; the classes of a nest all among them
   */
  static Map<String, byte[]> of(Map<String, byte[]> entries) throws IOException {
    PlainFunctions plain = new PlainFunctions(new LinkedHashMap<>(entries));
    for (ClassFile file : plain.classes.values()) {
      plain.replace(file);
    }
    for (ClassFile file : plain.classes.values()) {
      if (file.isChanged()) {
        plain.entries.put(file.name() + ENDING, file.bytes());
      }
    }
    return plain.entries;
  }

  private void replace(ClassFile file) {
    ClassFile nest = classes.get(file.nest());
    if (nest == null) {
      return;
    }
    Map<Integer, String> made = new HashMap<>();
    file.eachMadeUp(place -> {
      int constant = file.constant(place);
      Optional<FunctionSite> site = FunctionSite.read(file, constant);
      if (site.isPresent()) {
        String name = made.computeIfAbsent(constant, c -> add(file, nest, site.get(), made.size()));
        file.call(place, name, FunctionClass.MAKER, site.get().factory());
      }
    });
  }

  private String add(ClassFile file, ClassFile nest, FunctionSite site, int number) {
    String name = file.name() + "$$Function" + number;
    entries.put(name + ENDING, FunctionClass.bytes(name, site, file.version(), nest.name()));
    nest.addToNest(name);
    return name;
  }

  private static Map<String, byte[]> read(Path jar) throws IOException {
    Map<String, byte[]> entries = new LinkedHashMap<>();
    try (ZipInputStream in = new ZipInputStream(Files.newInputStream(jar))) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        entries.put(entry.getName(), in.readAllBytes());
      }
    }
    return entries;
  }

  /** As they are, not packed: nothing is to be unpacked at a start. */
  private static void write(Map<String, byte[]> entries, Path jar) throws IOException {
    try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(jar))) {
      for (Map.Entry<String, byte[]> entry : entries.entrySet()) {
        ZipEntry file = new ZipEntry(entry.getKey());
        CRC32 sum = new CRC32();
        sum.update(entry.getValue());
        file.setMethod(ZipEntry.STORED);
        file.setSize(entry.getValue().length);
        file.setCrc(sum.getValue());
        file.setTime(0);
        out.putNextEntry(file);
        out.write(entry.getValue());
      }
    }
  }
}
