package outrigger.generator.truck;

import java.util.List;
import outrigger.generator.accessory.body.Side;

/** On which rails something stands. */
public enum Sides {
  BOTH, LEFT, RIGHT;

  /** Left before right. */
  public List<Side> each() {
    return this == BOTH ? List.of(Side.LEFT, Side.RIGHT) : List.of(this == LEFT ? Side.LEFT : Side.RIGHT);
  }
}
