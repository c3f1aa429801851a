package outrigger.generator.accessory;

import java.util.List;
import java.util.Optional;
import outrigger.generator.accessory.body.BodyMount;
import outrigger.generator.accessory.spacer.Spacer;

/** Every kind of part that can be made: one line each. */
public final class Accessories {
  private static final List<Accessory<?>> ALL = List.of(
      new BodyMount(),
      new Spacer()
  );

  private Accessories() {}

  /** Every kind, in the order users see them. */
  public static List<Accessory<?>> all() {
    return ALL;
  }

  /** The accessory of a kind. */
  public static Optional<Accessory<?>> find(String kind) {
    return ALL.stream().filter(a -> a.kind().equals(kind)).findFirst();
  }

  /** Every kind's name. */
  public static List<String> kinds() {
    return ALL.stream().map(Accessory::kind).toList();
  }
}
