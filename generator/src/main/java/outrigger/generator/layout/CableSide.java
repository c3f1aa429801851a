package outrigger.generator.layout;

import java.util.Locale;

/** The side on which cables leave an item as it lies lengthwise; it turns with the item. */
public enum CableSide {
  /** Nowhere that needs room. */
  NONE,
  /** At its front. */
  FRONT,
  /** At its rear. */
  REAR,
  /** On its left. */
  LEFT,
  /** On its right. */
  RIGHT,
  /** Upwards. */
  TOP;

  /** The way cables leave once the item is turned a quarter to the left. */
  CableSide turned() {
    return switch (this) {
      case FRONT -> LEFT;
      case LEFT -> REAR;
      case REAR -> RIGHT;
      case RIGHT -> FRONT;
      default -> this;
    };
  }

  /** The word for it. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
