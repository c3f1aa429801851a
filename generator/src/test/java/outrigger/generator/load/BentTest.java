package outrigger.generator.load;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.mesh.Mesher;
import outrigger.shapes.num.Axis;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;

/** Sections and roots against closed forms of a beam. */
class BentTest {
  private static final Strength PETG = Strength.of("PETG");

  private static Mesh bar(double width, double depth, double height, double degrees) {
    return Mesher.mesh(Prism.of(Profile.rectangle(width, depth).move(3, -2), 0, height).turn(Axis.Z, degrees));
  }

  /** A rectangle: b h, b h^3 / 12. */
  @Test
  void section_rectangle_isTheClosedForm() {
    Section section = Section.of(bar(6, 4, 20, 0), 7).orElseThrow();
    assertEquals(24, section.area(), 1e-9);
    assertEquals(3, section.x(), 1e-9);
    assertEquals(-2, section.y(), 1e-9);
    assertEquals(4 * 216 / 12.0, section.xx(), 1e-9);
    assertEquals(6 * 64 / 12.0, section.yy(), 1e-9);
    assertEquals(0, section.xy(), 1e-9);
  }

  /** Turned by t, the product of inertia is (xx - yy) sin 2t / 2 and the sum stays. */
  @Test
  void section_turned_followsMohr() {
    Section section = Section.of(bar(6, 4, 20, 30), 7).orElseThrow();
    assertEquals(72 + 32, section.xx() + section.yy(), 1e-3);
    assertEquals((72 - 32) * Math.sin(Math.toRadians(60)) / 2, section.xy(), 1e-3);
  }

  @Test
  void section_hollow_takesTheBoreOff() {
    Mesh tube = Mesher.mesh(Prism.of(Profile.rectangle(6, 4).cut(Profile.rectangle(2, 1)), 0, 9));
    Section section = Section.of(tube, 4).orElseThrow();
    assertEquals(22, section.area(), 1e-9);
    assertEquals(72 - 8 / 12.0, section.xx(), 1e-9);
  }

  @Test
  void section_aboveTheTop_isNothing() {
    assertTrue(Section.of(bar(6, 4, 20, 0), 20).isEmpty());
  }

  /** A cantilever: F L / (b h^2 / 6) at its root, weakest over its thin side: 10 x 20 / (6 x 16 / 6) = 12.5 MPa. */
  @Test
  void post_bends_asACantilever() {
    Post post = new Post("post", bar(6, 4, 20, 0), 0, 19, 3, -2, 20);
    Bent bent = post.bend(10, PETG).orElseThrow();
    assertEquals(12.5, bent.stress(), 1e-3);
    assertEquals("to the side", bent.jolt());
    assertEquals(0, bent.height(), 1e-3);
    assertEquals(22 / 12.5, bent.factor(), 1e-3);
  }

  /** Pulled up off its middle: F / A + F e / W. */
  @Test
  void post_headFarOut_isWorstUpward() {
    Post post = new Post("post", bar(6, 4, 2, 0), 0, 1, 43, -2, 2);
    Bent bent = post.bend(10, PETG).orElseThrow();
    assertEquals(10 / 24.0 + 10 * 40 / (4 * 36 / 6.0), bent.stress(), 1e-3);
    assertEquals("upward", bent.jolt());
  }

  /** 6 N on four tabs 9 x 3, 5 mm from floor to screw: 1.5 x 5 / (9 x 9 / 6) = 0.5556 MPa. */
  @Test
  void tab_betweenRails_bendsOverTheScrewsHeight() {
    Bent bent = new Tab("tray", 9, 3, 1.2, 6.2, 0, 4).bend(6, PETG);
    assertEquals(7.5 / 13.5, bent.stress(), 1e-9);
    assertEquals(22 / (7.5 / 13.5), bent.factor(), 1e-9);
  }

  /** Outboard, 3 N on each of two tabs 13 mm from the middle: 39 / 13.5 + 3 / 27. */
  @Test
  void tab_outboard_hangsOverItsArm() {
    Bent bent = new Tab("tray", 9, 3, 1.2, 6.2, 13, 2).bend(6, PETG);
    assertEquals(39 / 13.5 + 3 / 27.0, bent.stress(), 1e-9);
    assertEquals("downward", bent.jolt());
  }

  @Test
  void strength_unknownPlastic_isTheWeakest() {
    assertEquals(7.5, Strength.of("mystery").across());
    assertEquals(20, Strength.of("pla").across());
  }
}
