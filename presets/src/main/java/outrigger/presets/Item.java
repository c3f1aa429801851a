package outrigger.presets;

/** One thing on the shelf, known in its table by its name. */
public interface Item {
  /** The name users type, such as {@code M3} or {@code 6x2}. */
  String name();
}
