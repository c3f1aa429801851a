package outrigger.shapes.solid;

import outrigger.shapes.num.Placement;

/** A solid turned, mirrored or moved: one that is placed already, by both placements at once. */
public record Placed(Solid solid, Placement placement) implements Solid {
  public Placed {
    if (solid instanceof Placed placed) {
      placement = placed.placement.then(placement);
      solid = placed.solid;
    }
  }
}
