package outrigger.shapes.mesh;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import outrigger.shapes.check.CheckedMesh;
import outrigger.shapes.check.Measures;
import outrigger.shapes.check.Proof;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.Grid;
import outrigger.shapes.num.ShapeException;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.EdgeForm;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Revolution;
import outrigger.shapes.solid.Solid;

/** Whole solids against closed forms of volume, area and genus, each proven sound. */
class MesherTest {
  private static final Solid CUBE = box(2, 2, 2);

  private static Solid box(double width, double depth, double height) {
    return Prism.of(Profile.rectangle(width, depth), 0, height);
  }

  private static Measures measure(Solid solid) {
    Proof.Verdict verdict = Proof.judge(Mesher.mesh(solid));
    assertEquals(List.of(), verdict.findings());
    return verdict.proven().map(CheckedMesh::measures).orElseThrow();
  }

  private static double volume(Solid solid) {
    return measure(solid).volume();
  }

  @Test
  void meshIfAny_apart_isEmpty() {
    assertTrue(Mesher.meshIfAny(Solid.common(CUBE, CUBE.move(5, 0, 0))).isEmpty());
  }

  @Test
  void meshIfAny_flush_isEmpty() {
    assertTrue(Mesher.meshIfAny(Solid.common(CUBE, CUBE.move(2, 0.5, 0))).isEmpty());
  }

  @Test
  void meshIfAny_oneGridStepDeep_isThatThick() {
    Solid common = Solid.common(CUBE, CUBE.move(2 - Grid.STEP, 0, 0));
    assertEquals(4 * Grid.STEP, Proof.judge(Mesher.meshIfAny(common).orElseThrow()).measures().volume());
  }

  @Test
  void mesh_cube_hasTwelveFacets() {
    Measures m = measure(CUBE);
    assertEquals(12, m.facets());
    assertEquals(8, m.volume());
    assertEquals(24, m.area());
    assertEquals(0, m.genus());
  }

  @Test
  void mesh_prism_volumeIsAreaTimesHeight() {
    Profile plate = Profile.roundedRectangle(30, 12, 2).cut(Profile.hole(3.4).move(-9, 0), Profile.hole(3.4).move(9, 0));
    Measures m = measure(Prism.of(plate, 0, 4.25));
    assertEquals(plate.area() * 4.25, m.volume(), 1e-9);
    assertEquals(2, m.genus());
  }

  /** A frustum of similar ends: h/3 (A1 + A2 + sqrt(A1 A2)). */
  @Test
  void mesh_draftedPrism_isFrustum() {
    double inset = 6 * Math.tan(Math.toRadians(5));
    double bottom = 20 * 20;
    double top = (20 - 2 * inset) * (20 - 2 * inset);
    assertEquals(2 * (bottom + top + Math.sqrt(bottom * top)),
        volume(Prism.of(Profile.rectangle(20, 20), 0, 6).withDraft(5)), 0.01);
  }

  /** Four corner wedges taken off each rim: a square frustum on a square prism. */
  @Test
  void mesh_chamferedPrism_losesItsRim() {
    double frustum = (100 + 64 + 80) / 3.0;
    assertEquals(100 * 4 + 2 * frustum, volume(Prism.of(Profile.rectangle(10, 10), 0, 6)
        .withTopEdge(EdgeForm.chamfer(1)).withBottomEdge(EdgeForm.chamfer(1))), 1e-9);
  }

  /**
   * Two frustums on a plate whose feet touch at a corner: the plate's face has holes that touch there, and the surface goes
   * round that corner once. By Euler's formula 23 vertices make 42 facets.
   */
  @Test
  void mesh_feetTouchingAtACorner_isOneSurface() {
    Solid foot = Prism.of(Profile.rectangle(10, 10), 0, 4).withDraft(45);
    Measures m = measure(Solid.union(box(40, 40, 8).move(0, 0, -8), foot.move(-5, -5, 0), foot.move(5, 5, 0)));
    assertEquals(40 * 40 * 8 + 2 * 4 / 3.0 * (100 + 4 + 20), m.volume(), 1e-9);
    assertEquals(42, m.facets());
    assertEquals(0, m.genus());
  }

