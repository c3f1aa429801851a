package outrigger.shapes.print.wall;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import outrigger.shapes.num.Axis;
import outrigger.shapes.print.Concern;
import outrigger.shapes.print.Severity;
import outrigger.shapes.print.Specimens;
import outrigger.shapes.print.WallShapes;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Solid;

/** Walls that end in a sharp edge, and pockets that leave no wall but an edge: neither hides the other. */
class WallsAndEdgesTest {
  private static List<Concern> read(Solid solid) {
    return new WallGauge().read(WallShapes.specimen(solid)).concerns();
  }

  /** The edge is 20 degrees sharp, the wall below it 10 mm high. */
  @Test
  void read_thinWallWithASharpTop_isToldBoth() {
    Solid wall = Specimens.along(12, 0, 0, 20, 0, 20, 3, 10.6, 3, 10.6, 13, 10.3, 14.7, 10, 13, 10, 3, 0, 3);
    for (Solid solid : List.of(wall, WallShapes.turned(wall))) {
      List<Concern> told = read(solid);
      assertEquals(List.of("thin-edge", "thin-wall"), told.stream().map(Concern::rule).sorted().toList(), told.toString());
      Concern thin = told.stream().filter(c -> c.rule().equals("thin-wall")).findFirst().orElseThrow();
      assertEquals(0.6, thin.measured(), 0.01);
      assertEquals(2 * 10 * 12 + 2 * 10 * 0.6, thin.area(), 25);
    }
  }

  /** A hole along Y takes the end off a plate of 0.75 mm, whose top runs out to an edge of 16 degrees. */
  @Test
  void read_thinPlateThatEndsOnAHole_isToldBesideItsEdge() {
    for (double length : new double[] {8, 8.5, 9}) {
      Solid plate = Specimens.box(0, 0, 9.85, length, 4, 0.75)
          .cut(Prism.of(Profile.hole(5.4514), -6, 6).turn(Axis.X, 90).move(length + 0.7276, 2, 7.984));
      for (Solid solid : List.of(plate, WallShapes.turned(plate))) {
        List<Concern> told = read(solid);
        assertEquals(List.of("thin-edge", "thin-wall"), told.stream().map(Concern::rule).sorted().toList(), told.toString());
        for (Concern c : told) {
          assertEquals(Severity.CAUTION, c.severity(), c.message());
        }
        Concern thin = told.stream().filter(c -> c.rule().equals("thin-wall")).findFirst().orElseThrow();
        assertEquals(0.75, thin.measured(), 0.01);
      }
    }
  }

  /** Nothing of them faces each other, and all that holds both sides together is what their edges leave. */
  @Test
  void read_pocketsFromBothSidesThatEndAtOneHeight_leaveANeckOfTheirLength() {
    Solid block = Specimens.box(0, 0, 0, 30, 20, 6).cut(Specimens.box(3, 3, 3, 7, 14, 5),
        Specimens.box(10.4, 3, -1, 10, 14, 4));
    List<Concern> told = read(block);
    assertEquals(1, told.size(), told.toString());
    assertEquals("thin-neck", told.get(0).rule());
    assertEquals(Severity.ERROR, told.get(0).severity());
    assertEquals(0.4, told.get(0).measured(), 0.01);
    assertTrue(told.get(0).message().matches(".* along 14([.]\\d)? mm: .*"), told.get(0).message());
  }

  /** 0.3 to 3 mm over 20 mm: a ninth of it is thinner than a line, two ninths are thinner than two. */
  @Test
  void read_wedge_tellsWhatIsThinnerThanALineAndWhatCannotBeReliedOn() {
    List<Concern> told = read(WallShapes.wedge(20, 0.3, 3, 10));
    assertEquals(1, told.size(), told.toString());
    String message = told.get(0).message();
    assertTrue(message.startsWith("the wall is 0.30 mm thick, thinner than one printed line of 0.45 mm over 2"), message);
    assertTrue(message.matches(".* of surface, and than the 0[.]90 mm to rely on over 9\\d([.]\\d)? mm2: .*"), message);
  }
}
