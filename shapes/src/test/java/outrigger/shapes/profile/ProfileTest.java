package outrigger.shapes.profile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import outrigger.shapes.exact.Sign;
import outrigger.shapes.num.Grid;
import outrigger.shapes.num.ShapeException;

class ProfileTest {
  private static Ring shell(Profile profile) {
    assertEquals(1, profile.regions().size());
    return profile.regions().get(0).shell();
  }

  private static String refusal(Executable call) {
    return assertThrows(ShapeException.class, call).getMessage();
  }

  /** Least distance from the origin to any side of the ring, in grid units. */
  private static double nearestSide(Ring ring) {
    double nearest = Double.MAX_VALUE;
    for (int i = 0; i < ring.size(); i++) {
      int j = (i + 1) % ring.size();
      double cross = (double) ring.x(i) * ring.y(j) - (double) ring.x(j) * ring.y(i);
      nearest = Math.min(nearest, cross / Math.hypot(ring.x(j) - ring.x(i), ring.y(j) - ring.y(i)));
    }
    return nearest;
  }

  private static double farthestCorner(Ring ring) {
    double farthest = 0;
    for (int i = 0; i < ring.size(); i++) {
      farthest = Math.max(farthest, Math.hypot(ring.x(i), ring.y(i)));
    }
    return farthest;
  }

  @Test
  void rectangle_evenSides_fourExactCorners() {
    Profile profile = Profile.rectangle(10, 4);
    assertEquals(4, shell(profile).size());
    assertEquals(40, profile.area());
    assertEquals(-5, profile.minX());
    assertEquals(2, profile.maxY());
  }

  @Test
  void rings_anyProfile_startSmallestAndRunInTheirTurn() {
    Region region = Profile.rectangle(20, 20).cut(Profile.hole(4).move(5, 0), Profile.hole(3).move(-5, 0))
        .regions().get(0);
    assertTrue(region.shell().doubleArea() > 0);
    assertEquals(2, region.holes().size());
    assertTrue(region.holes().get(0).x(0) < region.holes().get(1).x(0));
    for (Ring hole : region.holes()) {
      assertTrue(hole.doubleArea() < 0);
      for (int i = 1; i < hole.size(); i++) {
        assertTrue(hole.x(i) > hole.x(0) || hole.x(i) == hole.x(0) && hole.y(i) > hole.y(0));
      }
    }
  }

  @Test
  void polygon_repeatedAndStraightCorners_dropped() {
    Profile profile = Profile.polygon(0, 0, 5, 0, 10, 0, 10, 0, 10, 10, 0, 10, 0, 4, 0, 0);
    assertEquals(4, shell(profile).size());
    assertEquals(100, profile.area());
  }

