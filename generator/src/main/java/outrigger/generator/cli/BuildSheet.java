package outrigger.generator.cli;

import java.util.ArrayList;
import java.util.List;
import outrigger.generator.fit.FitText;
import outrigger.generator.fit.TruckFit;
import outrigger.generator.layout.LayoutText;
import outrigger.generator.run.Standing;
import outrigger.generator.run.Working;

/** The working over a whole truck, in sections as one builds it; what to mind stands at its end, once. */
final class BuildSheet {
  private static final int WIDTH = 110;
  private static final String INDENT = "  ";

  private final List<String> lines = new ArrayList<>();

  private BuildSheet() {}

  static List<String> lines(Working working) {
    BuildSheet sheet = new BuildSheet();
    List<String> cautions = new ArrayList<>();
    working.fit().ifPresent(fit -> sheet.fit(fit, cautions));
    sheet.section("Layout", LayoutText.lines(working.layout()));
    working.standing().ifPresent(standing -> sheet.standing(standing, cautions));
    sheet.section("Mind", cautions);
    return sheet.lines;
  }

  private void fit(TruckFit fit, List<String> cautions) {
    section("Heights", FitText.heights(fit));
    section("Hold", FitText.hold(fit));
    section("Poles", FitText.poles(fit));
    section("Bumper", FitText.bumper(fit));
    cautions.addAll(FitText.cautions(fit));
  }

  private void standing(Standing standing, List<String> cautions) {
    section("Rails", standing.rails());
    section("Clashes and tools", standing.places());
    section("Weight and strength", standing.loads());
    section("Drive", standing.driving());
    cautions.addAll(standing.cautions());
  }

  private void section(String title, List<String> told) {
    if (!told.isEmpty()) {
      lines.add(title);
      told.forEach(line -> lines.addAll(wrapped(INDENT + line)));
      lines.add("");
    }
  }

  /** Breaks a line at its last space that leaves it within the width; what follows is set further in. */
  static List<String> wrapped(String line) {
    List<String> lines = new ArrayList<>();
    String rest = line;
    String in = " ".repeat(line.length() - line.stripLeading().length()) + INDENT;
    while (rest.length() > WIDTH) {
      int at = rest.lastIndexOf(' ', WIDTH);
      if (at <= in.length()) {
        break;
      }
      lines.add(rest.substring(0, at).stripTrailing());
      rest = in + rest.substring(at + 1);
    }
    lines.add(rest);
    return lines;
  }
}
