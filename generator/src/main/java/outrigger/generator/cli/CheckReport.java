package outrigger.generator.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import outrigger.generator.accessory.Words;
import outrigger.generator.print.PrintWords;
import outrigger.generator.run.Json;
import outrigger.generator.run.PartJson;
import outrigger.generator.run.PrintJson;
import outrigger.shapes.check.Finding;
import outrigger.shapes.check.Measures;
import outrigger.shapes.check.Proof;
import outrigger.shapes.check.Tally;
import outrigger.shapes.num.Grid;
import outrigger.shapes.print.UnitGuess;
import outrigger.shapes.stl.StlFile;

/** Tells what the proof found. */
final class CheckReport {
  private static final String UNEXAMINED = "printing: not examined, since walls and overhangs have a meaning only for a "
      + "surface without the faults above";

  /** Places of a rule that text tells. */
  private static final int LISTED = 5;

  private CheckReport() {}

  static void print(Console console, List<CheckCommand.Checked> all, int exit) {
    if (console.json()) {
      console.json(exit, json -> json.objects("files", all, CheckReport::json));
      return;
    }
    for (CheckCommand.Checked checked : all) {
      if (checked.fault().isPresent()) {
        console.err().print(checked.fault().get().message() + "\n");
      } else {
        console.line(checked.file() + ": " + headline(checked));
        Proof.Verdict verdict = checked.verdict().orElseThrow();
        faults(verdict).forEach(line -> console.line("  " + line));
        measures(verdict.measures()).forEach(line -> console.line("  " + line));
        if (checked.isSound()) {
          console.line("  " + make(verdict.measures()));
        }
        console.line("  " + rounding(checked.grid().orElseThrow()));
        UnitGuess.of(verdict.measures()).ifPresent(guess -> console.line("  " + guess));
        checked.report().map(PrintWords::lines).orElse(List.of(UNEXAMINED)).forEach(line -> console.line("  " + line));
      }
    }
  }

  private static String headline(CheckCommand.Checked checked) {
    if (!checked.isSound()) {
      return "NOT SOUND";
    }
    return checked.isGood() ? "sound" : "sound, but WILL NOT PRINT AS DRAWN";
  }

  /** What speaks against a mesh, one line each; none for a sound one. */
  static List<String> faults(Proof.Verdict verdict) {
    List<String> lines = new ArrayList<>();
    for (Tally tally : verdict.tallies()) {
      List<Finding> listed = verdict.findings().stream().filter(f -> f.rule().equals(tally.rule())).limit(LISTED)
          .toList();
      lines.add(tally.rule() + ": " + tally.count() + (listed.size() < tally.count()
          ? ", the first " + listed.size() + " of them (--json lists more):" : ""));
      listed.forEach(finding -> lines.add("  at " + place(finding) + ": " + finding.message() + ". "
          + finding.advice()));
    }
    verdict.notExamined().forEach(reason -> lines.add("not examined: " + reason));
    return lines;
  }

  private static String place(Finding finding) {
    return "(" + Words.number(finding.x()) + ", " + Words.number(finding.y()) + ", " + Words.number(finding.z()) + ")";
  }

  private static List<String> measures(Measures m) {
    return List.of(
        "size " + MakeReport.size(m) + ", from (" + Words.number(m.minX()) + ", " + Words.number(m.minY()) + ", "
            + Words.number(m.minZ()) + ") to (" + Words.number(m.maxX()) + ", " + Words.number(m.maxY()) + ", "
            + Words.number(m.maxZ()) + ")",
        m.facets() + " triangles, volume " + finite(m.volume()) + " mm3, surface " + finite(m.area()) + " mm2");
  }

  /** How a sound part hangs together. */
  private static String make(Measures m) {
    int hollows = m.shells() - m.pieces();
    return (m.pieces() == 1 ? "one body" : m.pieces() + " bodies that are not joined") + ", "
        + (hollows == 0 ? "" : hollows == 1 ? "one closed hollow inside, " : hollows + " closed hollows inside, ")
        + (m.genus() == 0 ? "no hole" : m.genus() == 1 ? "one hole" : m.genus() + " holes")
        + (m.pieces() == 1 ? " through it" : " through them");
  }

  private static String finite(double value) {
    return Double.isFinite(value) ? Words.number(value) : "unknown";
  }

  private static String rounding(StlFile.OnGrid grid) {
    return grid.movedCorners() == 0 ? "every corner is taken exactly as it stands in the file"
        : grid.movedCorners() + " corners of triangles were rounded, by at most "
            + String.format(Locale.ROOT, "%.7f", Math.min(grid.largestMove(), Grid.STEP)) + " mm";
  }

  private static void json(Json json, CheckCommand.Checked checked) throws IOException {
    json.put("file", checked.file());
    if (checked.fault().isPresent()) {
      json.object("fault", fault -> FaultJson.write(fault, checked.fault().get()));
      return;
    }
    Proof.Verdict verdict = checked.verdict().orElseThrow();
    json.put("encoding", checked.stl().orElseThrow().encoding().name().toLowerCase(Locale.ROOT));
    json.put("rounded-corners", checked.grid().orElseThrow().movedCorners());
    verdict(json, verdict);
    Optional<String> guess = UnitGuess.of(verdict.measures());
    if (guess.isPresent()) {
      json.put("unit-guess", guess.get());
    }
    if (checked.report().isPresent()) {
      json.object("printing", printing -> PrintJson.write(printing, checked.report().get()));
    } else {
      json.put("printing-not-examined", UNEXAMINED);
    }
  }

  /** A verdict as members of an object. */
  static void verdict(Json json, Proof.Verdict verdict) throws IOException {
    json.put("sound", verdict.proven().isPresent());
    json.objects("rules-broken", verdict.tallies(),
        (tally, t) -> tally.put("rule", t.rule()).put("count", t.count()));
    json.objects("findings", verdict.findings(), (finding, f) -> finding.put("rule", f.rule())
        .numbers("place-mm", f.x(), f.y(), f.z()).put("message", f.message()).put("advice", f.advice()));
    json.texts("not-examined", verdict.notExamined());
    json.object("measures", measures -> PartJson.measures(measures, verdict.measures()));
  }
}
