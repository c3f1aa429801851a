package outrigger.generator.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import outrigger.generator.param.InputException;

class PlainMakeTest {
  private static final long SEED = 7_115;
  private static final List<String> PIECES = List.of("--width", "--width=0.5in", "--set", "--set=2,3", "--name", "--name=a",
      "--limit", "--limit=line=0.5", "--load=X", "--material=PLA", "--picture", "--write-anyway", "--json", "--presets=",
      "--name=", "--help", "--version", "--", "-x", "--widht", "2,3", "12", "b", "-1", "", "--picture=true", "--out=");

  @TempDir
  Path folder;

  private static boolean isPlain(String... args) {
    return PlainMake.read(Hook.KINDS, args).isPresent();
  }

  @Test
  void read_textsAndFlags_isPlain() {
    assertTrue(isPlain("make", "hook"));
    assertTrue(isPlain("make", "hook", "--width", "0.5in", "--name=a", "--json", "--limit", "line=1", "--limit=gap=1"));
  }

  @Test
  void read_anythingElse_isLeftToTheParser() {
    for (List<String> args : List.of(List.of("make"), List.of("make", "hoock"), List.of("--json", "make", "hook"),
        List.of("make", "hook", "--help"), List.of("make", "hook", "--width"), List.of("make", "hook", "--width="),
        List.of("make", "hook", "--width", "-1"), List.of("make", "hook", "--name", "a", "--name", "b"),
        List.of("make", "hook", "--picture", "--picture"), List.of("make", "hook", "--picture=true"),
        List.of("make", "hook", "a"), List.of("check", "hook"))) {
      assertFalse(isPlain(args.toArray(String[]::new)), args.toString());
    }
  }

  /** Whatever is taken as plain does what it does by way of the parser. */
  @Test
  void read_anyArguments_doesWhatTheParserMakesOfThem() throws IOException {
    Random random = new Random(SEED);
    int plain = 0;
    for (int i = 0; i < 400; i++) {
      List<String> args = new ArrayList<>(List.of("make", "hook", "--out", folder.toString()));
      for (int n = random.nextInt(5); n > 0; n--) {
        args.add(PIECES.get(random.nextInt(PIECES.size())));
      }
      Optional<Command> command = PlainMake.read(Hook.KINDS, args.toArray(String[]::new));
      if (command.isPresent()) {
        plain++;
        String[] all = args.toArray(String[]::new);
        List<String> parsed = result(console -> new Parser(Hook.KINDS).execute(console, all), args);
        assertEquals(parsed, result(command.get(), args), "seed " + SEED + ", " + args);
      }
    }
    assertTrue(plain > 50, plain + " plain");
  }

  /** Exit code or fault, what was printed, and what was written, by name and content. */
  private List<String> result(Command command, List<String> args) throws IOException {
    StringWriter out = new StringWriter();
    PrintWriter printer = new PrintWriter(out);
    List<String> result = new ArrayList<>();
    try {
      result.add("exit " + command.run(new Console(printer, printer, args.contains("--json"), false)));
    } catch (InputException e) {
      result.add(e.getMessage());
    }
    printer.flush();
    result.add(out.toString());
    for (String name : BadOptionsTest.list(folder)) {
      result.add(name + " " + Arrays.hashCode(Files.readAllBytes(folder.resolve(name))));
      Files.delete(folder.resolve(name));
    }
    return result;
  }
}
