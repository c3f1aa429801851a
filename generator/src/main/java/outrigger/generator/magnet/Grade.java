package outrigger.generator.magnet;

import java.util.Optional;
import outrigger.presets.MagnetGrade;
import outrigger.presets.Shelf;

/**
 * A grade as given: one by name, or none, where the magnet's own counts.
 *
 * @param named the grade, where one is given
 */
public record Grade(Optional<MagnetGrade> named) {
  static final String OWN = "as-listed";

  /** Reads a name of the table of grades, or {@code as-listed}. */
  static Grade parse(String text, Shelf shelf) {
    return new Grade(text.strip().equalsIgnoreCase(OWN) ? Optional.empty()
        : Optional.of(shelf.get(MagnetGrade.class, text.strip())));
  }
}
