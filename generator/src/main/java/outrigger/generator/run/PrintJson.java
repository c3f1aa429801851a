package outrigger.generator.run;

import java.io.IOException;
import java.util.Locale;
import outrigger.shapes.num.Axis;
import outrigger.shapes.print.Concern;
import outrigger.shapes.print.Fact;
import outrigger.shapes.print.Limit;
import outrigger.shapes.print.PrintReport;

/** What the gauges found, as JSON. */
public final class PrintJson {
  /** What is taken for the load's direction where none is given. */
  private static final String LONGEST = "longest direction, none given";

  private PrintJson() {}

  /** A report as members of an object. */
  public static void write(Json json, PrintReport report) throws IOException {
    json.put("prints", !report.hasErrors());
    json.objects("concerns", report.concerns(), PrintJson::concern);
    json.put("load", report.load().map(Axis::name).orElse(LONGEST));
    json.objects("facts", report.facts(), PrintJson::fact);
    json.texts("not-examined", report.notExamined());
    json.object("limits", limits -> {
      for (Limit limit : Limit.values()) {
        limits.put(limit.key(), report.limits().of(limit));
      }
    });
  }

  private static void fact(Json json, Fact fact) throws IOException {
    json.put("name", fact.name()).put("value", fact.value());
    if (fact.isEstimate()) {
      json.put("low", fact.low()).put("high", fact.high()).texts("assumes", fact.assumes());
    }
    json.put("unit", fact.unit()).put("words", fact.words());
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
