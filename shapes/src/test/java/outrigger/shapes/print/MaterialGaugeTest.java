package outrigger.shapes.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import outrigger.shapes.num.Axis;
import outrigger.shapes.solid.Solid;

/** Against closed forms: what outlines, solid layers and infill fill in a box. */
class MaterialGaugeTest {
  private static final double OUTLINES = 3 * 0.45;
  private static final double LAYERS = 4 * 0.2;

  private static double value(Solid solid, String name) {
    return value(solid, name, PrintLimits.standard());
  }

  private static double whole(String name) {
    return value(Specimens.box(0, 0, 0, 40, 40, 1.25), name, PrintLimits.standard().with(Limit.INFILL, 100));
  }

  private static double value(Solid solid, String name, PrintLimits limits) {
    return new MaterialGauge().read(Specimens.of(solid, limits)).facts().stream().filter(f -> f.name().equals(name)).findFirst()
        .orElseThrow().value();
  }

  private static double boxMass(double x, double y, double z) {
    double inside = Math.max(0, x - 2 * OUTLINES) * Math.max(0, y - 2 * OUTLINES) * Math.max(0, z - 2 * LAYERS);
    return (x * y * z - 0.8 * inside) / 1000 * 1.24;
  }

  @Test
  void mass_ofBoxes_liesWithinItsBand() {
    for (double[] box : new double[][] {{20, 20, 20}, {60, 40, 3}, {100, 100, 100}, {50, 6, 30}, {12, 12, 40}, {40, 40, 1.2}}) {
      double mass = value(Specimens.box(0, 0, 0, box[0], box[1], box[2]), "mass");
      assertEquals(boxMass(box[0], box[1], box[2]), mass, 0.1 * mass);
    }
  }

  /** Faces of just 45 degrees are steep in every turn, though rounding leans them a little. */
  @Test
  void mass_ofAGable_isTheSameHoweverTurned() {
    Solid gable = Specimens.along(25, -12, 0, 12, 0, 12, 8, 15, 11, 0, 26, -15, 11, -12, 8);
    double mass = value(gable, "mass");
    for (double turn = 7; turn < 360; turn += 30) {
      assertEquals(mass, value(gable.turn(Axis.Z, turn), "mass"), 1e-3 * mass, "turned by " + turn);
    }
  }

  @Test
  void mass_filledWhole_isThatOfSolidPlastic() {
    assertEquals(40 * 40 * 1.25 / 1000 * 1.24, whole("mass"), 1e-6);
  }

  @Test
  void filament_isVolumeOverItsSection() {
    double metres = 40 * 40 * 1.25 / (Math.PI / 4 * 1.75 * 1.75) / 1000;
    assertEquals(metres, whole("filament"), 1e-6);
  }

  /** 2000 mm3 in lines of 0.45 x 0.2 at 50 mm/s, and 7 layers of 2 s. */
  @Test
  void time_isPathOverSpeedAndPauses() {
    assertEquals((2000 / 0.09 / 50 + 14) / 60, whole("time"), 1e-6);
  }

  @Test
  void mass_ofASmallPart_isNotToldAsNothing() {
    String words = new MaterialGauge().read(Specimens.of(Specimens.box(0, 0, 0, 3, 3, 3))).facts().toString();
    assertTrue(words.contains("weighs about 0.03 g (0.03 to 0.04)"), words);
  }

  @Test
  void read_saysWhatItAssumes() {
    String words = new MaterialGauge().read(Specimens.of(Specimens.box(0, 0, 0, 9, 9, 9))).facts().toString();
    assertTrue(words.contains("20 % infill") && words.contains("not checked against a printed part"), words);
  }
}
