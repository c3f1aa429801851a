package outrigger.generator.cli;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import outrigger.generator.param.Fault;
import outrigger.generator.param.Origin;
import outrigger.shapes.check.Proof;
import outrigger.shapes.num.ShapeException;
import outrigger.shapes.stl.StlException;
import outrigger.shapes.stl.StlFile;
import outrigger.shapes.stl.StlReader;
import picocli.CommandLine;

/** {@code check FILE...}: whether files are sound, and what is wrong where. */
@CommandLine.Command(name = "check", sortOptions = false,
    header = "Tell whether STL files are sound, what is wrong with them and where, and what they measure.",
    description = "A file is sound when every edge joins two facets, none cross, none is without area, and the inside "
        + "is inside. Coordinates that are not on the program's grid of 2^-14 mm are rounded to it first.")
final class CheckCommand implements Command {
  @CommandLine.Parameters(paramLabel = "FILE", arity = "1..*", description = "STL files, binary or ASCII, in mm.")
  private List<String> files = new ArrayList<>();

  /**
   * What came of one file.
   *
   * @param fault why it could not be read or judged, else empty
   */
  record Checked(String file, Optional<StlFile> stl, Optional<StlFile.OnGrid> grid, Optional<Proof.Verdict> verdict,
      Optional<Fault> fault) {

    boolean isSound() {
      return verdict.isPresent() && verdict.get().proven().isPresent();
    }
  }

  @Override
  public int run(Console console) {
    List<Checked> all = files.stream().map(CheckCommand::check).toList();
    int exit = all.stream().anyMatch(checked -> checked.fault().isPresent()) ? Exit.BAD_INPUT
        : all.stream().allMatch(Checked::isSound) ? Exit.DONE : Exit.UNSOUND;
    CheckReport.print(console, all, exit);
    return exit;
  }

  private static Checked check(String name) {
    try {
      Path path = Arguments.path("FILE", name);
      if (Files.isDirectory(path)) {
        return unread(name, "this is a folder", "Give the STL files inside it.");
      }
      StlFile stl = StlReader.read(path);
      StlFile.OnGrid grid = stl.toMesh();
      return new Checked(name, Optional.of(stl), Optional.of(grid), Optional.of(Proof.judge(grid.mesh())),
          Optional.empty());
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
    }
  }

  private static Checked unread(String name, String what, String advice) {
    return new Checked(name, Optional.empty(), Optional.empty(), Optional.empty(),
        Optional.of(Fault.of(name, what, advice, Origin.file(name))));
  }
}
