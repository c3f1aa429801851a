package outrigger.generator.run;

import java.io.IOException;
import java.util.Locale;
import outrigger.shapes.print.Concern;
import outrigger.shapes.print.Limit;
import outrigger.shapes.print.PrintReport;

/** What the gauges found, as JSON. */
public final class PrintJson {
  private PrintJson() {}

  /** A report as members of an object. */
  public static void write(Json json, PrintReport report) throws IOException {
    json.put("prints", !report.hasErrors());
    json.objects("concerns", report.concerns(), PrintJson::concern);
    json.objects("facts", report.facts(), (one, fact) -> one.put("name", fact.name()).put("value", fact.value())
        .put("unit", fact.unit()).put("words", fact.words()));
    json.texts("not-examined", report.notExamined());
    json.object("limits", limits -> {
      for (Limit limit : Limit.values()) {
        limits.put(limit.key(), report.limits().of(limit));
      }
    });
  }

  private static void concern(Json json, Concern concern) throws IOException {
    json.put("rule", concern.rule()).put("severity", concern.severity().name().toLowerCase(Locale.ROOT))
        .numbers("place-mm", concern.x(), concern.y(), concern.z()).put("measured", concern.measured())
        .put("bound", concern.bound()).put("unit", concern.limit().unit()).put("limit", concern.limit().key())
        .put("limit-standing", concern.limit().standing());
    if (concern.area() > 0) {
      json.put("area-mm2", concern.area());
    }
    json.put("message", concern.message()).put("advice", concern.advice());
  }
}
