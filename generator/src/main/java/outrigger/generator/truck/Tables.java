package outrigger.generator.truck;

import java.util.List;
import java.util.Optional;

/** The tables of a plan that describe the truck. */
public final class Tables {
  /**
   * One of them.
   *
   * @param key as it stands in brackets
   * @param type its record
   * @param isMany whether it may come more than once, in double brackets
   * @param about what it is, one sentence
   */
  public record Declared(String key, Class<? extends Record> type, boolean isMany, String about) {
    /** As it begins in a plan, such as {@code [[mount]]}. */
    public String heading() {
      return isMany ? "[[" + key + "]]" : "[" + key + "]";
    }
  }

  /** All, in the order to write them. */
  public static final List<Declared> ALL = List.of(
      new Declared("truck", TruckParams.class, false, "What concerns it as a whole."),
      new Declared("rail", RailParams.class, false, "Both rails, which mirror each other; top edges level at z = 0."),
      new Declared("rail-at", RailAt.class, true, "Another section of the rails, for frames that taper or step."),
      new Declared("holes", HoleRow.class, true, "A row of holes through the webs."),
      new Declared("body", BodyParams.class, false, "The kit body with all that stays in it."),
      new Declared("mount", MountParams.class, true, "A place along the truck where the body rests."),
      new Declared("keep-out", KeepOut.class, true, "Room that the body takes: interior tub, engine bay."),
      new Declared("bumper", BumperParams.class, false, "The front bumper."),
      new Declared("item", ItemParams.class, true, "A thing the truck carries, in a tray or between the rails."),
      new Declared(BetweenParams.KEY, BetweenParams.class, false, "The space between the rails that is left to items."),
      new Declared("drive", DriveParams.class, false, "Motor, gears, wheels and steering."));

  private Tables() {}

  /** The table of a key. */
  public static Optional<Declared> find(String key) {
    return ALL.stream().filter(declared -> declared.key().equals(key)).findFirst();
  }

  /** Every key, in order. */
  public static List<String> keys() {
    return ALL.stream().map(Declared::key).toList();
  }
}
