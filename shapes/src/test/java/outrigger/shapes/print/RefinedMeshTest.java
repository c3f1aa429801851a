package outrigger.shapes.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import outrigger.shapes.check.CheckedMesh;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.Workers;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Revolution;
import outrigger.shapes.solid.Solid;

/** What is told of a part hangs on its shape: the same part cut into smaller facets gives the same concerns. */
class RefinedMeshTest {
  private static final double LONGEST_EDGE = 1.5;

  private static final Solid SLOPE = Specimens.along(5.5, 0, 0, 10, 0, 10, 5.13, 11, 5.7, 11, 9, 0, 9);
  private static final Solid PLATE_ON_A_HOLE = Specimens.box(0, 0, 9.85, 8, 4, 0.75)
      .cut(Prism.of(Profile.hole(5.4514), -6, 6).turn(Axis.X, 90).move(8.7276, 2, 7.984));
  /** The rim of the cone's top cuts a little into a face of the box: they hang together by a wedge 0.5 mm thick at most. */
  private static final Solid CONE_BESIDE_A_BOX = Solid.union(Specimens.box(8, 8.5, 0, 8, 4, 5),
      Revolution.cone(2.34, 7.64, 3.5, 4.89).move(16, 15.3, 0));
  private static final Solid CARRIED_ACROSS_A_SLIT = Solid.union(Specimens.box(0, 0, 0, 2, 10, 12),
      Specimens.box(0, 0, 10, 30, 10, 2), Specimens.box(3, 0, 0, 21, 10, 9.95));
  private static final Solid SLIT_AND_HOLE = Specimens.box(0, 0, 0, 20, 12, 6).cut(Specimens.box(4, -1, 2, 0.3, 9, 5),
      Prism.of(Profile.hole(1.2), -1, 7).move(12, 6, 0), Specimens.box(15, 3, -1, 0.7, 6, 8),
      Specimens.box(16.3, 3, -1, 1, 6, 8));

  @Test
  void concernsOfSmallerFacets_areTheSame() {
    for (Solid part : List.of(SLOPE, PLATE_ON_A_HOLE, CONE_BESIDE_A_BOX, CARRIED_ACROSS_A_SLIT, SLIT_AND_HOLE,
        Specimens.table(14, 10), Specimens.holed(9, 8))) {
      CheckedMesh plain = Specimens.proven(part);
      CheckedMesh fine = FinerMesh.of(plain, LONGEST_EDGE);
      assertTrue(fine.mesh().facetCount() > plain.mesh().facetCount());
      List<Concern> expected = concerns(plain);
      List<Concern> told = concerns(fine);
      assertEquals(words(expected), words(told));
      for (int i = 0; i < told.size(); i++) {
        assertEquals(expected.get(i).measured(), told.get(i).measured(), 0.02, told.get(i).message());
      }
    }
  }

  /** The joint of cone and box is thinner than a line over most of its length, though a few samples of faces fall on it. */
  @Test
  void jointThinnerThanALine_isAnErrorHoweverItIsCut() {
    CheckedMesh plain = Specimens.proven(CONE_BESIDE_A_BOX);
    for (CheckedMesh mesh : List.of(plain, FinerMesh.of(plain, LONGEST_EDGE))) {
      assertEquals(1, concerns(mesh).stream()
          .filter(c -> c.rule().equals("thin-neck") && c.severity() == Severity.ERROR).count());
    }
  }

  private static List<Concern> concerns(CheckedMesh mesh) {
    Specimen specimen = new Specimen(mesh, PrintLimits.standard(), Map.of(), Workers.of(1));
    return Printability.gauges().stream().flatMap(gauge -> specimen.reading(gauge).concerns().stream())
        .sorted(Comparator.comparing(Concern::rule).thenComparing(Concern::measured)).toList();
  }

  private static List<String> words(List<Concern> concerns) {
    return concerns.stream().map(c -> c.severity() + " " + c.rule()).toList();
  }
}
