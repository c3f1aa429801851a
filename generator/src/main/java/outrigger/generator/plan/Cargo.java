package outrigger.generator.plan;

import java.util.List;
import java.util.Optional;
import outrigger.generator.layout.Item;
import outrigger.generator.layout.Room;
import outrigger.generator.param.Origin;

/**
 * What a truck must carry.
 *
 * @param items in the order of the plan
 * @param betweenRails space between the rails that is left to them
 */
public record Cargo(List<Wanted> items, Optional<Room> betweenRails) {
  /** Nothing. */
  public static final Cargo NONE = new Cargo(List.of(), Optional.empty());

  /**
   * An item.
   *
   * @param where where it stands in the plan
   */
  public record Wanted(Item item, Origin where) {}

  public Cargo {
    items = List.copyOf(items);
  }
}
