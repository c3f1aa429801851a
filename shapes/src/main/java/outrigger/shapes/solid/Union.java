package outrigger.shapes.solid;

import java.util.List;
import outrigger.shapes.num.ShapeException;

/** All solids of a list together. */
public record Union(List<Solid> solids) implements Solid {
  public Union {
    solids = List.copyOf(solids);
    if (solids.isEmpty()) {
      throw new ShapeException("an expression with no operand", "Give at least one solid.");
    }
  }
}
