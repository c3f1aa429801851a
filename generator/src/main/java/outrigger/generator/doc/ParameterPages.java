package outrigger.generator.doc;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import outrigger.generator.accessory.Accessory;
import outrigger.generator.accessory.Kinds;
import outrigger.generator.param.ParamSpec;
import outrigger.generator.param.Parameter;

/** Pages that list the parameters of each kind, in Markdown. */
public final class ParameterPages {
  private ParameterPages() {}

  /** Every page, text by file name. */
  public static Map<String, String> all(Kinds kinds) {
    Map<String, String> pages = new LinkedHashMap<>();
    for (Accessory<?> accessory : kinds.all()) {
      pages.put(accessory.kind() + ".md", page(accessory));
    }
    return pages;
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
    lines.add("| Key | Value | Allowed | Default | What it is |");
    lines.add("|---|---|---|---|---|");
    for (Parameter p : ParamSpec.of(accessory.parameters()).parameters()) {
      lines.add("| `" + p.key() + "` | " + p.form().kind() + " | " + cell(ParameterWords.allowed(p)) + " | "
          + cell(p.defaultWords()) + " | " + cell(p.help()) + " |");
    }
    return String.join("\n", lines) + "\n";
  }

  private static String cell(String text) {
    return text.replace("|", "\\|").replace("<", "&lt;");
  }
}
