package outrigger.shapes.mesh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import outrigger.shapes.check.CheckedMesh;
import outrigger.shapes.check.Finding;
import outrigger.shapes.check.Proof;
import outrigger.shapes.num.ShapeException;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Revolution;
import outrigger.shapes.solid.Solid;

/** Profiles two outlines of which touch at a point: alone they make no sound solid, with others they may. */
class TouchingProfileTest {
  private static final Set<String> TOUCHES = Set.of("crowded-edge", "pinched-vertex", "facets-meet");

  /** Two areas that meet at a corner, with walls in one plane on either side of it. */
  private static final Profile AREAS = Profile.polygon(1, 3, 2, 2, 4, 1, 4, 2, 1, 4)
      .join(Profile.polygon(2.5, 1, 4, 0, 4, 1));
  /** A hole with a corner on the middle of an edge. */
  private static final Profile HOLE = Profile.rectangle(4, 4).cut(Profile.polygon(0, -2, 1, 0, -1, 0));

  private static void assertTouches(Solid solid) {
    try {
      List<Finding> findings = Proof.judge(Mesher.mesh(solid)).findings();
      assertFalse(findings.isEmpty());
      findings.forEach(finding -> assertTrue(TOUCHES.contains(finding.rule()), finding.toString()));
    } catch (ShapeException refusal) {
      assertTrue(refusal.getMessage().startsWith("parts touch only"), refusal.getMessage());
    }
  }

  private static double volume(Solid solid) {
    Optional<CheckedMesh> proven = Proof.of(solid).proven();
    assertTrue(proven.isPresent());
    return proven.get().measures().volume();
  }

  @Test
  void mesh_touchLeftOpen_isRefusedAsATouch() {
    Solid areas = Prism.of(AREAS, 0, 3);
    Solid others = Prism.of(Profile.polygon(0.6, 3, 2, 1, 2, 2, 1, 4), 1, 3);
    Solid more = Prism.of(Profile.polygon(1.2, 0.4, 2, 0, 3, 0, 2.25, 0.75)
        .join(Profile.polygon(3, 1, 4, 1, 3, 1.5)), 1, 3);
    Solid slanted = Prism.of(Profile.polygon(0, 1, 3, 0, 4, 2), 2, 4).move(0, -1, 0);
    for (Solid solid : List.of(areas, areas.cut(slanted), areas.join(others), areas.join(more),
        areas.join(others, more), areas.join(others, more).cut(slanted), Prism.of(HOLE, 0, 2),
        new Revolution(HOLE.move(3, 0), 12, false))) {
      assertTouches(solid);
    }
  }

  @Test
  void mesh_touchCoveredOrCutAway_isSound() {
    Profile covered = Profile.rectangle(1, 1).move(0, -2);
    Solid hole = Prism.of(HOLE, 0, 2);
    Solid cover = Prism.of(covered, -1, 3);
    assertEquals(volume(cover) + 2 * HOLE.cut(covered).area(), volume(hole.join(cover)), 1e-3);
    assertEquals(2 * HOLE.cut(covered).area(), volume(hole.cut(cover)), 1e-3);
    Solid areas = Prism.of(AREAS, 0, 3);
    Solid over = Prism.of(Profile.rectangle(1, 1).move(4, 1), -1, 4);
    assertEquals(volume(over) + 3 * AREAS.cut(Profile.rectangle(1, 1).move(4, 1)).area(), volume(areas.join(over)), 1e-3);
    assertEquals(3 * AREAS.cut(Profile.rectangle(1, 1).move(4, 1)).area(), volume(areas.cut(over)), 1e-3);
  }
}
