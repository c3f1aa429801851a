package outrigger.shapes.mesh.settle;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import outrigger.shapes.mesh.FacetCorner;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.num.IntList;
import outrigger.shapes.num.Place;

/** Splits edges of a mesh near their middles, all facets along them with them. */
final class EdgeSplit {
  private EdgeSplit() {}

  /**
   * The mesh with some edges split; those of one grid step stay.
   *
   * @param halfEdges one of each edge, as {@link Fans} numbers them
   */
  static Mesh of(Mesh mesh, List<Integer> halfEdges) {
    int[] xyz = Arrays.copyOf(mesh.xyz(), 3 * (mesh.vertexCount() + halfEdges.size()));
    int[] given = mesh.corners();
    int[] corners = given;
    int vertices = mesh.vertexCount();
    for (int h : inOrder(mesh, halfEdges)) {
      int a = given[h];
      int b = given[FacetCorner.next(h)];
      Place middle = Place.between(Place.of(xyz, a), Place.of(xyz, b));
      if (!middle.equals(Place.of(xyz, a)) && !middle.equals(Place.of(xyz, b))) {
        xyz[3 * vertices] = middle.x();
        xyz[3 * vertices + 1] = middle.y();
        xyz[3 * vertices + 2] = middle.z();
        corners = split(corners, a, b, vertices++);
      }
    }
    return corners == given ? mesh : Mesh.of(xyz, corners);
  }

  /** By the places of the edges' ends: where a facet has two of them, how it is cut depends on which comes first. */
  private static List<Integer> inOrder(Mesh mesh, List<Integer> halfEdges) {
    int[] xyz = mesh.xyz();
    int[] corners = mesh.corners();
    Comparator<Integer> ends = Comparator.comparing(h -> {
      Place[] both = {Place.of(xyz, corners[h]), Place.of(xyz, corners[FacetCorner.next(h)])};
      Arrays.sort(both);
      return both;
    }, Arrays::compare);
    return halfEdges.stream().sorted(ends).toList();
  }

  private static int[] split(int[] corners, int a, int b, int middle) {
    IntList result = new IntList();
    for (int h = 0; h < corners.length; h += 3) {
      int k = 0;
      while (k < 3 && !isEdge(corners, h + k, a, b)) {
        k++;
      }
      int from = corners[h + k % 3];
      int to = corners[h + (k + 1) % 3];
      int apex = corners[h + (k + 2) % 3];
      if (k < 3) {
        add(result, from, middle, apex);
        add(result, middle, to, apex);
      } else {
        add(result, from, to, apex);
      }
    }
    return result.toArray();
  }

  private static boolean isEdge(int[] corners, int h, int a, int b) {
    int from = corners[h];
    int to = corners[FacetCorner.next(h)];
    return from == a && to == b || from == b && to == a;
  }

  private static void add(IntList list, int a, int b, int c) {
    list.add(a);
    list.add(b);
    list.add(c);
  }
}
