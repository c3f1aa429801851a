package outrigger.shapes.print.stand;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import outrigger.shapes.num.Axis;
import outrigger.shapes.print.Concern;
import outrigger.shapes.print.Limit;
import outrigger.shapes.print.Reading;
import outrigger.shapes.print.Severity;
import outrigger.shapes.print.Specimen;
import outrigger.shapes.print.Specimens;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Revolution;
import outrigger.shapes.solid.Solid;

class StandingGaugeTest {
  private static Reading read(Solid solid) {
    return new StandingGauge().read(Specimens.of(solid));
  }

  private static List<String> rules(Solid solid) {
    return read(solid).concerns().stream().map(Concern::rule).toList();
  }

  private static double fact(Solid solid, String name) {
    return read(solid).facts().stream().filter(fact -> fact.name().equals(name)).findFirst().orElseThrow().value();
  }

  @Test
  void partOnAnEdge_isNotSaidToStandOnNoArea() {
    Specimen onEdge = Specimens.of(Specimens.box(0, 0, 0, 20, 20, 20).turn(Axis.X, 45)
        .turn(Axis.Y, 35));
    Reading reading = new StandingGauge().read(onEdge);
    assertEquals("a point or an edge of the first layer lies on the bed", reading.facts().get(0).words());
  }

  /** It is advised to put a part on another side only where it fits on one, if need be across the bed. */
  @Test
  void partTooLarge_isPutOnAnotherSideWhereItFits() {
    assertEquals("Stand it up, split it, or take a larger printer.", bedFit(300, 230, 3));
    assertEquals("Split it, or take a larger printer.", bedFit(300, 300, 3));
    assertEquals("Lay it down, split it, or take a taller printer.", bedFit(60, 60, 245));
    assertEquals("Split it, or take a taller printer.", bedFit(200, 200, 245));
  }

  private static String bedFit(double x, double y, double z) {
    return read(Specimens.box(0, 0, 0, x, y, z)).concerns().stream().filter(c -> c.rule().equals("bed-fit")).findFirst()
        .orElseThrow().advice();
  }

  @Test
  void goodParts_passWithoutConcern() {
    assertEquals(List.of(), rules(Specimens.box(0, 0, 0, 20, 20, 20)));
    assertEquals(List.of(), rules(Prism.of(Profile.post(10), 0, 30)));
    assertEquals(List.of(), rules(Specimens.box(0, 0, 0, 3, 3, 1)));
  }

  @Test
  void exactlyAtALimit_passesHoweverTurned() {
    for (int degrees = 0; degrees < 360; degrees += 17) {
      assertEquals(List.of(), rules(Specimens.box(0, 0, 0, 4, 5, 10).turn(Axis.Z, degrees)), "20 mm2, " + degrees);
      assertEquals(List.of(), rules(Specimens.box(0, 0, 0, 5, 5, 40).turn(Axis.Z, degrees)), "8 times, " + degrees);
    }
  }

  @Test
  void box_tipsAtTheAngleOfItsHalfWidth() {
    Solid box = Specimens.box(5, 5, 3, 10, 40, 30);
    assertEquals(400, fact(box, "contact-area"), 1e-6);
    assertEquals(StrictMath.toDegrees(StrictMath.atan2(5, 15)), fact(box, "tipping-angle"), 1e-6);
    assertEquals(fact(box, "tipping-angle"), fact(box.turn(Axis.Z, 31), "tipping-angle"), 0.001);
  }

  @Test
  void ball_holdsByTheCapOfItsFirstLayer() {
    // A circle at height h of a ball of radius R: pi (2 R h - h^2).
    assertEquals(Math.PI * (20 * 0.1 - 0.01), fact(Revolution.sphere(20, 400), "contact-area"), 0.05);
    assertTrue(rules(Revolution.sphere(20)).contains("small-contact"));
  }

  @Test
  void overhungPart_tipsOver() {
    Solid part = Specimens.along(10, 0, 0, 5, 0, 5, 10, 40, 10, 40, 15, 0, 15);
    Concern concern = read(part).concerns().get(0);
    assertEquals("tips-over", concern.rule());
    // Post 5 x 10 about x = 2.5, arm 40 x 5 about x = 20: centre at (50 * 2.5 + 200 * 20) / 250 = 16.5.
    assertEquals(16.5, concern.x(), 1e-3);
    assertEquals(16.5 - 5, concern.measured(), 1e-3);
  }