  /** A filleted round post: the section turned once round, by the theorem of Pappus. */
  @Test
  void mesh_filletedPost_approachesPappus() {
    double r = 1;
    double inner = 5 - r;
    double quarter = Math.PI * r * r / 4;
    double expected = Math.PI * 25 * (8 - r) + Math.PI * inner * inner * r
        + 2 * Math.PI * quarter * (inner + 4 * r / (3 * Math.PI));
    assertEquals(1, volume(Prism.of(Profile.post(10), 0, 8).withTopEdge(EdgeForm.fillet(r))) / expected, 0.005);
  }

  @Test
  void mesh_chamferOfTheCornerRadius_closesTheCorners() {
    Measures m = measure(Prism.of(Profile.roundedRectangle(10, 10, 1), 0, 4).withTopEdge(EdgeForm.chamfer(1)));
    assertEquals(1, m.pieces());
  }

  @Test
  void mesh_chamferBeyondTheCornerRadius_isRefused() {
    ShapeException e = assertThrows(ShapeException.class,
        () -> Mesher.mesh(Prism.of(Profile.roundedRectangle(10, 10, 0.5), 0, 4).withTopEdge(EdgeForm.chamfer(1))));
    assertTrue(e.getMessage().contains("does not fit the profile near"), e.getMessage());
  }

  @Test
  void mesh_cone_isAThirdOfItsPrism() {
    Solid cone = new Revolution(Profile.polygon(0, 0, 5, 0, 0, 9), 64, false);
    double base = 0.5 * 64 * 25 * Math.sin(2 * Math.PI / 64);
    assertEquals(base * 9 / 3, volume(cone), 0.01);
  }

  /** Error of an inscribed sphere falls with the square of the side count. */
  @Test
  void mesh_sphere_convergesBySecondOrder() {
    double exact = 4 * Math.PI / 3 * 1000;
    double coarse = exact - volume(Revolution.sphere(20, 32));
    double fine = exact - volume(Revolution.sphere(20, 64));
    assertEquals(4, coarse / fine, 0.05);
  }

  @Test
  void mesh_ring_hasAHandle() {
    Measures m = measure(Revolution.of(Profile.rectangle(2, 3).move(8, 0)));
    assertEquals(1, m.genus());
    assertEquals(2 * Math.PI * 8 * 6, m.volume(), 0.5);
  }

  /** Two crossed cylinders of one radius have 16 r^3 / 3 in common (Archimedes); polygons of n sides come near it. */
  @Test
  void common_crossedCylinders_isSixteenThirdsOfRadiusCubed() {
    Solid post = Prism.of(Profile.post(10, 0.001), -8, 8);
    double common = volume(Solid.common(post, post.turn(Axis.X, 90)));
    assertEquals(16.0 / 3 * 125, common, 0.3);
  }

  @Test
  void union_flushBoxes_leavesNoSeam() {
    Measures m = measure(CUBE.join(CUBE.move(2, 0, 0), CUBE.move(-2, 0, 0)));
    assertEquals(12, m.facets());
    assertEquals(24, m.volume());
  }

  @Test
  void cut_flushBottom_opensThePocket() {
    Measures m = measure(CUBE.cut(Prism.of(Profile.rectangle(1, 1), 0, 1)));
    assertEquals(7, m.volume());
    assertEquals(1, m.shells());
  }

  @Test
  void cut_inside_leavesAVoid() {
    Measures m = measure(box(4, 4, 4).cut(CUBE.move(0, 0, 1)));
    assertEquals(56, m.volume());
    assertEquals(2, m.shells());
    assertEquals(1, m.pieces());
  }

