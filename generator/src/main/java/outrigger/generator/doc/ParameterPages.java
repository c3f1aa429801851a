package outrigger.generator.doc;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import outrigger.generator.accessory.Accessory;
import outrigger.generator.accessory.Kinds;
import outrigger.generator.param.ParamSpec;
import outrigger.generator.param.Parameter;
import outrigger.generator.plan.OnHandParams;
import outrigger.generator.truck.Tables;

/** Pages that list the parameters of each kind, in Markdown. */
public final class ParameterPages {
  private ParameterPages() {}

  /** Every page, text by file name. */
  public static Map<String, String> all(Kinds kinds) {
    Map<String, String> pages = new LinkedHashMap<>();
    for (Accessory<?> accessory : kinds.all()) {
      pages.put(accessory.kind() + ".md", page(accessory));
    }
    pages.put("plan.md", plan());
    return pages;
  }

  private static String plan() {
    List<String> lines = new ArrayList<>(List.of("# The truck in a plan", "",
        "Tables of a plan that describe the truck; `outrigger plan new` writes them all. Lengths are in mm unless they carry",
        "`in` or `thou`, masses in g unless they carry `kg`, `oz` or `lb`. This page is generated."));
    for (Tables.Declared table : Tables.ALL) {
      lines.addAll(List.of("", "## `" + table.heading() + "`", "", table.about(), ""));
      rows(lines, ParamSpec.of(table.type()).parameters());
    }
    lines.addAll(List.of("", "## `[on-hand]`", "", "What lies in the drawer; a list each.", ""));
    rows(lines, ParamSpec.of(OnHandParams.class).parameters());
    return String.join("\n", lines) + "\n";
  }

  static String page(Accessory<?> accessory) {
    List<String> lines = new ArrayList<>();
    lines.add("# " + accessory.kind());
    lines.add("");
    lines.add(accessory.summary());
    lines.add("");
    lines.add("Each parameter is an option of `make " + accessory.kind() + "` (`--key VALUE`) and a key of a plan's part.");
    lines.add("Lengths are in mm unless they carry `in` or `thou`. This page is generated; see `DEVELOPERS.md`.");
    lines.add("");
    rows(lines, ParamSpec.of(accessory.parameters()).parameters());
    return String.join("\n", lines) + "\n";
  }

  private static void rows(List<String> lines, List<Parameter> parameters) {
    lines.add("| Key | Value | Allowed | Default | What it is |");
    lines.add("|---|---|---|---|---|");
    for (Parameter p : parameters) {
      lines.add("| `" + p.key() + "` | " + p.form().kind() + " | " + cell(ParameterWords.allowed(p)) + " | "
          + cell(p.defaultWords()) + " | " + cell(p.help()) + " |");
    }
  }

  private static String cell(String text) {
    return text.replace("|", "\\|").replace("<", "&lt;");
  }
}
