package outrigger.generator.stack;

import java.util.List;

/**
 * A kind of piece that can be stacked.
 *
 * @param sort what it is
 * @param name what it is called, such as {@code 40thou sheet}
 * @param presets names of the presets it stands for; empty for a shim
 * @param nano thickness, nm, above 0
 * @param offNano how far it may be off either way, nm, 0 or more
 * @param count how many are at hand; {@link #ANY} for as many as it takes
 */
public record Piece(Sort sort, String name, List<String> presets, long nano, long offNano, int count) {
  /** As many as it takes. */
  public static final int ANY = Integer.MAX_VALUE;

  /** What a piece can be. */
  public enum Sort { SHEET, WASHER, SHIM }

  public Piece {
    presets = List.copyOf(presets);
    if (nano <= 0 || offNano < 0 || count < 0) {
      throw new IllegalArgumentException(name + ": " + nano + " nm, off by " + offNano + " nm, " + count + " of them");
    }
  }

  /** Thickness, mm. */
  public double thickness() {
    return Nano.mm(nano);
  }

  /** How far it may be off either way, mm. */
  public double off() {
    return Nano.mm(offNano);
  }
}
