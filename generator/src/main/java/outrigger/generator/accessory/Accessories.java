package outrigger.generator.accessory;

import java.util.List;
import outrigger.generator.accessory.body.BodyMount;
import outrigger.generator.accessory.pad.BodyPad;
import outrigger.generator.accessory.spacer.Spacer;
import outrigger.generator.accessory.tray.Tray;

/** Every kind of part that can be made: one line each. */
public final class Accessories {
  private static final Kinds KINDS = new Kinds(List.of(
      new BodyMount(),
      new BodyPad(),
      new Spacer(),
      new Tray()
  ));

  private Accessories() {}

  /** Every accessory, in the order users see them. */
  public static List<Accessory<?>> all() {
    return KINDS.all();
  }

  /** The same, to look up by kind. */
  public static Kinds kinds() {
    return KINDS;
  }
}
