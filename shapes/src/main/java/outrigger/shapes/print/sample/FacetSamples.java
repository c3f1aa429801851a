package outrigger.shapes.print.sample;

import java.util.function.Predicate;
import outrigger.shapes.print.facet.Vec;
import outrigger.shapes.print.tree.FacetTree;

/**
 * Points spread over a facet, each with the area it stands for.
 *
 * <p>No point of the facet lies farther than the spacing from one of them. They hang on the facet's shape alone:
 * strips across its longest edge, or its shortest where the two longest are equal, each cut in rows. Turned, moved and
 * mirrored facets have the same points, moved with them, but for facets with all edges equal, where there is no telling
 * which edge is meant.
 */
public final class FacetSamples {
  /** A sample stands for little more than this part of the spacing about it: half the diagonal of a square. */
  public static final double CELL = 0.75;
  /** Edges are equal if they differ by less than this part: rounding to the grid is not to decide. */
  private static final double EQUAL = 1e-3;

  private final FacetTree tree;
  private final double spacing;

  /** @param spacing of samples, mm */
  public FacetSamples(FacetTree tree, double spacing) {
    this.tree = tree;
    this.spacing = spacing;
  }

  /** Whether one colour cannot tell of all of it: it is broader than the spacing and has several samples. */
  public boolean isLarge(int slot) {
    return tree.breadth(slot) > spacing && !isAllNear(slot);
  }

  /** Middle of a facet's corners, mm. */
  public static Vec middle(FacetTree tree, int slot) {
    return Vec.middle(tree.corner(slot, 0), tree.corner(slot, 1), tree.corner(slot, 2));
  }

  /** Adds the points of a facet to a list, at least one. */
  public void addTo(SampleList list, int slot) {
    addTo(list, slot, p -> true);
  }

  /** Adds those points of a facet to a list that are wanted; what each stands for does not hang on the others. */
  public void addTo(SampleList list, int slot, Predicate<Vec> wanted) {
    int k = base(slot);
    Vec a = tree.corner(slot, k);
    Vec b = tree.corner(slot, (k + 1) % 3);
    Vec c = tree.corner(slot, (k + 2) % 3);
    double width = a.distance(b);
    Vec along = b.minus(a).times(1 / width);
    // over the shortest edge the corner may lie far to one side: rows are then laid aslant, towards it
    double foot = tree.edge(slot, k) < tree.edge(slot, (k + 1) % 3) ? width / 2 : c.minus(a).dot(along);
    Vec up = c.minus(a).plus(along, -foot);
    double height = up.length();
    if (isAllNear(slot)) {
      list.add(slot, middle(tree, slot), tree.area(slot));
    } else {
      int from = list.size();
      spread(list, slot, new Frame(a, along, up.times(1 / height), width, height, foot));
      double sum = 0;
      for (int i = from; i < list.size(); i++) {
        sum += list.area(i);
      }
      list.scaleAreas(from, tree.area(slot) / sum);
      list.retain(from, wanted);
    }
  }

  /** Whether all of a facet lies within the spacing of its middle. */
  public boolean isAllNear(int slot) {
    Vec middle = middle(tree, slot);
    return middle.distance(tree.corner(slot, 0)) <= spacing && middle.distance(tree.corner(slot, 1)) <= spacing
        && middle.distance(tree.corner(slot, 2)) <= spacing;
  }

  /** A facet on its base: the base's left end, unit vectors along it and up or aslant, and the shape in these. */
  private record Frame(Vec origin, Vec along, Vec up, double width, double height, double foot) {
    /** The greatest height between two places of the base. */
    double top(double left, double right) {
      double rise = right >= foot ? 1 : right / foot;
      double fall = left <= foot ? 1 : (width - left) / (width - foot);
      return height * Math.min(rise, fall);
    }
  }

  private int base(int slot) {
    double[] length = new double[3];
    int longest = 0;
    int shortest = 0;
    for (int k = 0; k < 3; k++) {
      length[k] = tree.edge(slot, k);
      longest = length[k] > length[longest] ? k : longest;
      shortest = length[k] < length[shortest] ? k : shortest;
    }
    double second = length[0] + length[1] + length[2] - length[longest] - length[shortest];
    return second > length[longest] * (1 - EQUAL) ? shortest : longest;
  }

  /** Strips along the base; in each, rows up to the facet's height there; each point in the middle of its row. */
  private void spread(SampleList list, int slot, Frame f) {
    int strips = parts(f.width);
    for (int i = 0; i < strips; i++) {
      double left = f.width * i / strips;
      double right = f.width * (i + 1) / strips;
      double top = f.top(left, right);
      int rows = parts(top);
      for (int j = 0; j < rows; j++) {
        double y = top * (j + 0.5) / rows;
        double from = Math.max(left, f.foot * y / f.height);
        double to = Math.min(right, f.width - (f.width - f.foot) * y / f.height);
        list.add(slot, f.origin.plus(f.along, (from + to) / 2).plus(f.up, y), (to - from) * top / rows);
      }
    }
  }

  private int parts(double length) {
    return Math.max(1, (int) Math.ceil(length / spacing - EQUAL));
  }
}
