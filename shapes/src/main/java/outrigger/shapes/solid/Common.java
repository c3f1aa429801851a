package outrigger.shapes.solid;

import java.util.List;
import outrigger.shapes.num.ShapeException;

/** What all solids of a list have in common. */
public record Common(List<Solid> solids) implements Solid {
  public Common {
    solids = List.copyOf(solids);
    if (solids.isEmpty()) {
      throw new ShapeException("an expression with no operand", "Give at least one solid.");
    }
  }
}
