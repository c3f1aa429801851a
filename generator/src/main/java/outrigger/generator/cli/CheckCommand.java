package outrigger.generator.cli;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import outrigger.generator.param.Fault;
import outrigger.generator.param.Given;
import outrigger.generator.param.InputException;
import outrigger.generator.param.NearMiss;
import outrigger.generator.param.Origin;
import outrigger.generator.param.Texts;
import outrigger.generator.plan.Materials;
import outrigger.generator.print.Limits;
import outrigger.generator.run.Progress;
import outrigger.presets.Printer;
import outrigger.presets.Shelf;
import outrigger.shapes.check.CheckedMesh;
import outrigger.shapes.check.Proof;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.ShapeException;
import outrigger.shapes.num.Workers;
import outrigger.shapes.print.PrintLimits;
import outrigger.shapes.print.PrintReport;
import outrigger.shapes.print.Printability;
import outrigger.shapes.print.Specimen;
import outrigger.shapes.stl.StlException;
import outrigger.shapes.stl.StlFile;
import outrigger.shapes.stl.StlReader;
import picocli.CommandLine;

/** {@code check FILE...}: whether files are sound, and what is wrong where. */
@CommandLine.Command(name = "check", sortOptions = false,
    header = "Tell whether STL files are sound and will print, what is wrong with them and where.",
    description = "A file is sound when every edge joins two facets, none cross, none is without area, and the inside "
        + "is inside. Coordinates that are not on the program's grid of 2^-14 mm are rounded to it first. A "
        + "sound file is measured as it stands: Z up, its lowest point on the bed.")
final class CheckCommand implements Command {
  private static final long BYTES_PER_MIB = 1 << 20;

  @CommandLine.Parameters(paramLabel = "FILE", arity = "1..*", description = "STL files, binary or ASCII, in mm.")
  private List<String> files = new ArrayList<>();

  @CommandLine.Option(names = "--printer", paramLabel = "PRINTER",
      description = "What it is to be printed on. (a name of the table printers; default demo-0.4)")
  private String printer = "demo-0.4";

  @CommandLine.Option(names = "--material", paramLabel = "MATERIAL",
      description = "What it is to be printed in. (a name of the table materials)")
  private String material = "";

  @CommandLine.Option(names = "--picture",
      description = "Draw what was measured on each sound file, NAME.map.png, into the folder of --out.")
  private boolean picture;

  @CommandLine.Option(names = "--out", paramLabel = "FOLDER",
      description = "Where the pictures go. (default out)")
  private String out = Arguments.OUT;

  @CommandLine.Mixin
  private PrintOptions printing = new PrintOptions();

  private final Root root;

  CheckCommand(Root root) {
    this.root = root;
  }

  /**
   * What came of one file.
   *
   * @param fault why it could not be read or judged, else empty
   */
  record Checked(String file, Optional<StlFile> stl, Optional<StlFile.OnGrid> grid, Optional<Proof.Verdict> verdict,
      Optional<PrintReport> report, Optional<Fault> fault) {

    boolean isSound() {
      return verdict.isPresent() && verdict.get().proven().isPresent();
    }

    boolean isGood() {
      return isSound() && report.isPresent() && !report.get().hasErrors();
    }
  }

  @Override
  public int run(Console console) {
    PrintLimits limits = limits();
    Optional<Axis> along = printing.load();
    Progress progress = console.progress();
    progress.begin(files.size() * Steps.OF_A_FILE);
    List<Checked> all = files.stream().map(file -> check(file, limits, along, new Steps(progress, file))).toList();
    int exit = all.stream().anyMatch(checked -> checked.fault().isPresent()) ? Exit.BAD_INPUT
        : all.stream().allMatch(Checked::isGood) ? Exit.DONE : Exit.UNSOUND;
    if (picture) {
      MapFiles.write(all, Arguments.path("--out", out));
    }
    CheckReport.print(console, all, exit);
    return exit;
  }

  private PrintLimits limits() {
    Shelf shelf = root.shelf();
    Printer chosen = shelf.find(Printer.class, printer).orElseThrow(() -> new InputException(new Fault("", "printer",
        "there is no printer " + Texts.quoted(printer), printer, "a printer preset",
        NearMiss.advice(printer, shelf.names(Printer.class)), Origin.option("--printer"))));
    Optional<Given> wanted = material.isEmpty() ? Optional.empty()
        : Optional.of(Given.of(material, Origin.option("--material")));
    return Limits.of(chosen, Materials.find(shelf, wanted), printing.limits());
  }

  static Workers workers() {
    return Workers.of(Runtime.getRuntime().availableProcessors());
  }

  private PrintReport measure(CheckedMesh mesh, PrintLimits limits, Optional<Axis> along, Steps steps) {
    Specimen specimen = new Specimen(mesh, limits, Map.of(), workers());
    return Printability.examine(along.map(specimen::loaded).orElse(specimen), gauge -> steps.done());
  }

  private Checked check(String name, PrintLimits limits, Optional<Axis> along, Steps steps) {
    try {
      Path path = Arguments.path("FILE", name);
      if (Files.isDirectory(path)) {
        return unread(name, "this is a folder", "Give the STL files inside it.");
      }
      StlFile stl = StlReader.read(path);
      StlFile.OnGrid grid = stl.toMesh();
      Proof.Verdict verdict = Proof.judge(grid.mesh(), workers());
      steps.done();
      return new Checked(name, Optional.of(stl), Optional.of(grid), Optional.of(verdict),
          verdict.proven().map(mesh -> measure(mesh, limits, along, steps)), Optional.empty());
    } catch (OutOfMemoryError e) {
      return unread(name, "there are more facets in it than " + Runtime.getRuntime().maxMemory() / BYTES_PER_MIB
          + " MiB of memory hold", "Split it, or give Java more memory, such as JAVA_TOOL_OPTIONS=-Xmx6g.");
    } catch (NoSuchFileException e) {
      return unread(name, "there is no such file", "Check the path.");
    } catch (AccessDeniedException e) {
      return unread(name, "the file may not be read", "Give yourself the right to read it.");
    } catch (IOException e) {
      return unread(name, "the file cannot be read (" + e.getMessage() + ")", "Check the file and its disk.");
    } catch (StlException e) {
      return unread(name, e.what() + " (byte " + e.offset() + ")", e.advice());
    } catch (ShapeException e) {
      return unread(name, e.getMessage().substring(0, e.getMessage().length() - e.advice().length() - 2), e.advice());
    } finally {
      steps.rest();
    }
  }

  private static Checked unread(String name, String what, String advice) {
    return new Checked(name, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
        Optional.of(Fault.of(name, what, advice, Origin.file(name))));
  }
}
