package outrigger.shapes.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * Tells which promised heights above the bed fall between layers. Of a part that promises none it tells what becomes of
 * the height over all, which is no concern: nobody said that it matters.
 */
final class HeightGauge implements Gauge {
  @Override
  public String name() {
    return "heights";
  }

  @Override
  public Reading read(Specimen specimen) {
    List<Concern> concerns = new ArrayList<>();
    List<Fact> facts = new ArrayList<>();
    double tall = specimen.measures().maxZ() - specimen.bed();
    boolean isPromised = !specimen.heights().isEmpty();
    Map<String, Double> heights = !isPromised ? Map.of("height", tall) : specimen.heights();
    for (Map.Entry<String, Double> entry : heights.entrySet()) {
      LayerHeight height = LayerHeight.of(entry.getValue(), specimen.limit(Limit.FIRST_LAYER),
          specimen.limit(Limit.LAYER));
      facts.add(new Fact("printed-" + entry.getKey(), height.printed(), "mm", words(entry.getKey(), height)));
      // A file promises no height, so there is nothing to miss; adding decimals must not tip a height over the limit.
      if (isPromised && Math.abs(height.error()) > specimen.limit(Limit.HEIGHT_ERROR) + 1e-6) {
        concerns.add(concern(specimen, entry.getKey(), height));
      }
    }
    return Reading.of(concerns, facts);
  }

  private static Concern concern(Specimen specimen, String name, LayerHeight height) {
    return new Concern("between-layers", Severity.CAUTION, specimen.measures().centroidX(),
        specimen.measures().centroidY(), specimen.bed() + height.height(), Math.abs(height.error()),
        specimen.limit(Limit.HEIGHT_ERROR), Limit.HEIGHT_ERROR, 0, words(name, height), remedy(height));
  }

  private static String words(String name, LayerHeight height) {
    String stack = "first layer " + Words.number(height.firstLayer(), 3) + " and " + height.layers() + " x "
        + Words.number(height.layer(), 3);
    return name + " " + Words.number(height.height(), 3) + " mm " + (height.isExact() ? "comes out exactly: " + stack
        : "prints as " + Words.number(height.printed(), 3) + " mm, " + Words.number(Math.abs(height.error()), 3)
            + " mm " + (height.error() > 0 ? "more" : "less") + ": " + stack);
  }

  private static String remedy(LayerHeight height) {
    OptionalDouble first = height.firstLayerToHit();
    OptionalDouble layer = height.layerToHit();
    if (first.isPresent()) {
      return "Set the first layer to " + Words.number(first.getAsDouble(), 3) + " mm to hit it.";
    }
    return layer.isPresent() ? "Set the layer height to " + Words.number(layer.getAsDouble(), 4) + " mm to hit it."
        : "Make it " + Words.number(height.printed(), 3) + " mm.";
  }
}
