package outrigger.generator.truck;

import java.util.Optional;
import outrigger.presets.DiscMagnet;
import outrigger.presets.Shelf;

/**
 * A disc magnet by name, or the choice left to the program.
 *
 * @param named the magnet, where one is named
 */
public record MagnetChoice(Optional<DiscMagnet> named) {
  static final String CHOOSE = "choose";

  /** Reads a name of the table disc-magnets, or {@code choose}. */
  static MagnetChoice parse(String text, Shelf shelf) {
    return new MagnetChoice(text.strip().equalsIgnoreCase(CHOOSE) ? Optional.empty()
        : Optional.of(shelf.get(DiscMagnet.class, text.strip())));
  }
}
