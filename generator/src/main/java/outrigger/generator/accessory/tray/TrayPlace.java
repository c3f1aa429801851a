package outrigger.generator.accessory.tray;

/** Where a tray hangs. */
public enum TrayPlace {
  /** Between the rails, held by both. */
  BETWEEN,
  /** Outside the left rail, held by its right side. */
  LEFT,
  /** Outside the right rail, held by its left side. */
  RIGHT;

  /** Whether a rail holds the tray on a side: -1 right, 1 left. */
  boolean isHeldAt(int side) {
    return this == BETWEEN || this == (side < 0 ? LEFT : RIGHT);
  }
}
