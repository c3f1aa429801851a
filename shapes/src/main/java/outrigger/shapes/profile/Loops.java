package outrigger.shapes.profile;

import java.util.ArrayList;
import java.util.List;

/** Tells whether loops of grid points, moved about elsewhere, still bound regions. */
public final class Loops {
  private Loops() {}

  /**
   * What is wrong with loops as regions, in words and with its place, or an empty text if nothing is.
   *
   * @param regions of each region its loops, shell first, each x, y of its points in grid units; a loop shrunk to a
   *     line or a point counts as gone
   */
  public static String fault(List<List<int[]>> regions) {
    List<Region> left = new ArrayList<>();
    for (List<int[]> loops : regions) {
      Ring shell = Ring.of(loops.get(0), true);
      List<Ring> holes = loops.subList(1, loops.size()).stream()
          .map(loop -> Ring.of(loop, false)).filter(ring -> ring.size() > 0).toList();
      if (shell.size() > 0) {
        left.add(new Region(shell, holes));
      } else if (!holes.isEmpty()) {
        return "a hole is left without the matter round it";
      }
    }
    return left.isEmpty() ? "" : Overlays.fault(left);
  }
}
