package outrigger.shapes.print;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import outrigger.shapes.check.CheckedMesh;
import outrigger.shapes.check.Proof;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.num.Grid;

/** Cuts the facets of a part into smaller ones; its shape stays the same. */
public final class FinerMesh {
  private FinerMesh() {}

  /**
   * The same part.
   *
   * @param longest edges are halved while they are longer, mm
   */
  public static CheckedMesh of(CheckedMesh given, double longest) {
    List<int[]> facets = new ArrayList<>();
    Mesh mesh = given.mesh();
    for (int f = 0; f < mesh.facetCount(); f++) {
      int[] facet = new int[9];
      for (int k = 0; k < 3; k++) {
        facet[3 * k] = mesh.x(mesh.corner(f, k));
        facet[3 * k + 1] = mesh.y(mesh.corner(f, k));
        facet[3 * k + 2] = mesh.z(mesh.corner(f, k));
      }
      split(facet, longest * Grid.PER_MM, facets);
    }
    int[] xyz = facets.stream().flatMapToInt(IntStream::of).toArray();
    return Proof.judge(Mesh.of(xyz, IntStream.range(0, xyz.length / 3).toArray())).proven().orElseThrow();
  }

  /** Halves the longest edge while it is too long; the facet across does the same, for ties fall to the same edge. */
  private static void split(int[] facet, double most, List<int[]> done) {
    int longest = IntStream.range(0, 3).boxed().max(Comparator.comparing((Integer k) -> square(facet, k))
        .thenComparing(k -> middle(facet, k)[0]).thenComparing(k -> middle(facet, k)[1])
        .thenComparing(k -> middle(facet, k)[2])).orElseThrow();
    if (square(facet, longest) <= most * most) {
      done.add(facet);
      return;
    }
    int[] middle = middle(facet, longest);
    int[] first = facet.clone();
    int[] second = facet.clone();
    System.arraycopy(middle, 0, first, 3 * ((longest + 1) % 3), 3);
    System.arraycopy(middle, 0, second, 3 * longest, 3);
    split(first, most, done);
    split(second, most, done);
  }

  private static double square(int[] facet, int edge) {
    double sum = 0;
    for (int k = 0; k < 3; k++) {
      double d = (double) facet[3 * edge + k] - facet[3 * ((edge + 1) % 3) + k];
      sum += d * d;
    }
    return sum;
  }

  private static int[] middle(int[] facet, int edge) {
    return IntStream.range(0, 3).map(k -> Math.floorDiv(facet[3 * edge + k] + facet[3 * ((edge + 1) % 3) + k], 2)).toArray();
  }
}
