package outrigger.shapes.print;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * All that hangs together over layers.
 *
 * @param hangs its pieces, from the bed up
 * @param depth how far it stands out in all from what carries it firmly, where it is not held at both ends
 */
record Hanging(List<Hang> hangs, double depth) {
  /** Smaller shares of the whole area do not tell how steep it is. */
  private static final double TELLING = 0.005;

  Hanging {
    hangs = List.copyOf(hangs);
  }

  /** Whether any of it starts in the air. */
  boolean starts() {
    return hangs.stream().anyMatch(Hang::starts);
  }

  /** The piece with the longest span. */
  Hang widest() {
    return hangs.stream().max(Comparator.comparingDouble(Hang::span)).orElseThrow();
  }

  /** The undersides of all pieces. */
  List<Patch> patches() {
    List<Patch> all = new ArrayList<>();
    hangs.forEach(hang -> all.addAll(hang.patches()));
    return all;
  }

  /** Area of the undersides as seen from below, mm^2. */
  double area() {
    return hangs.stream().flatMap(hang -> hang.patches().stream()).mapToDouble(Patch::area).sum();
  }

  /** Middle of the undersides, x, y, z; of the lowest piece if there is no underside to speak of. */
  double[] middle() {
    double all = area();
    if (all == 0) {
      Hang first = hangs.get(0);
      return new double[] {(first.piece().minX() + first.piece().maxX()) / 2,
          (first.piece().minY() + first.piece().maxY()) / 2, first.z()};
    }
    double[] middle = new double[3];
    for (Patch patch : patches()) {
      middle[0] += patch.area() * patch.x() / all;
      middle[1] += patch.area() * patch.y() / all;
      middle[2] += patch.area() * patch.z() / all;
    }
    return middle;
  }

  /** Lean of its steepest underside, slivers left out, degrees from the vertical. */
  double steepest(Undersides undersides) {
    List<Patch> patches = new ArrayList<>(patches());
    patches.sort(Comparator.comparingDouble((Patch patch) -> -undersides.lean(patch.facet())));
    double sum = 0;
    for (Patch patch : patches) {
      sum += patch.area();
      if (sum >= TELLING * area()) {
        return undersides.lean(patch.facet());
      }
    }
    return 0;
  }

  /** Least and greatest x and y over all pieces. */
  double[] bounds() {
    return new double[] {hangs.stream().mapToDouble(h -> h.piece().minX()).min().orElseThrow(),
        hangs.stream().mapToDouble(h -> h.piece().minY()).min().orElseThrow(),
        hangs.stream().mapToDouble(h -> h.piece().maxX()).max().orElseThrow(),
        hangs.stream().mapToDouble(h -> h.piece().maxY()).max().orElseThrow()};
  }
}
