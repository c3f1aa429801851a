package outrigger.shapes.print.ball;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import outrigger.shapes.mesh.Mesher;
import outrigger.shapes.num.Grid;
import outrigger.shapes.print.facet.Vec;
import outrigger.shapes.print.tree.FacetTree;
import outrigger.shapes.print.tree.Facing;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;

/** Contacts that rounding to the grid has moved or turned hold no ball in a wedge of 30 degrees. */
class RoundedContactsTest {
  private static final Vec FLANK = new Vec(0.5, -Math.sqrt(0.75), 0);
  private static final double R = 0.005;

  /** A wedge along Z, its lower face rising by a grid step over eight of them: by seven degrees, towards the other face. */
  private static FacetTree wedge() {
    double step = Grid.STEP;
    return FacetTree.of(Mesher.mesh(Prism.of(Profile.polygon(0, 0, 100 * step, 0, 108 * step, step, 10, 0, 10,
        10 / Math.sqrt(3)), 0, 10)));
  }

  private static int slot(FacetTree tree, Vec p) {
    Touching touching = new Touching(tree);
    for (int slot = 0; slot < tree.size(); slot++) {
      if (tree.normal(slot).dot(FLANK) < -0.99 && touching.foot(slot, p).distance(p) < 1e-3) {
        return slot;
      }
    }
    throw new AssertionError("no facet at " + p);
  }

  @Test
  void ballOnANeedle_isNotHeld() {
    FacetTree tree = wedge();
    double way = 100.5 * Grid.STEP;
    Vec p = new Vec(way * Math.sqrt(0.75), way / 2, 4);
    BallProbe.Ball ball = new BallProbe(tree, 2, 1).measure(slot(tree, p), p, FLANK);
    assertTrue(tree.isNeedle(ball.stopper()));
    assertFalse(ball.held(), ball.toString());
    assertEquals(1, ball.width(), 1e-5);
  }

  /**
   * A border of the face below, one and a half grid steps off it and ten degrees farther in, is no contact of its own, even
   * where it is the nearer one.
   */
  @Test
  void borderOffItsFaceByRounding_isNoContact() {
    for (double off : new double[] {-1.5 * Grid.STEP, 0, 1.5 * Grid.STEP}) {
      double sin = Math.sin(Math.toRadians(10));
      double cos = Math.cos(Math.toRadians(10));
      Spokes spokes = new Spokes();
      spokes.add(FLANK.x(), FLANK.y(), 0, R, true);
      spokes.add(0, 1, 0, R, true);
      spokes.add(-sin, cos, 0, (R + off) / cos, false);
      assertTrue(spokes.pull().length() < Facing.HELD);
      spokes.dropBeside();
      assertEquals(Math.sin(Math.toRadians(15)), spokes.pull().length(), 1e-9, off + " mm");
    }
  }

  /** Nor is a border a little farther in of a face bent by a degree, as the flank of a thread. */
  @Test
  void borderOfABentFace_isNoContact() {
    double radius = 0.064;
    double way = radius * Math.tan(Math.toRadians(8.6));
    double off = Math.tan(Math.toRadians(1)) * way;
    Vec border = new Vec(-way, radius + off, 0);
    Spokes spokes = new Spokes();
    spokes.add(FLANK.x(), FLANK.y(), 0, radius, true);
    spokes.add(0, 1, 0, radius, true);
    spokes.add(border.x() / border.length(), border.y() / border.length(), 0, border.length(), false);
    assertTrue(spokes.pull().length() < Facing.HELD);
    spokes.dropBeside();
    assertEquals(Math.sin(Math.toRadians(15)), spokes.pull().length(), 1e-9);
  }

  /** So far off that rounding does not explain it, it is one. */
  @Test
  void edgeBeyondRounding_isAContact() {
    Spokes spokes = new Spokes();
    spokes.add(FLANK.x(), FLANK.y(), 0, R, true);
    spokes.add(0, 1, 0, R, true);
    spokes.add(-Math.sin(Math.toRadians(20)), Math.cos(Math.toRadians(20)), 0, R, false);
    spokes.dropBeside();
    assertEquals(Math.sin(Math.toRadians(5)), spokes.pull().length(), 1e-9);
  }
}