  @Test
  void bracketHeldByItsFoot_passes() {
    Solid bracket = Specimens.along(8, 0, 0, 4, 0, 4, 10, 14, 20, 14, 25, 0, 25);
    assertEquals(List.of(), rules(bracket));
    assertTrue(fact(bracket, "tipping-angle") < 0);
  }

  @Test
  void tallThinWall_isSlender() {
    Concern concern = read(Specimens.box(0, 0, 0, 3, 20, 40).turn(Axis.Z, 20)).concerns().get(0);
    assertEquals("slender", concern.rule());
    assertEquals(40 / 3.0, concern.measured(), 0.01);
  }

  @Test
  void bed_tooSmall_isSaidWithWhatHelps() {
    assertEquals(List.of(), rules(Specimens.box(-100, -100, 0, 210, 210, 2)));
    Concern brim = read(Specimens.box(-100, -100, 0, 215, 100, 2)).concerns().get(0);
    assertEquals(Severity.CAUTION, brim.severity());
    assertTrue(brim.message().contains("but not with a brim"), brim.message());
    // A rod of 250 by 10 needs (250 + 10) / sqrt 2 = 184 mm either way when turned by 45 degrees.
    Concern turn = read(Specimens.box(-100, -100, 0, 250, 10, 10)).concerns().get(0);
    assertEquals(Severity.CAUTION, turn.severity());
    assertTrue(turn.advice().startsWith("Turn it by "), turn.advice());
    Concern error = read(Specimens.box(-200, -200, 0, 330, 20, 2)).concerns().get(0);
    assertEquals(Severity.ERROR, error.severity());
    assertEquals(330, error.measured(), 1e-9);
    assertEquals(Limit.BED_Z, read(Specimens.box(0, 0, 0, 60, 60, 250)).concerns().get(0).limit());
  }

  private static Solid pocketed(double bevel) {
    Solid pocket = Prism.of(Profile.hole(6.4), -1, 3);
    Solid block = Specimens.box(-10, -10, 0, 20, 20, 8);
    return bevel == 0 ? block.cut(pocket) : block.cut(pocket, Revolution.coneCutter(6.4 + 2 * bevel, 6.4, 0, bevel));
  }

  @Test
  void pocketOnTheBed_isNarrowedByTheBulge() {
    Concern concern = read(pocketed(0).turn(Axis.Z, 25).move(30, 0, 4)).concerns().get(0);
    assertEquals("elephant-foot", concern.rule());
    assertEquals(30, concern.x(), 0.01);
    assertEquals(4, concern.z());
    assertEquals(0.2, concern.measured(), 0.01);
    assertEquals(List.of(), rules(pocketed(0.4)));
  }

  /** A pocket is known again three layers up by its middle, wherever that lies. */
  @Test
  void pocketsInRows_areEachNarrowedByTheBulge() {
    Solid block = Specimens.box(-20, -20, 0, 40, 40, 5);
    Solid[] pockets = new Solid[9];
    for (int i = 0; i < pockets.length; i++) {
      pockets[i] = Prism.of(Profile.hole(6), -1, 3).move(11.025 * (i % 3 - 1), 11.0499 * (i / 3 - 1), 0);
    }
    List<Concern> concerns = read(block.cut(pockets)).concerns();
    assertEquals(9, concerns.size(), concerns.toString());
    for (int i = 0; i < pockets.length; i++) {
      assertEquals("elephant-foot", concerns.get(i).rule());
    }
    assertEquals(9, concerns.stream().map(c -> Math.round(c.x()) + " " + Math.round(c.y())).distinct().count());
  }

  @Test
  void holeThroughTheBed_isToldWithWhatIsLeft() {
    Solid block = Specimens.box(-10, -10, 0, 20, 20, 8).cut(Prism.of(Profile.hole(3.4), -1, 9));
    assertEquals(List.of(), rules(block));
    assertEquals(3, fact(block, "narrowed-hole"), 0.02);
  }
}
