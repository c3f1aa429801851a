package outrigger.presets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/**
 * Values of the tables against what published tables print; each title stands beside its values. What is from memory or
 * common practice is not asserted here, since nothing vouches for it.
 */
class PublishedValuesTest {
  private final Shelf shelf = Shelf.standard();

  private Screw screw(String name) {
    return shelf.get(Screw.class, name);
  }

  @Test
  void clearanceHoles_iso273_asPublished() {
    // Page "Clearance Hole Sizes - Reference Data (ISO 273)"; M2.5 and M3 also "Clearance holes for Metric Screws".
    assertEquals(1.8, shelf.get(ClearanceHole.class, "M1.6").medium());
    assertEquals(2.2, shelf.get(ClearanceHole.class, "M2").fine());
    assertEquals(2.4, shelf.get(ClearanceHole.class, "M2").medium());
    assertEquals(2.9, shelf.get(ClearanceHole.class, "M2.5").medium());
    assertEquals(3.4, shelf.get(ClearanceHole.class, "M3").medium());
    assertEquals(3.6, shelf.get(ClearanceHole.class, "M3").coarse());
  }

  @Test
  void pitch_iso262_asPublished() {
    // Page "ISO Metric Thread Nominal Dimensions According to UNI 4535-64".
    assertEquals(0.45, screw("M2.5-socket").pitch());
  }

  @Test
  void diameters_iso724_followFromPitch() {
    // Same page: pitch diameter d - 0.649519 P, minor diameter d - 1.082532 P, both to three decimals.
    Screw m3 = screw("M3-socket");
    assertEquals(2.675, m3.diameter() - 0.649519 * m3.pitch(), 0.0005);
    Screw m2 = screw("M2-socket");
    assertEquals(1.567, m2.diameter() - 1.082532 * m2.pitch(), 0.0005);
  }

  @Test
  void stressArea_iso898_followsFromPitch() {
    // Page "Minimum ultimate tensile loads for metric coarse pitch thread, EN ISO 898-1".
    Screw m3 = screw("M3-socket");
    double mean = m3.diameter() - (0.649519 + 1.226869) / 2 * m3.pitch();
    assertEquals(5.03, Math.PI / 4 * mean * mean, 0.005);
  }

  @Test
  void tapDrill_m25_liesBelowThePilotHole() {
    // Mechanical Engineer's Data Handbook, section 8.2.4: tapping drill 2.05.
    double hole = shelf.get(PilotHole.class, "M2.5-machine").hole();
    assertTrue(hole >= 2.05 && hole < 2.5, "hole " + hole);
  }

  @Test
  void socketHeads_iso4762_asPublished() {
    // Page "Socket Head Cap Screws (ISO 4762 / DIN 912) - Dimensions & Specifications".
    assertEquals(3.00, screw("M1.6-socket").headDiameter());
    assertEquals(3.80, screw("M2-socket").headDiameter());
    assertEquals(5.50, screw("M3-socket").headDiameter());
    assertEquals(2.0, screw("M2.5-socket").driveSize());
  }

  @Test
  void countersunkHeads_asPublished() {
    // Document "EN ISO 10642 (DIN 7991) grade 10.9".
    assertEquals(6.72, screw("M3-countersunk").headDiameter());
    assertEquals(1.86, screw("M3-countersunk").headHeight());
    // Page "[ISO 14581] hexalobular countersunk screws, stainless A4".
    assertEquals(1.20, screw("M2-countersunk-hexalobular").headHeight());
  }

  @Test
  void buttonAndPanHeads_asPublished() {
    // Document "Button head socket head cap screws, ISO 7380 / ANSI B18.3.4M".
    assertEquals(5.70, screw("M3-button").headDiameter());
    // Page "ISO 7045 specifications - pan head screws with cross recess".
    assertEquals(2.10, screw("M2.5-pan").headHeight());
  }

  @Test
  void nuts_iso4032_asPublished() {
    // Page "BS EN ISO 4032 Hexagon nuts style 1"; the height at M5 is where DIN 934 differs.
    assertEquals(5.50, shelf.get(Nut.class, "M3").acrossFlats());
    assertEquals(4.70, shelf.get(Nut.class, "M5").height());
    // The same page has 6.01 as the smallest width across corners of M3; the largest must lie above it.
    assertTrue(shelf.get(Nut.class, "M3").acrossCorners() > 6.01);
    // Page "DIN 934 Hexagon Nut Dimensions".
    assertEquals(4.0, shelf.get(Nut.class, "M5-din-934").height());
  }

  @Test
  void washers_asPublished() {
    // Page "M1.6 Flat Washers - Dimensional Row (ISO 7089)".
    assertEquals(7.00, shelf.get(Washer.class, "M3-normal").outside());
    // Page "Small washers - grade A, from GB 848-85".
    assertEquals(6.00, shelf.get(Washer.class, "M3-small").outside());
  }

