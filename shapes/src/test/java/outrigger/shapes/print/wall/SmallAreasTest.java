package outrigger.shapes.print.wall;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import outrigger.shapes.mesh.Mesher;
import outrigger.shapes.print.Concern;
import outrigger.shapes.print.Gauge;
import outrigger.shapes.print.Specimens;
import outrigger.shapes.print.WallShapes;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Solid;

/** Places about as small as samples are wide: over how much surface they are narrow, in closed form. */
class SmallAreasTest {
  /** A ball is held as long as what it rests on lies no further aside than 25 degrees, seen from its middle. */
  private static final double HELD = StrictMath.toRadians(25);

  private static void assertArea(Gauge gauge, Solid solid, double area) {
    for (Solid turned : List.of(solid, WallShapes.turned(solid))) {
      List<Concern> told = gauge.read(WallShapes.specimen(Mesher.mesh(turned))).concerns();
      assertEquals(1, told.size(), told.toString());
      assertEquals(area, told.get(0).area(), 0.06 * area, told.toString());
    }
  }

  private static Solid block() {
    return Specimens.box(-10, -10, 0, 20, 20, 6);
  }

  /** The face before a pocket's floor is thin a little beyond its rim: as far as a ball that rests on the rim is held. */
  @ParameterizedTest
  @CsvSource({"0.5, 0.7", "0.8, 0.6", "0.8, 0.3", "1, 0.6", "1.3, 0.4", "2, 0.6", "3, 0.6"})
  void floorOfASmallPocket(double side, double thick) {
    double beyond = thick * StrictMath.tan(HELD / 2);
    double outside = side * side + 4 * side * beyond + Math.PI * beyond * beyond;
    assertArea(new WallGauge(), block().cut(Specimens.box(0.13 - side / 2, 0.21 - side / 2, thick, side, side, 9)),
        side * side + outside);
  }

  /** Both sides, both ends and the top, where balls that rest against the sides are held. */
  @ParameterizedTest
  @ValueSource(doubles = {0.6, 1, 2})
  void smallFin(double side) {
    assertArea(new WallGauge(), block().join(Specimens.box(0, 0, 5, 0.4, side, 1.7)), 2 * (side + 0.4) * 0.7 + 0.4 * side);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.25, 0.4})
  void smallPin(double diameter) {
    assertArea(new WallGauge(), block().join(Prism.of(Profile.post(diameter, 0.002), 5, 7)),
        Math.PI * diameter + Math.PI / 4 * diameter * diameter);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.5, 1, 2})
  void smallSlit(double length) {
    assertArea(new GapGauge(), block().cut(Specimens.box(0.1, 0.2, 5, 0.3, length, 3)), 2 * (length + 0.3) + 0.3 * length);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.4, 0.7})
  void shallowHole(double diameter) {
    assertArea(new GapGauge(), block().cut(Prism.of(Profile.hole(diameter, 0.002), 5, 9)),
        Math.PI * diameter + Math.PI / 4 * diameter * diameter);
  }

  /** Two bodies that overlap over a square: the gap's two sides, each a little beyond the other's edges. */
  @Test
  void bodiesThatOverlapByACorner() {
    double beyond = 0.3 * StrictMath.tan(HELD / 2);
    assertArea(new GapGauge(), Solid.union(Specimens.box(0, 0, 0, 5, 5, 5), Specimens.box(5.3, 4, 4, 5, 5, 5)),
        2 * (1 + 2 * beyond + Math.PI / 4 * beyond * beyond));
  }
}
