package outrigger.shapes.print.wall;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import outrigger.shapes.check.CheckedMesh;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.Workers;
import outrigger.shapes.print.Concern;
import outrigger.shapes.print.FinerMesh;
import outrigger.shapes.print.PrintLimits;
import outrigger.shapes.print.Severity;
import outrigger.shapes.print.Specimen;
import outrigger.shapes.print.Specimens;
import outrigger.shapes.print.WallShapes;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Solid;

/** What alone holds two halves of a part together is an error where it is thinner than a line, however the part is cut. */
class NecksTest {
  private static final double[][] TURNS = {{0, 0}, {23, 67}, {41, 5}};
  private static final double[] LONGEST_EDGES = {0.8, 0.95};

  /** A round peg of 4 mm, lying, notched from above down to a stated height over its lowest line. */
  private static Solid notchedPeg(double left) {
    return Prism.of(Profile.post(4), -8, 8).turn(Axis.Y, 90).move(0, 0, 2)
        .cut(Specimens.along(6, 0, 0, 3, 5.2, -3, 5.2).move(0, -3, left));
  }

  private static void assertOneNeck(CheckedMesh mesh, String words) {
    Specimen specimen = new Specimen(mesh, PrintLimits.standard(), Map.of(), Workers.of(1));
    List<Concern> told = new WallGauge().read(specimen).concerns();
    assertEquals(1, told.size(), words + ": " + told);
    assertEquals("thin-neck", told.get(0).rule(), words);
    assertEquals(Severity.ERROR, told.get(0).severity(), words);
  }

  /** Most of what is thin lies between the notch's bottom, which has no surface, and a face on one side. */
  @Test
  void pegBrokenNearlyThrough_isAnErrorHoweverItIsCut() {
    for (double left : new double[] {0.35, 0.4}) {
      for (double[] turn : TURNS) {
        CheckedMesh peg = Specimens.proven(notchedPeg(left).turn(Axis.X, turn[0]).turn(Axis.Z, turn[1]));
        String words = left + " mm left, turned by " + turn[0] + " and " + turn[1];
        assertOneNeck(peg, words);
        for (double longest : LONGEST_EDGES) {
          assertOneNeck(FinerMesh.of(peg, longest), words + ", cut to " + longest + " mm");
        }
      }
    }
  }

  /** A pin so thin that all its facets are small in area, and yet as long as itself, is one pin over its whole length. */
  @Test
  void hairBetweenTwoBalls_isOnePin() {
    for (double width : new double[] {0.1, 0.15}) {
      for (double[] turn : TURNS) {
        Solid dumbbell = WallShapes.dumbbell(6, width).turn(Axis.X, turn[0]).turn(Axis.Z, turn[1]);
        List<Concern> told = new WallGauge().read(WallShapes.specimen(dumbbell)).concerns();
        assertEquals(1, told.size(), width + " mm, turned by " + turn[0] + " and " + turn[1] + ": " + told);
        assertEquals("thin-pin", told.get(0).rule());
        assertEquals(Severity.ERROR, told.get(0).severity());
        assertEquals(width, told.get(0).measured(), 0.005);
        assertEquals(Math.PI * width * 6, told.get(0).area(), 0.1 * width * 6);
      }
    }
  }
}
