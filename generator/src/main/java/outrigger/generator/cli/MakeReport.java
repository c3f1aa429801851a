package outrigger.generator.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import outrigger.generator.accessory.Words;
import outrigger.generator.print.PrintWords;
import outrigger.generator.run.Batch;
import outrigger.generator.run.Json;
import outrigger.generator.run.Made;
import outrigger.generator.run.PartJson;
import outrigger.generator.run.Working;
import outrigger.shapes.check.Measures;

/** Tells what was made. */
final class MakeReport {
  private static final int BYTES_PER_KB = 1000;

  private MakeReport() {}

  /** Everything about each part. */
  static void print(Console console, Batch batch, Path folder) {
    if (console.json()) {
      json(console, batch, json -> { }, folder);
      return;
    }
    for (Made made : batch.parts()) {
      console.line(folder.resolve(made.file()) + ": " + made.kind() + ", " + size(made.measures()) + ", "
          + kilobytes(made.size()) + ", sound");
      details(batch, made).forEach(detail -> console.line("  " + detail));
    }
  }

  /** One line a part. */
  static void printTable(Console console, Batch batch, Working working, Path folder) {
    if (console.json()) {
      json(console, batch, working::write, folder);
      return;
    }
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("file", "kind", "size", "facets", "volume", "bytes", "printing"));
    for (Made made : batch.parts()) {
      Measures m = made.measures();
      rows.add(List.of(made.file(), made.kind(), size(m), String.valueOf(m.facets()), volume(m),
          kilobytes(made.size()), PrintWords.summary(made.report())));
    }
    AlignedTable.lines(rows).forEach(console::line);
    console.line("");
    List<String> concerns = concerns(batch.parts());
    concerns.forEach(line -> BuildSheet.wrapped(line).forEach(console::line));
    if (!concerns.isEmpty()) {
      console.line("");
    }
    BuildSheet.lines(working).forEach(console::line);
    int count = batch.parts().size();
    console.line(count + (count == 1 ? " part" : " parts") + ", every one proven sound, in " + folder
        + "; notes, poses and hardware in " + folder.resolve("manifest.json") + ".");
  }

  /** What of each part a careful maker would worry about, under its name. */
  static List<String> concerns(List<Made> parts) {
    List<String> lines = new ArrayList<>();
    for (Made made : parts) {
      List<String> concerns = PrintWords.concerns(made.report());
      if (!concerns.isEmpty()) {
        lines.add(made.name() + ":");
        lines.addAll(concerns);
      }
    }
    return lines;
  }

  private static void json(Console console, Batch batch, Json.Body working, Path folder) {
    console.json(Exit.DONE, json -> {
      json.put("plan", batch.plan()).put("title", batch.title()).put("folder", folder.toString());
      json.objects("parts", batch.parts(), (part, made) -> PartJson.write(part, batch, made));
      working.write(json);
    });
  }

  private static List<String> details(Batch batch, Made made) {
    List<String> details = new ArrayList<>();
    String mass = batch.mass(made).map(g -> ", " + Words.number(g) + " g printed solid in "
        + batch.material().orElseThrow().name()).orElse("");
    details.add("volume " + volume(made.measures()) + mass + ", " + made.measures().facets() + " facets");
    made.part().stated().forEach((name, mm) -> details.add(name + " " + Words.mm(mm)));
    details.add("prints: " + made.part().pose());
    details.addAll(PrintWords.lines(made.report()));
    made.part().notes().forEach(note -> details.add("note: " + note));
    made.part().hardware().forEach(item -> details.add("needs: " + item));
    return details;
  }

  static String size(Measures m) {
    return Words.number(m.maxX() - m.minX()) + " x " + Words.number(m.maxY() - m.minY()) + " x "
        + Words.mm(m.maxZ() - m.minZ());
  }

  static String volume(Measures m) {
    return Words.number(m.volume()) + " mm3";
  }

  private static String kilobytes(int bytes) {
    return bytes < BYTES_PER_KB ? bytes + " bytes" : (bytes + BYTES_PER_KB / 2) / BYTES_PER_KB + " kB";
  }
}
