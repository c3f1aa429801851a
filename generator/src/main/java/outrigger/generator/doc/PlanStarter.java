package outrigger.generator.doc;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import outrigger.generator.param.ParamSpec;
import outrigger.generator.param.Parameter;
import outrigger.generator.param.Texts;
import outrigger.generator.truck.Tables;
import outrigger.presets.LengthText;

/** Writes a starting plan: every table of the truck, every key with its sentence, range and default. */
public final class PlanStarter {
  /** How far the rails of a starting plan reach before the front axle, mm; to be measured. */
  static final double FRONT_OVERHANG = 25;
  private static final int WIDE = 118;

  private PlanStarter() {}

  /** The plan as text; valid as it stands. */
  public static String text(NewPlan p) {
    List<String> lines = new ArrayList<>(List.of("# A starting plan. Measure, change what differs, and run: outrigger batch PLAN",
        "# Axes: x forward of the front axle, y left of the centre line, z up from the rails' tops. Lengths are in mm, or",
        "# carry a unit in quotes: \"0.25in\", \"40thou\". A measured length may say what it may be off: \"24+-0.2\"; one",
        "# length of each stack is left to be worked out: \"solve\". Masses are in g, or carry theirs: \"0.4kg\", \"6oz\", \"1lb\".",
        "# Keys behind a # stand at their defaults.", "",
        "title = " + quoted(p.title()), "printer = \"demo-0.4\"    # names: outrigger presets printers",
        "material = \"PETG\"       # names: outrigger presets materials"));
    table(lines, "truck", Map.of("scale", n(p.scale()), "wheelbase", n(p.wheelbase())));
    Map<String, String> rail = new LinkedHashMap<>(Map.of("form", quoted(Texts.choice(p.form())), "spacing", n(p.spacing()),
        "web", n(p.web()), "height", n(p.height()), "length", n(p.length())));
    if (p.flange() != 0) {
      rail.put("flange", n(p.flange()));
    }
    table(lines, "rail", rail);
    absent(lines, "rail-at", "holes");
    table(lines, "body", Map.of("mass", n(p.mass())));
    table(lines, "mount", Map.of("name", "\"cab-front\"", "x", n(p.frontX()), "floor", quoted(n(p.frontFloor()) + "+-0.2")));
    lines.addAll(List.of("", "[[mount]]", "name = \"cab-rear\"", "x = " + n(p.rearX()),
        "floor = " + quoted(n(p.rearFloor()) + "+-0.2")));
    absent(lines, "keep-out", "bumper", "drive");
    lines.addAll(List.of("", "# --- The parts wanted; what they leave out is solved ---", "", "[[part]]",
        "kind = \"body-mount\"       # one for each mount and side"));
    return String.join("\n", lines) + "\n";
  }

  /** A table in use: what is given stands, the rest behind a #. */
  private static void table(List<String> lines, String key, Map<String, String> given) {
    Tables.Declared table = Tables.find(key).orElseThrow();
    lines.addAll(List.of("", "# --- " + table.about(), table.heading()));
    for (Parameter parameter : ParamSpec.of(table.type()).parameters()) {
      comment(lines, parameter);
      String value = given.get(parameter.key());
      lines.add(value != null ? parameter.key() + " = " + value : "# " + parameter.key() + " = " + defaultOf(parameter));
    }
  }

  /** Tables that are not in use yet, to be taken in by removing the first # of their lines. */
  private static void absent(List<String> lines, String... keys) {
    for (String key : keys) {
      Tables.Declared table = Tables.find(key).orElseThrow();
      lines.addAll(List.of("", "# --- " + table.about() + " Not in use: take away the # to use it.",
          "# " + table.heading()));
      for (Parameter parameter : ParamSpec.of(table.type()).parameters()) {
        comment(lines, parameter);
        lines.add("# " + parameter.key() + " = " + defaultOf(parameter));
      }
    }
  }

  private static void comment(List<String> lines, Parameter parameter) {
    String text = parameter.help() + " (" + ParameterWords.inHelp(parameter) + (parameter.choices().isEmpty() ? ""
        : "; one of " + String.join(", ", parameter.choices())) + ")";
    StringBuilder line = new StringBuilder("##");
    for (String word : text.split(" ")) {
      if (line.length() + word.length() > WIDE) {
        lines.add(line.toString());
        line = new StringBuilder("##");
      }
      line.append(' ').append(word);
    }
    lines.add(line.toString());
  }

  private static String defaultOf(Parameter parameter) {
    String def = parameter.def();
    if (parameter.isList()) {
      return "[" + def + "]";
    }
    boolean bare = LengthText.parseNumber(def).isNumber() && !parameter.form().kind().equals("text");
    return bare ? def : quoted(def);
  }

  private static String n(double value) {
    return Texts.number(value);
  }

  private static String quoted(String text) {
    return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
  }
}
