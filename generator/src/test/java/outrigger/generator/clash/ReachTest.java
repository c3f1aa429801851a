package outrigger.generator.clash;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import outrigger.shapes.solid.Solid;

/** How far the way to a screw's head is free. */
class ReachTest {
  private static final Solid FLANGE = Shapes.box(-20, 0, -5, 20, 4, 5);

  /** A head on the flange's far face, its tool coming from +Y. */
  private static Reach reach(double postAt) {
    ToolWay way = ToolWay.hexagon("screw 1", new Spot(0, 7, 0), new Spot(0, 1, 0), 2.5);
    Element post = Shapes.part("post", Shapes.box(-3, postAt, -5, 3, postAt + 4, 5));
    return ClashCheck.check(List.of(Shapes.part("flange", FLANGE), post), List.of(way), 1).reaches().get(0);
  }

  @Test
  void reach_nothingInTheWay_isTheBlade() {
    Reach reach = reach(50);
    assertEquals(40, reach.free());
    assertFalse(reach.needsBentKey());
    assertEquals("screw 1: 40 mm straight and free.", reach.words());
  }

  @Test
  void reach_postBehindTheShortArm_needsABentKey() {
    Reach reach = reach(7 + 25.5);
    assertEquals(25.5, reach.free(), 1e-4);
    assertTrue(reach.isOpen() && reach.needsBentKey());
  }

  @Test
  void reach_postWithinTheShortArm_isClosed() {
    Reach reach = reach(7 + 12.5);
    assertEquals(12.5, reach.free(), 1e-4);
    assertFalse(reach.isOpen());
    assertEquals("screw 1: 12.5 mm free, then post; a tool needs 20 mm straight.", reach.words());
  }

  @Test
  void reach_headCovered_isZero() {
    Reach reach = reach(6.5);
    assertEquals(0, reach.free());
    assertFalse(reach.isOpen());
  }

  @Test
  void reach_everyDirection_runsAwayFromTheHead() {
    for (Spot direction : List.of(new Spot(1, 0, 0), new Spot(-1, 0, 0), new Spot(0, 1, 0), new Spot(0, -1, 0),
        new Spot(0, 0, 1), new Spot(0, 0, -1))) {
      for (double radius : new double[] {5, 6}) {
        ToolWay way = ToolWay.driver("s", new Spot(1, 2, 3), direction, radius);
        Spot at = way.head().along(way.direction(), 30);
        Element wall = Shapes.part("wall", Shapes.box(at.x() - 1, at.y() - 1, at.z() - 1, at.x() + 1, at.y() + 1,
            at.z() + 1));
        Reach reach = ClashCheck.check(List.of(wall), List.of(way), 1).reaches().get(0);
        assertEquals(29, reach.free(), 1e-3, direction.words());
        assertFalse(reach.isOpen(), "a driver is straight");
      }
    }
  }

  @Test
  void reach_aslant_runsAlongTheScrew() {
    Spot aslant = new Spot(0.6, 0.8, 0);
    ToolWay way = ToolWay.driver("s", new Spot(0, 0, 0), aslant, 2);
    Element wall = Shapes.part("wall", Shapes.box(9, 12, -1, 30, 30, 1));
    // The way is 1 mm to either side; its near rim meets the wall's corner edge 15 mm on.
    assertEquals(15, ClashCheck.check(List.of(wall), List.of(way), 1).reaches().get(0).free(), 1e-3);
  }

  @Test
  void reach_bodyKeepOut_isOffWhenScrewsAreDriven() {
    ToolWay way = ToolWay.hexagon("s", new Spot(0, 0, 0), new Spot(0, 0, 1), 2.5);
    Element tub = Element.of("tub", Sort.KEEP_OUT, Shapes.box(-5, -5, 5, 5, 5, 9));
    assertEquals(40, ClashCheck.check(List.of(tub), List.of(way), 1).reaches().get(0).free());
  }
}
