package outrigger.generator.doc;

import java.io.IOException;
import java.util.Optional;
import outrigger.generator.accessory.Accessory;
import outrigger.generator.param.ParamSpec;
import outrigger.generator.param.Parameter;
import outrigger.generator.run.Json;
import outrigger.presets.TableInfo;

/** The kinds and their parameters as JSON, enough to make a form from. */
public final class KindsJson {
  private KindsJson() {}

  /** One kind, as members of an object. */
  public static void write(Json json, Accessory<?> accessory) throws IOException {
    json.put("kind", accessory.kind()).put("summary", accessory.summary());
    json.objects("parameters", ParamSpec.of(accessory.parameters()).parameters(), KindsJson::parameter);
  }

  private static void parameter(Json json, Parameter p) throws IOException {
    json.put("key", p.key()).put("type", p.form().kind());
    if (p.isNumber() || p.isList() && p.hasUnit()) {
      json.put("min", p.min()).put("max", p.max());
    }
    if (p.hasUnit()) {
      json.put("unit", p.unit().word());
    }
    if (!p.choices().isEmpty()) {
      json.texts("choices", p.choices());
    }
    Optional<TableInfo> table = ParameterWords.table(p);
    if (table.isPresent()) {
      json.put("table", table.get().key());
    }
    json.put("default", p.def()).put("help", p.help());
  }
}
