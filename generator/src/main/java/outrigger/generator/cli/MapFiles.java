package outrigger.generator.cli;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import outrigger.generator.param.Fault;
import outrigger.generator.param.InputException;
import outrigger.generator.param.Origin;
import outrigger.generator.picture.Pictures;
import outrigger.generator.picture.Shown;
import outrigger.generator.run.Workshop;
import outrigger.shapes.check.CheckedMesh;
import outrigger.shapes.print.PrintReport;
import outrigger.shapes.print.Printability;

/** Draws what was measured on checked files. */
final class MapFiles {
  private static final String END = ".map.png";

  private MapFiles() {}

  /**
   * Writes a picture for each file that was measured, all or none.
   *
   * @throws InputException if two files would get one picture, or the folder cannot be written
   */
  static void write(List<CheckCommand.Checked> all, Path folder) {
    Map<String, byte[]> pictures = new LinkedHashMap<>();
    for (CheckCommand.Checked checked : all) {
      if (checked.report().isPresent()) {
        String name = Path.of(checked.file()).getFileName().toString().replaceFirst("(?i)\\.stl$", "");
        CheckedMesh mesh = checked.verdict().orElseThrow().proven().orElseThrow();
        byte[] before = pictures.put(name + END, draw(new Shown(name, mesh), checked.report().get()));
        if (before != null) {
          throw new InputException(Fault.of("check", "two files are called " + name + ", and their pictures would be one",
              "Check them one by one.", Origin.option("--picture")));
        }
      }
    }
    Workshop.writeBytes(pictures, folder);
  }

  private static byte[] draw(Shown part, PrintReport report) {
    try {
      return Pictures.map(part, Printability.mapped(part.mesh(), report, CheckCommand.workers()));
    } catch (OutOfMemoryError e) {
      throw new InputException(Fault.of(part.name(), "its " + part.mesh().mesh().facetCount() + " facets are too many to "
          + "draw with the memory there is", "Leave out --picture, or give Java more memory, such as "
          + "JAVA_TOOL_OPTIONS=-Xmx6g.", Origin.option("--picture")));
    }
  }
}
