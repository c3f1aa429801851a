package outrigger.shapes.solid;

import java.util.List;

/** A solid with others cut away. */
public record Cut(Solid solid, List<Solid> cutters) implements Solid {
  public Cut {
    cutters = List.copyOf(cutters);
  }
}
