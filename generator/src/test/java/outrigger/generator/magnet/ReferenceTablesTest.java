package outrigger.generator.magnet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.hipparchus.special.elliptic.legendre.LegendreEllipticIntegral;
import org.junit.jupiter.api.Test;

/** Every row of the tables of reference values; each file says at its head what it was computed by. */
class ReferenceTablesTest {
  /** The table prints nine digits, so it is off by half a unit of the ninth itself. */
  private static final double AXIAL = 5e-9;
  /** Sideways the overlap of two discs has edges that the quadrature meets with its own error. */
  private static final double SIDEWAYS = 1e-6;

  private static void near(double expected, double actual, double share, Object row) {
    assertEquals(expected, actual, Math.abs(expected) * share, row::toString);
  }

  private static Coupling coupling(Csv row) {
    Disc disc = new Disc(row.number("d1_mm"), row.number("t1_mm"));
    return row.text("kind").equals("steel") ? Coupling.steel(disc)
        : Coupling.pair(disc, new Disc(row.number("d2_mm"), row.number("t2_mm")));
  }

  private static double remanences(Csv row) {
    double br = row.number("br1_T");
    return br * (row.text("kind").equals("steel") ? br : row.number("br2_T"));
  }

  @Test
  void pull_everyCoaxialRow_agrees() {
    List<Csv> rows = Csv.rows("force.csv").stream().filter(row -> !row.text("kind").equals("lateral")).toList();
    assertEquals(137, rows.size());
    for (Csv row : rows) {
      near(row.number("axial_force_N"), remanences(row) * coupling(row).pull(row.number("gap_mm")), AXIAL, row);
    }
  }

  @Test
  void pullAsideAndCentring_everyLateralRow_agree() {
    List<Csv> rows = Csv.rows("force.csv").stream().filter(row -> row.text("kind").equals("lateral")).toList();
    assertEquals(29, rows.size());
    for (Csv row : rows) {
      double gap = row.number("gap_mm");
      double offset = row.number("offset_mm");
      near(row.number("axial_force_N"), remanences(row) * coupling(row).pullAside(gap, offset), SIDEWAYS, row);
      near(row.number("lateral_force_N"), remanences(row) * coupling(row).centring(gap, offset), SIDEWAYS, row);
    }
  }

  /** An open test suite for magnet forces publishes these to 0.001 N. */
  @Test
  void pull_publishedExamples_agree() {
    double square = 1.3 * 1.3;
    assertEquals(265.537, square * Coupling.pair(new Disc(40, 40), new Disc(40, 40)).pull(10), 5e-4);
    assertEquals(111.490, square * Coupling.pair(new Disc(40, 40), new Disc(30, 30)).pull(15), 5e-4);
    assertEquals(18.953, square * Coupling.pair(new Disc(40, 20), new Disc(40, 10)).pull(35), 5e-4);
  }

  @Test
  void field_everyRow_agrees() {
    List<Csv> rows = Csv.rows("field.csv");
    assertEquals(13, rows.size());
    for (Csv row : rows) {
      double br = row.number("br_T");
      Disc disc = new Disc(row.number("d_mm"), row.number("t_mm"));
      AxisField field = new AxisField(disc);
      String[] columns = {"b_face_mT", "b_0p38_mT", "b_0p5_mT", "b_1_mT", "b_2_mT", "b_5_mT", "b_10_mT", "b_20_mT"};
      double[] distances = {0, 0.38, 0.5, 1, 2, 5, 10, 20};
      for (int i = 0; i < columns.length; i++) {
        near(row.number(columns[i]), 1000 * br * field.at(distances[i]), 1e-6, row);
      }
      assertEquals(row.number("distance_1mT_mm"), field.reach(1e-3 / br), 6e-4, row::toString);
      assertEquals(row.number("distance_0p5mT_mm"), field.reach(0.5e-3 / br), 6e-4, row::toString);
      near(row.number("flux_index_kG2mm2"), field.fluxIndex(br), 1e-3, row);
    }
  }

  /** These columns print four to six digits; the shares are half a unit of their last. */
  @Test
  void steel_everyRow_agrees() {
    for (Csv row : Csv.rows("field.csv")) {
      double br = row.number("br_T");
      Disc disc = new Disc(row.number("d_mm"), row.number("t_mm"));
      near(row.number("b_average_contact_steel_T"), br * new AxisField(disc).intoSteel(0), 5e-5, row);
      near(row.number("steel_thickness_1p6T_mm"), Steel.needed(disc, br, 0).thickness(), 5e-4, row);
      double ballistic = 2 * FaceTerm.of(disc.radius(), disc.radius(), disc.thickness() / 2) / disc.area();
      near(row.number("demag_ballistic"), ballistic, 2e-6, row);
    }
  }

  /** What {@link OffsetTerm} relies on: integrals by the parameter m, not by the modulus. */
  @Test
  void ellipticIntegrals_everyRow_agree() {
    List<Csv> rows = Csv.rows("elliptic.csv");
    assertEquals(47, rows.size());
    for (Csv row : rows) {
      double m = row.number("m");
      double value = switch (row.text("function")) {
        case "K" -> LegendreEllipticIntegral.bigK(m);
        case "E" -> LegendreEllipticIntegral.bigE(m);
        default -> LegendreEllipticIntegral.bigPi(row.number("n"), m);
      };
      near(row.number("value"), value, 1e-13, row);
    }
  }
}
