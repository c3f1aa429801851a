package outrigger.generator.stack;

import java.util.List;
import java.util.OptionalDouble;
import outrigger.generator.param.BadDimension;
import outrigger.generator.param.Texts;
import outrigger.generator.param.Unit;
import outrigger.presets.LengthText;
import outrigger.presets.Shelf;

/**
 * Something measured: a shim, a strip of the sheet at hand.
 *
 * @param thickness mm
 * @param count how many there are
 */
public record Shim(double thickness, int count) {
  private static final double THINNEST = 0.005;
  private static final double THICKEST = 100;

  /** Reads {@code LENGTH} or {@code LENGTH:COUNT}. */
  public static Shim parse(String text, Shelf shelf) {
    Counted counted = Counted.of("shims", text);
    OptionalDouble length = LengthText.parse(counted.name()).value();
    if (length.isEmpty() || !(length.getAsDouble() >= THINNEST && length.getAsDouble() <= THICKEST)) {
      throw new BadDimension("shims", "in which \"" + counted.name() + "\" is no thickness from "
          + Texts.number(THINNEST) + " to " + Texts.number(THICKEST, Unit.MM),
          "Write what you measured in mm, in or thou, such as 0.1, 0.98:2 or 4thou.");
    }
    return new Shim(length.getAsDouble(), counted.count());
  }

  Piece piece(double error) {
    return new Piece(Piece.Sort.SHIM, Texts.number(thickness, Unit.MM) + " shim", List.of(),
        Nano.of(thickness), Nano.of(error), count);
  }
}
