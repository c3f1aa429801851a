package outrigger.generator.accessory;

import java.util.List;
import java.util.Optional;

/**
 * Kinds of part to choose from.
 *
 * @param all in the order users see them
 */
public record Kinds(List<Accessory<?>> all) {
  public Kinds {
    all = List.copyOf(all);
  }

  /** The accessory of a kind. */
  public Optional<Accessory<?>> find(String kind) {
    return all.stream().filter(a -> a.kind().equals(kind)).findFirst();
  }

  /** Every kind's name. */
  public List<String> names() {
    return all.stream().map(Accessory::kind).toList();
  }
}
