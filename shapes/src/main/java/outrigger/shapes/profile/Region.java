package outrigger.shapes.profile;

import java.util.List;

/** A connected flat area: one shell counter-clockwise, its holes clockwise. */
public record Region(Ring shell, List<Ring> holes) {
  public Region {
    holes = List.copyOf(holes);
  }
}
