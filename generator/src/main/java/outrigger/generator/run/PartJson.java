package outrigger.generator.run;

import java.io.IOException;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import outrigger.generator.param.Origin;
import outrigger.generator.param.Value;
import outrigger.shapes.check.Measures;

/** Parts and measures as JSON. */
public final class PartJson {
  private PartJson() {}

  /** Everything known of a part of a batch, as members of an object. */
  public static void write(Json json, Batch batch, Made made) throws IOException {
    json.put("name", made.name()).put("kind", made.kind()).put("file", made.file()).put("bytes", made.size())
        .put("sha256", made.sha256());
    json.objects("parameters", made.values(), PartJson::parameter);
    json.object("stated-mm", stated -> {
      for (Map.Entry<String, Double> dimension : made.part().stated().entrySet()) {
        stated.put(dimension.getKey(), dimension.getValue());
      }
    });
    json.put("pose", made.part().pose()).texts("notes", made.part().notes())
        .texts("hardware", made.part().hardware());
    json.object("measures", measures -> measures(measures, made.measures()));
    json.object("printing", printing -> PrintJson.write(printing, made.report()));
    Optional<Double> mass = batch.mass(made);
    if (mass.isPresent()) {
      json.put("mass-printed-solid-g", mass.get());
    }
  }

  /** What a mesh measures, as members of an object. */
  public static void measures(Json json, Measures m) throws IOException {
    json.put("facets", m.facets()).put("vertices", m.vertices()).put("volume-mm3", m.volume())
        .put("area-mm2", m.area()).numbers("centroid-mm", m.centroidX(), m.centroidY(), m.centroidZ())
        .numbers("min-mm", m.minX(), m.minY(), m.minZ()).numbers("max-mm", m.maxX(), m.maxY(), m.maxZ())
        .put("genus", m.genus()).put("shells", m.shells()).put("pieces", m.pieces());
  }

  private static void parameter(Json json, Value value) throws IOException {
    json.put("key", value.parameter().key());
    switch (value.parameter().form().kind()) {
      case "length", "angle", "number", "count" -> json.put("value", Double.parseDouble(value.text()));
      case "yes-no" -> json.put("value", value.text().equals("yes"));
      default -> json.put("value", value.text());
    }
    if (value.parameter().hasUnit()) {
      json.put("unit", value.parameter().unit().word());
    }
    Origin origin = value.origin();
    json.put("from", origin.kind().name().toLowerCase(Locale.ROOT));
    if (origin.kind() != Origin.Kind.DEFAULT) {
      json.put("at", origin.words());
    }
  }
}