  @Test
  void washerThickness_limits_asPublished() {
    // Page "M2 Washer Dimensions & Size": 0.25 to 0.35. Page "Small washers - grade A, from GB 848-85": 0.45 to 0.55.
    assertEquals(0.05, shelf.get(Washer.class, "M2-normal").thicknessTolerance());
    assertEquals(0.05, shelf.get(Washer.class, "M3-small").thicknessTolerance());
  }

  @Test
  void sheetStock_everyInchSize_isThousandthsOf25_4AndNotItsLabel() {
    // Arithmetic only: which sizes are sold, and under which label, is common practice.
    int inches = 0;
    for (SheetStock sheet : shelf.items(SheetStock.class)) {
      String number = sheet.name().replaceAll("[a-z]", "");
      boolean inch = sheet.name().endsWith("thou");
      assertEquals(Double.parseDouble(number) * (inch ? 0.0254 : 1), sheet.thickness(), 1e-12, sheet.name());
      assertEquals(inch, sheet.thickness() != sheet.label(), sheet.name());
      inches += inch ? 1 : 0;
    }
    assertEquals(12, inches);
  }

  @Test
  void countersunkHead_everyScrew_isA90DegreeCone() {
    long cones = 0;
    for (Screw screw : shelf.items(Screw.class)) {
      if (screw.isCountersunk()) {
        assertEquals((screw.headDiameter() - screw.diameter()) / 2, screw.headHeight(), 1e-9, screw.name());
        cones++;
      }
    }
    assertEquals(14, cones);
  }

  @Test
  void acrossCorners_everyNut_isThatOfASharpHexagon() {
    for (Nut nut : shelf.items(Nut.class)) {
      assertEquals(nut.acrossFlats() * 2 / Math.sqrt(3), nut.acrossCorners(), 0.005, nut.name());
    }
  }

  @Test
  void screws_sameSize_shareDiameterAndPitch() {
    for (Screw screw : shelf.items(Screw.class)) {
      assertEquals(Double.parseDouble(screw.size().substring(1)), screw.diameter(), screw.name());
      assertEquals(screw(screw.size() + "-socket").pitch(), screw.pitch(), screw.name());
    }
  }

  @Test
  void spacing_frameOf34Inches_isScaleArithmetic() {
    // Arithmetic only: that frames are 34 in wide is common practice, from memory.
    double inches = 34 * 25.4;
    Rail at24 = shelf.get(Rail.class, "frame-34in-1-24");
    Rail at25 = shelf.get(Rail.class, "frame-34in-1-25");
    assertEquals(35.983, at24.spacing() + 2 * at24.web(), 1e-9);
    assertEquals(34.544, at25.spacing() + 2 * at25.web(), 1e-9);
    assertEquals(inches / 24, at24.spacing() + 2 * at24.web(), 0.0005);
    assertEquals(inches / 25, at25.spacing() + 2 * at25.web(), 0.0005);
  }

  @Test
  void minimumWall_everyPrinter_isTwoBeads() {
    for (Printer printer : shelf.items(Printer.class)) {
      assertEquals(2 * printer.extrusionWidth(), printer.minimumWall(), 1e-9, printer.name());
    }
  }

  @Test
  void pilotHoles_everyHole_liesBelowTheThread() {
    for (PilotHole pilot : shelf.items(PilotHole.class)) {
      assertTrue(pilot.hole() < Double.parseDouble(pilot.size().substring(1)), pilot.name());
    }
  }

  @Test
  void names_sizedItems_beginWithTheirSize() {
    for (Screw screw : shelf.items(Screw.class)) {
      assertTrue(screw.name().startsWith(screw.size() + "-" + screw.head()), screw.name());
    }
    for (StockLengths stock : shelf.items(StockLengths.class)) {
      assertEquals(shelf.get(Screw.class, stock.name()).head(), stock.head(), stock.name());
    }
    for (DiscMagnet magnet : shelf.items(DiscMagnet.class)) {
      assertEquals(Datum.print(magnet.diameter()) + "x" + Datum.print(magnet.thickness()), magnet.name());
    }
  }

  @Test
  void sources_fromMemory_sayso() {
    for (String name : new String[] {"M1.6-socket", "M5-socket", "M3-pan", "M1.6-countersunk"}) {
      Source source = shelf.sources(shelf.get(StockLengths.class, name)).get(3).source();
      assertTrue(source.text().contains("memory"), name + ": " + source.text());
    }
    Source lock = shelf.sources(shelf.get(Nut.class, "M3-lock")).get(3).source();
    assertTrue(lock.text().contains("memory"), lock.text());
    Source head = shelf.sources(screw("M1.6-countersunk")).get(6).source();
    assertTrue(head.text().contains("memory"), head.text());
  }
}
