package outrigger.shapes.solid;

import outrigger.shapes.num.Placement;

/** A solid turned, mirrored or moved. */
public record Placed(Solid solid, Placement placement) implements Solid {
}
