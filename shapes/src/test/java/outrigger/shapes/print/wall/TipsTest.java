package outrigger.shapes.print.wall;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import outrigger.shapes.mesh.Mesher;
import outrigger.shapes.num.Axis;
import outrigger.shapes.print.Concern;
import outrigger.shapes.print.Reading;
import outrigger.shapes.print.Severity;
import outrigger.shapes.print.WallShapes;
import outrigger.shapes.print.facet.Vec;
import outrigger.shapes.solid.Revolution;
import outrigger.shapes.solid.Solid;

/** Hollows and bodies of cones that meet by their tips: what is thin there is one spot. */
class TipsTest {
  private static final double[] TURNS = {0, 17, 33, 61};

  private static Reading read(Solid solid) {
    return new WallGauge().read(WallShapes.specimen(Mesher.mesh(solid)));
  }

  private static Solid block() {
    return WallShapes.block(12, 12, 8);
  }

  /** Told as a small neck, and as the thinnest wall, whichever way the part is turned; blunt or not, in line or not. */
  @Test
  void hollowsTipToTip_areASmallNeck() {
    List<Solid> parts = List.of(block().cut(Revolution.cone(0, 6, 4.2, 8.1), Revolution.cone(6, 0, -0.1, 3.9)),
        block().cut(Revolution.coneCutter(0.02, 6, 4.2, 8.1), Revolution.coneCutter(6, 0.02, -0.1, 3.9)),
        block().cut(Revolution.cone(0, 6, 4.1, 8.1).move(0.2, 0.1, 0), Revolution.cone(6, 0, -0.1, 3.9)));
    for (Solid part : parts) {
      for (double turn : TURNS) {
        Reading reading = read(part.turn(Axis.X, turn).turn(Axis.Z, 2 * turn));
        assertEquals(1, reading.concerns().size(), reading.concerns().toString());
        Concern neck = reading.concerns().get(0);
        assertEquals("thin-neck", neck.rule(), neck.toString());
        assertEquals(Severity.CAUTION, neck.severity());
        assertEquals(0.3, neck.measured(), 0.02);
        assertEquals(neck.measured(), reading.facts().get(0).value(), 1e-9);
        assertEquals(4.05, new Vec(neck.x(), neck.y(), neck.z()).length(), 0.1);
      }
    }
  }

  /** A blunt dent leaves a thin web under its tip, all round which the wall grows thicker: it is no tip of the part. */
  @Test
  void bluntDents_areWalls() {
    for (double half : new double[] {66, 68, 70}) {
      for (double rest : new double[] {0.1, 0.15, 0.3}) {
        for (double turn : TURNS) {
          double top = rest + 1.25 / StrictMath.tan(StrictMath.toRadians(half));
          Solid dented = WallShapes.block(20, 20, top + 1).cut(Revolution.cone(0, 2.5, rest, top, 24),
              Revolution.cone(2.5, 2.5, top - 0.01, top + 2, 24)).turn(Axis.X, turn).turn(Axis.Z, 2 * turn);
          List<Concern> told = read(dented).concerns();
          String words = half + " degrees, " + rest + " mm, turned by " + turn + ": " + told;
          assertEquals("thin-wall", told.get(0).rule(), words);
          assertEquals(Severity.ERROR, told.get(0).severity(), words);
          assertEquals(rest, told.get(0).measured(), 0.01, words);
        }
      }
    }
  }

  @Test
  void hollowsFartherApart_showNothing() {
    Solid part = block().cut(Revolution.cone(0, 6, 4.7, 8.1), Revolution.cone(6, 0, -0.1, 3.7));
    for (double turn : TURNS) {
      assertTrue(read(part.turn(Axis.X, turn)).concerns().isEmpty());
    }
  }

  /** Cones that stand on each other by their tips hang together by as much as their waist is wide. */
  @Test
  void bodiesTipToTip_areAsThinAsTheirWaist() {
    for (double waist : new double[] {0.2, 0.4, 0.6}) {
      for (double turn : new double[] {0, 17, 33}) {
        Reading reading = read(Solid.union(Revolution.cone(8, waist, 0, 4, 48), Revolution.cone(waist, 8, 4, 8, 48))
            .turn(Axis.X, turn));
        assertEquals(1, reading.concerns().size(), reading.concerns().toString());
        assertEquals("thin-neck", reading.concerns().get(0).rule());
        assertEquals(waist < 0.45 ? Severity.ERROR : Severity.CAUTION, reading.concerns().get(0).severity());
        assertEquals(waist, reading.concerns().get(0).measured(), 0.01);
        assertEquals(waist, reading.facts().get(0).value(), 0.01);
      }
    }
  }

  /** The same however many sides the cones have, and however they are turned: what holds two bodies together is an error. */
  @Test
  void bodiesTipToTip_anyNumberOfSides_areAnError() {
    for (double height : new double[] {2, 4, 8}) {
      for (double waist : new double[] {0.1, 0.3}) {
        for (int sides : new int[] {8, 12, 24, 48, 96}) {
          for (double turn : new double[] {0, 17, 90}) {
            Solid glass = Solid.union(Revolution.cone(8, waist, 0, height, sides),
                Revolution.cone(waist, 8, height, 2 * height, sides));
            List<Concern> told = read(glass.turn(Axis.X, turn)).concerns();
            String words = sides + " sides, " + height + " mm high, turned by " + turn + ": " + told;
            assertEquals(1, told.size(), words);
            assertEquals("thin-neck", told.get(0).rule(), words);
            assertEquals(Severity.ERROR, told.get(0).severity(), words);
            assertEquals(waist * StrictMath.cos(Math.PI / sides), told.get(0).measured(), 0.01, words);
          }
        }
      }
    }
  }

  /** A rim of 27 degrees and more is no thin wall, however fine its facets and however it is turned. */
  @Test
  void roundRim_bluntEnough_isNoWall() {
    for (double degrees : new double[] {27, 28, 30}) {
      for (int sides : new int[] {24, 48, 96}) {
        for (int turn = 0; turn < 9; turn++) {
          Solid disc = Revolution.cone(10, 2, 0, 4 * StrictMath.tan(StrictMath.toRadians(degrees)), sides);
          assertEquals(List.of(), read(disc.turn(Axis.X, 7.3 * turn).turn(Axis.Y, 11 * (turn % 3)).turn(Axis.Z, 5 * turn))
              .concerns(), degrees + " degrees, " + sides + " sides, turn " + turn);
        }
      }
    }
  }
}
