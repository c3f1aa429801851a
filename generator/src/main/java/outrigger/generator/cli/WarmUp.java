package outrigger.generator.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import outrigger.generator.accessory.Accessories;

/**
 * Runs what most commands run, into a folder that is removed afterwards, so that the launcher can keep the classes loaded
 * for later starts. No command of the program.
 */
final class WarmUp {
  private static final String PLAN = "title = \"warm-up\"\n[[part]]\nkind = \"bumper-spacer\"\nthickness = [2, \"0.1in\"]\n";

  private WarmUp() {}

  /** @param args one folder, made and removed */
  public static void main(String[] args) throws IOException {
    System.console();
    Path folder = Path.of(args[0]);
    Files.createDirectories(folder);
    Path plan = Files.writeString(folder.resolve("plan.toml"), PLAN);
    for (String kind : Accessories.kinds().names()) {
      run("make", kind, "--out", folder.toString());
      run("check", folder.resolve(kind + ".stl").toString());
      run("make", kind, "--help");
    }
    run("batch", plan.toString(), "--out", folder.toString());
    run("batch", plan.toString(), "--out", folder.toString(), "--json");
    run("hardware", plan.toString());
    run("hold");
    run("stack", "4.2");
    run("presets", "printers", "--sources");
    run("--help");
    remove(folder);
  }

  private static void run(String... args) {
    try (PrintWriter nowhere = new PrintWriter(Writer.nullWriter())) {
      Main.run(args, nowhere, nowhere);
    }
  }

  private static void remove(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.toList()) {
        Files.delete(file);
      }
    }
    Files.delete(folder);
  }
}
