package outrigger.shapes.print.place;

import java.util.Arrays;
import outrigger.shapes.print.facet.Vec;
import outrigger.shapes.print.tree.FacetTree;
import outrigger.shapes.print.tree.NearSearch;

/** Gathers the facets within a distance of a place. */
final class Around extends NearSearch {
  private int[] slots = new int[64];
  private int count;

  Around(FacetTree tree) {
    super(tree);
  }

  /** Their slots. */
  int[] of(Vec place, double distance) {
    count = 0;
    walk(place, distance);
    int[] found = Arrays.copyOf(slots, count);
    Arrays.sort(found);
    return found;
  }

  /** The slot of the nearest of them, -1 if there is none. */
  int nearest(Vec place, double distance) {
    int nearest = -1;
    double least = Double.POSITIVE_INFINITY;
    for (int slot : of(place, distance)) {
      double toIt = closest(slot, place.x(), place.y(), place.z());
      if (toIt < least) {
        least = toIt;
        nearest = slot;
      }
    }
    return nearest;
  }

  @Override
  protected void meet(int slot) {
    if (closest(slot, x, y, z) <= reach2) {
      if (count == slots.length) {
        slots = Arrays.copyOf(slots, 2 * count);
      }
      slots[count++] = slot;
    }
  }
}
