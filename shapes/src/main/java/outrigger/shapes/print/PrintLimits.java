package outrigger.shapes.print;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import outrigger.shapes.num.ShapeException;

/**
 * The limits a part is measured against.
 *
 * @param values one value for every {@link Limit}
 */
public record PrintLimits(Map<Limit, Double> values) {

  /** @throws ShapeException if a value lies out of its limit's range */
  public PrintLimits {
    EnumMap<Limit, Double> all = new EnumMap<>(Limit.class);
    for (Limit limit : Limit.values()) {
      all.put(limit, checked(limit, values.getOrDefault(limit, limit.standard())));
    }
    values = Collections.unmodifiableMap(all);
  }

  private static double checked(Limit limit, double value) {
    if (!(value >= limit.least() && value <= limit.most())) {
      throw new ShapeException(limit.key() + " is " + value + " " + limit.unit() + ", outside " + limit.least() + " to "
          + limit.most(), "Give a value in that range.");
    }
    return value;
  }

  /** Every limit at its standard value. */
  public static PrintLimits standard() {
    return new PrintLimits(Map.of());
  }

  /** The value of a limit, in its unit. */
  public double of(Limit limit) {
    return values.get(limit);
  }

  /**
   * The same with one limit set.
   *
   * @throws ShapeException if the value lies out of the limit's range
   */
  public PrintLimits with(Limit limit, double value) {
    Map<Limit, Double> changed = new EnumMap<>(values);
    changed.put(limit, value);
    return new PrintLimits(changed);
  }
}
