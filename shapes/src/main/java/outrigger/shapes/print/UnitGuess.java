package outrigger.shapes.print;

import java.util.Locale;
import java.util.Optional;
import outrigger.shapes.check.Measures;

/**
 * Guesses from its size alone whether a file may be in another unit than millimetres. Own choice of bounds: hardly any
 * printed part is less than 5 mm, and none less than half a millimetre, in its longest direction.
 */
public final class UnitGuess {
  private static final double METRES_BELOW = 0.5;
  private static final double INCHES_BELOW = 5;
  private static final double MM_PER_INCH = 25.4;
  private static final double MM_PER_METRE = 1000;

  private UnitGuess() {}

  /** A sentence for the maker, without full stop, if the size is odd; nothing is changed. */
  public static Optional<String> of(Measures m) {
    double longest = Math.max(m.maxX() - m.minX(), Math.max(m.maxY() - m.minY(), m.maxZ() - m.minZ()));
    if (m.facets() == 0 || longest >= INCHES_BELOW) {
      return Optional.empty();
    }
    boolean metres = longest < METRES_BELOW;
    double factor = metres ? MM_PER_METRE : MM_PER_INCH;
    return Optional.of(String.format(Locale.ROOT, "unit: the part is only %.3f mm long, read as millimetres; were the file "
        + "in %s, it would be %.1f x %.1f x %.1f mm. Nothing was changed: export it in millimetres if so", longest,
        metres ? "metres" : "inches", (m.maxX() - m.minX()) * factor, (m.maxY() - m.minY()) * factor,
        (m.maxZ() - m.minZ()) * factor));
  }
}