  @Test
  void polygon_eitherTurnAnyStart_sameProfile() {
    Profile profile = Profile.polygon(0, 0, 7, 1, 3, 5);
    assertEquals(profile, Profile.polygon(3, 5, 7, 1, 0, 0));
    assertEquals(profile.hashCode(), Profile.polygon(7, 1, 3, 5, 0, 0).hashCode());
    assertNotEquals(profile, Profile.polygon(0, 0, 7, 1, 3, 6));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.4, 1, 1.6, 2, 2.9, 3, 3.4, 5.0625, 6.35, 10.1, 25.4, 120, 1000})
  void circle_anyDiameter_boundsHoldWithinChordError(double diameter) {
    double radius = diameter / 2 * Grid.PER_MM;
    double error = Profile.CHORD_ERROR * Grid.PER_MM;
    Ring hole = shell(Profile.hole(diameter));
    Ring post = shell(Profile.post(diameter));
    // A hole's radius goes up to the next grid step and its corners outward by less than one step each way.
    assertTrue(nearestSide(hole) > radius - 1e-3, "a hole's flat comes inside");
    assertTrue(farthestCorner(hole) < radius + error + 2.5, "a hole's corner stands out too far");
    assertTrue(farthestCorner(post) < radius + 1e-3, "a post's corner stands outside");
    assertTrue(nearestSide(post) > radius - error - 2.5, "a post's flat lies too deep");
    assertEquals(0, hole.size() % 4);
    assertEquals(0, post.size() % 4);
  }

  @ParameterizedTest
  @ValueSource(doubles = {1, 3.4, 8, 25.4})
  void circle_anyDiameter_ownImageUnderMirrorsAndQuarterTurn(double diameter) {
    for (Profile round : List.of(Profile.hole(diameter), Profile.post(diameter))) {
      assertEquals(round, round.mirrorX());
      assertEquals(round, round.mirrorY());
      assertEquals(round, round.turn(90));
    }
  }

  @Test
  void circle_evenRadius_exactWidthOnBothAxes() {
    assertEquals(3, Profile.hole(6).maxX());
    assertEquals(-3, Profile.hole(6).minY());
    assertEquals(3, Profile.post(6).maxX());
    assertEquals(-3, Profile.post(6).minY());
  }

  @Test
  void hole_tighterChordError_moreSides() {
    assertTrue(shell(Profile.hole(10, 0.001)).size() > shell(Profile.hole(10)).size());
    assertEquals(8, shell(Profile.post(1, 0.3)).size());
    assertEquals(12, shell(Profile.post(2, 0.3)).size());
  }

  @Test
  void slot_evenSizes_lengthAndWidthExactAndPassesTheBar() {
    Profile slot = Profile.slot(12, 3);
    assertEquals(6, slot.maxX());
    assertEquals(1.5, slot.maxY());
    assertTrue(slot.area() >= 9 * 3 + Math.PI * 1.5 * 1.5);
    Profile bar = Profile.slotPost(12, 3);
    assertTrue(bar.area() <= 9 * 3 + Math.PI * 1.5 * 1.5);
    assertTrue(bar.cut(slot).isEmpty());
    assertEquals(Profile.hole(3), Profile.slot(3, 3));
  }

  @Test
  void hexagon_flatsParallelToX_exactAcrossFlats() {
    Profile hexagon = Profile.hexagon(5.5);
    Ring ring = shell(hexagon);
    assertEquals(6, ring.size());
    assertEquals(5.5, hexagon.maxY() - hexagon.minY());
    double flat = 2.75 * Grid.PER_MM;
    assertTrue(nearestSide(ring) > flat - 1e-6 && nearestSide(ring) < flat + 1);
    assertEquals(Math.sqrt(3) / 2 * 5.5 * 5.5, hexagon.area(), 1e-3);
  }

  @Test
  void roundedAndChamferedRectangle_areaAsByHand() {
    assertEquals(200 - 0.5 * 4 * 9, Profile.chamferedRectangle(20, 10, 3).area(), 1e-9);
    double missing = (4 - Math.PI) * 9;
    Profile rounded = Profile.roundedRectangle(20, 10, 3);
    assertTrue(rounded.area() <= 200 - missing);
    assertEquals(200 - missing, rounded.area(), 2 * Math.PI * 3 * Profile.CHORD_ERROR);
    assertEquals(10, rounded.maxX());
    assertEquals(Profile.slotPost(20, 10), Profile.roundedRectangle(20, 10, 5));
  }

  @Test
  void outline_cornerTooLarge_refusedWithLimit() {
    assertEquals("corner radius is 5.5 mm, more than half the shorter side, 5 mm. "
        + "Make the corner radius smaller or the rectangle larger.",
        refusal(() -> Profile.roundedRectangle(20, 10, 5.5)));
    assertTrue(refusal(() -> Profile.chamferedRectangle(20, 10, 6)).startsWith("chamfer leg is 6 mm, more than"));
    assertTrue(refusal(() -> Profile.slot(2, 3)).startsWith("slot length is 2 mm, less than its width of 3 mm"));
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, -1, 0, -0.0, 1e-9, 1e9})
  void sizes_notPositiveOrHuge_refused(double bad) {
    List<Executable> calls = List.of(() -> Profile.rectangle(bad, 1), () -> Profile.rectangle(1, bad),
        () -> Profile.roundedRectangle(5, 5, bad), () -> Profile.chamferedRectangle(5, 5, bad),
        () -> Profile.hole(bad), () -> Profile.post(bad), () -> Profile.slot(bad, 1), () -> Profile.slot(5, bad),
        () -> Profile.hexagon(bad), () -> Profile.text("A", bad, 0.5), () -> Profile.text("A", 5, bad),
        () -> Profile.hole(5, bad), () -> Profile.rectangle(5, 5).offset(1, bad));
    for (Executable call : calls) {
      assertFalse(refusal(call).isBlank());
    }
  }

  @Test
  void coordinates_beyondTheGrid_refused() {
    Profile square = Profile.rectangle(10, 10);
    assertTrue(refusal(() -> square.move(1020, 0)).contains("outside the grid's range"));
    assertTrue(refusal(() -> square.move(0, 1e300)).contains("outside the grid's range"));
    assertTrue(refusal(() -> Profile.rectangle(2040, 2040).turn(45)).contains("outside the grid's range"));
    assertTrue(refusal(() -> Profile.rectangle(2040, 10).offset(5)).contains("outside the grid's range"));
    assertTrue(refusal(() -> square.move(Double.NaN, 0)).contains("finite"));
    assertTrue(refusal(() -> square.turn(Double.NaN)).contains("finite"));
    assertTrue(refusal(() -> square.offset(Double.NaN)).contains("finite"));
  }

  @Test
  void polygon_crossingTouchingOrFlat_refused() {
    assertTrue(refusal(() -> Profile.polygon(0, 0, 4, 4, 4, 0, 0, 5)).contains("crosses or touches itself"));
    assertTrue(refusal(() -> Profile.polygon(0, 0, 4, 0, 2, 2, 4, 4, 0, 4, 2, 2)).contains("at 2, 2 mm"));
    assertTrue(refusal(() -> Profile.polygon(0, 0, 4, 0, 8, 0)).contains("encloses no area"));
    assertTrue(refusal(() -> Profile.polygon(0, 0, 4, 0)).contains("three corners"));
    assertTrue(refusal(() -> Profile.polygon(0, 0, 4, 0, 4, 4, 0)).contains("pairs"));
    assertTrue(refusal(() -> Profile.polygon(0, 0, Double.NaN, 0, 4, 4)).contains("NaN"));
  }

  @Test
  void turn_quarterTurns_exact() {
    Profile profile = Profile.polygon(0, 0, 7.3, 1.1, 3.7, 5.9);
    assertEquals(profile, profile.turn(90).turn(90).turn(180));
    assertEquals(profile.turn(90), profile.turn(-270));
    assertEquals(-5.9, profile.turn(90).minX(), Grid.STEP);
    assertEquals(profile, profile.turn(360));
  }

  @Test
  void turn_anyAngle_keepsArea() {
    Profile profile = Profile.rectangle(20, 8).cut(Profile.hole(4));
    for (double degrees = 7; degrees < 360; degrees += 31) {
      assertEquals(profile.area(), profile.turn(degrees).area(), 60 * Grid.STEP);
    }
  }

  @Test
  void offset_rectangle_areaByFormula() {
    Profile rectangle = Profile.rectangle(20, 10);
    assertEquals(Profile.rectangle(16, 6), rectangle.offset(-2));
    assertTrue(rectangle.offset(-5).isEmpty());
    double round = 200 + 60 * 2 + Math.PI * 4;
    double grown = rectangle.offset(2).area();
    assertTrue(grown <= round && grown > round - 2 * Math.PI * 2 * Profile.CHORD_ERROR);
    assertEquals(12, rectangle.offset(2).maxX());
    assertEquals(rectangle, rectangle.offset(0));
  }

  @Test
  void offset_holedProfile_holesShrinkAndVanish() {
    Profile frame = Profile.rectangle(20, 20).cut(Profile.rectangle(4, 4));
    assertEquals(Profile.rectangle(2, 2).area(), -frame.offset(1).regions().get(0).holes().get(0).doubleArea()
        * Grid.STEP * Grid.STEP / 2);
    assertTrue(frame.offset(2.5).regions().get(0).holes().isEmpty());
    assertTrue(frame.offset(-9).isEmpty());
  }

  @Test
  void booleans_emptyOperands_actAsNothing() {
    Profile square = Profile.rectangle(2, 2);
    Profile empty = square.common(square.move(10, 0));
    assertTrue(empty.isEmpty());
    assertEquals(0, empty.area());
    assertEquals(square, square.join(empty));
    assertEquals(square, square.cut(empty));
    assertEquals(square, square.cut());
    assertTrue(empty.cut(square).isEmpty());
    assertTrue(empty.offset(1).isEmpty());
    assertTrue(Profile.union(List.of()).isEmpty());
    assertTrue(square.common(square.move(2, 0)).isEmpty());
    assertTrue(refusal(empty::minX).contains("no bounds"));
  }

  @Test
  void join_touchingSquares_oneRingWithoutSeam() {
    Profile square = Profile.rectangle(2, 2);
    assertEquals(Profile.rectangle(4, 2).move(1, 0), square.join(square.move(2, 0)));
  }

  @Test
  void rings_afterBooleans_noThreeInLine() {
    Profile all = Profile.rectangle(30, 5).join(Profile.rectangle(5, 30), Profile.hole(20).turn(10))
        .cut(Profile.slot(12, 3).turn(33));
    for (Region region : all.regions()) {
      noneInLine(region.shell());
      region.holes().forEach(ProfileTest::noneInLine);
    }
  }

  private static void noneInLine(Ring r) {
    int n = r.size();
    for (int i = 0; i < n; i++) {
      int j = (i + 1) % n;
      int k = (i + 2) % n;
      assertNotEquals(0, Sign.turn(r.x(i), r.y(i), r.x(j), r.y(j), r.x(k), r.y(k)));
    }
  }
}
