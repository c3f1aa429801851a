package outrigger.generator.picture;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import outrigger.shapes.print.FacetField;

/** Classes that a field's values fall into, worst first, and their words; the limit always parts two of them. */
final class Scale implements Paint {
  /** Borders as parts of the limit, where low values are bad and where high ones are. */
  private static final double[] LOW = {0.5, 1, 1.5, 2};
  private static final double[] HIGH = {1.5, 1, 0.75, 0.5};

  private final FacetField field;
  private final double[] borders;

  Scale(FacetField field) {
    this.field = field;
    double[] parts = field.lowIsBad() ? LOW : HIGH;
    borders = new double[parts.length];
    for (int i = 0; i < parts.length; i++) {
      borders[i] = parts[i] * field.bound();
    }
  }

  /** The colour of a facet, beside the places measured on it. */
  @Override
  public int hue(int facet) {
    return hueOf(field.background(facet));
  }

  @Override
  public int hueOf(FacetField.Place place) {
    return hueOf(place.value());
  }

  private int hueOf(double value) {
    if (Double.isNaN(value)) {
      return Hue.NONE;
    }
    int hue = 1;
    for (double border : borders) {
      hue += field.lowIsBad() ? (value >= border ? 1 : 0) : (value <= border ? 1 : 0);
    }
    return hue;
  }

  /** Places on a facet whose colour is not that of the rest, the worst last. */
  @Override
  public List<FacetField.Place> spots(int facet) {
    int rest = hue(facet);
    Comparator<FacetField.Place> order = Comparator.comparingDouble(FacetField.Place::value);
    return field.places(facet).stream().filter(place -> hueOf(place.value()) != rest)
        .sorted(field.lowIsBad() ? order.reversed() : order).toList();
  }

  /** What each colour stands for, from 1. */
  List<String> words() {
    List<String> words = new ArrayList<>();
    String unit = " " + field.unit();
    String far = field.lowIsBad() ? "under " : "over ";
    String near = field.lowIsBad() ? " and over" : " and under";
    words.add(far + number(borders[0]) + unit);
    for (int i = 1; i < borders.length; i++) {
      words.add(number(borders[i - 1]) + " to " + number(borders[i]) + unit + (i == 1 ? " (limit)" : ""));
    }
    words.add(number(borders[borders.length - 1]) + unit + near);
    return words;
  }

  private static String number(double value) {
    return new BigDecimal(value).round(new MathContext(3)).stripTrailingZeros().toPlainString();
  }
}
