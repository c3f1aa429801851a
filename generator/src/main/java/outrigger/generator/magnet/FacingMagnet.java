package outrigger.generator.magnet;

import java.util.Optional;
import outrigger.presets.DiscMagnet;
import outrigger.presets.Shelf;

/**
 * The magnet in the body as given: one by name, or none, where it is the same as that in the mount.
 *
 * @param named the magnet, where one is given
 */
public record FacingMagnet(Optional<DiscMagnet> named) {
  static final String SAME = "same";

  /** Reads a name of the table of disc magnets, or {@code same}. */
  static FacingMagnet parse(String text, Shelf shelf) {
    return new FacingMagnet(text.strip().equalsIgnoreCase(SAME) ? Optional.empty()
        : Optional.of(shelf.get(DiscMagnet.class, text.strip())));
  }
}