  @Test
  void cut_throughTheMiddle_leavesTwoPieces() {
    Measures m = measure(box(6, 2, 2).cut(box(2, 2, 2)));
    assertEquals(2, m.pieces());
    assertEquals(24, m.facets());
  }

  @Test
  void cut_sameSolid_isRefusedAsEmpty() {
    ShapeException e = assertThrows(ShapeException.class, () -> Mesher.mesh(CUBE.cut(CUBE)));
    assertTrue(e.getMessage().startsWith("nothing is left of the solid"), e.getMessage());
  }

  @Test
  void union_cubesSharingAnEdge_isRefusedWithItsPlace() {
    ShapeException e = assertThrows(ShapeException.class, () -> Mesher.mesh(CUBE.join(CUBE.move(2, 2, 0))));
    assertTrue(e.getMessage().contains("touch only along a line here, from (1.000, 1.000,"), e.getMessage());
  }

  @Test
  void union_cubesSharingACorner_isNotProven() {
    Proof.Verdict verdict = Proof.judge(Mesher.mesh(CUBE.join(CUBE.move(2, 2, 2))));
    assertEquals("pinched-vertex", verdict.findings().get(0).rule());
  }

  @Test
  void mesh_turnedByAnyAngle_keepsItsVolumeNearly() {
    Solid part = box(10, 6, 3).cut(Prism.of(Profile.hole(3), -1, 4));
    Measures straight = measure(part);
    for (double degrees : new double[] {1e-4, 1, 30, 45, 89.9999, 137}) {
      Solid turned = part.turn(Axis.X, degrees).turn(Axis.Z, degrees / 2).move(1, 2, 3);
      assertEquals(straight.volume(), volume(turned), straight.area() * Grid.STEP / 2, "turned by " + degrees);
    }
  }

  @Test
  void mesh_quarterTurnsAndMirrors_changeNothing() {
    Solid part = box(10, 6, 3).cut(Prism.of(Profile.hole(3).move(1, 1), 1, 4),
        Revolution.cone(3, 1, 0, 4).turn(Axis.Y, 90));
    Measures straight = measure(part);
    for (Axis axis : Axis.values()) {
      for (int quarter = 1; quarter < 4; quarter++) {
        Measures turned = measure(part.turn(axis, 90 * quarter));
        assertEquals(straight.volume(), turned.volume());
        assertEquals(straight.facets(), turned.facets());
      }
      assertEquals(straight.volume(), measure(part.mirror(axis)).volume());
    }
  }

  @Test
  void mesh_cutWithATurnedTool_isSound() {
    Solid plate = box(40, 20, 3);
    Solid slot = box(30, 2, 30).turn(Axis.X, 33).turn(Axis.Z, 7);
    Measures m = measure(plate.cut(slot));
    assertTrue(m.volume() < 2400 && m.volume() > 2100, "volume " + m.volume());
  }

  @Test
  void mesh_interrupted_stops() {
    Thread.currentThread().interrupt();
    try {
      assertThrows(CancellationException.class, () -> Mesher.mesh(CUBE.join(CUBE.move(1, 1, 1))));
    } finally {
      assertTrue(Thread.interrupted());
    }
  }

  @Test
  void mesh_beyondTheGrid_isRefused() {
    assertThrows(ShapeException.class, () -> Mesher.mesh(CUBE.move(1023.5, 0, 0)));
  }

  /** A last bit left by two turns once bent the faces of an operand by a grid step, and left an outline open. */
  @Test
  void mesh_turnedThereAndBack_isAsNotTurned() {
    Solid ball = Revolution.sphere(3, 12);
    Mesh plain = Mesher.mesh(ball);
    Mesh back = Mesher.mesh(ball.turn(Axis.Y, 75).turn(Axis.Y, -75));
    assertArrayEquals(plain.xyz(), back.xyz());
    assertArrayEquals(plain.corners(), back.corners());
  }
}
