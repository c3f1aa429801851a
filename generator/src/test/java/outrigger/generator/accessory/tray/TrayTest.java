package outrigger.generator.accessory.tray;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import outrigger.generator.accessory.Part;
import outrigger.generator.measure.MeshGauge;
import outrigger.generator.measure.Proven;
import outrigger.generator.param.ParamValues;
import outrigger.presets.Shelf;
import outrigger.shapes.check.Measures;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.Grid;

/** Trays as the mesh has them. The default is 80 x 36 x 8 outside, wall 1.4, floor 1.2, between rails 36.4 apart. */
class TrayTest {
  private static final double GRID = Grid.STEP;
  private static final double ROUND = 0.02;

  static Part part(String given) {
    List<String> pairs = new ArrayList<>();
    for (String pair : given.strip().split(" +")) {
      if (!pair.isEmpty()) {
        pairs.addAll(List.of(pair.split("=", 2)));
      }
    }
    TrayParams params = ParamValues.record(TrayParams.class, Shelf.standard(), pairs.toArray(String[]::new));
    return new Tray().build(params, Shelf.standard()).get(0);
  }

  private static MeshGauge gauge(String given) {
    return Proven.gauge(part(given).solid());
  }

  /** What n straight chords take off one rounded corner of a square. */
  private static double corner(double radius, int chords) {
    return radius * radius * (1 - chords * Math.sin(Math.PI / 2 / chords) / 2);
  }

  private static int hexagons(Part part) {
    return part.notes().stream().filter(n -> n.endsWith("hexagons lighten the floor."))
        .mapToInt(n -> Integer.parseInt(n.substring(0, n.indexOf(' ')))).findFirst().orElse(0);
  }

  @Test
  void build_default_hasVolumeWorkedOutByHand() {
    Part part = part("");
    // Chords a quarter at a chord error of 0.01: 8 for a radius of 3, 6 or more for 1.6.
    double outer = 80 * 36 - 4 * corner(3, 8);
    double cavity = 77.2 * 33.2 - 4 * corner(1.6, 8) - 4 * 9 * (3.2 - 1.4);
    double floorCuts = 2 * 11 * 2 + hexagons(part) * Math.sqrt(3) / 2 * 36;
    double endWalls = 2 * 1.4 * (6 * 4 + 2 * 3 * 1.7);
    // Round hole of 4.2 and the roof above it, a square corner with sides at 45 degrees, four times through 3.2.
    double hole = Math.PI * 2.1 * 2.1 + 2.1 * 2.1 * (1 - Math.PI / 4);
    double volume = 8 * outer - 6.8 * cavity - 1.2 * floorCuts - endWalls - 4 * 3.2 * hole
        + 4 * 9 * 3.2 * (part.stated().get("height") - 8);
    assertEquals(volume, Proven.mesh(part.solid()).measures().volume(), 0.001 * volume);
  }

  @ParameterizedTest
  @ValueSource(doubles = {28, 33.37, 36.4, 40, 52.5})
  void build_anyRailSpacing_fillsItLessTwoClearances(double spacing) {
    Part part = part("rail-spacing=" + spacing + " clearance=0.25 straps=0");
    MeshGauge gauge = Proven.gauge(part.solid());
    assertEquals(spacing, gauge.size(Axis.Y) + 2 * 0.25, 2 * GRID);
    assertEquals(gauge.size(Axis.Y), part.stated().get("outside-width"), 2 * GRID);
    assertEquals(-gauge.min(Axis.Y), gauge.max(Axis.Y), GRID);
    assertEquals(80, gauge.size(Axis.X), GRID);
    assertEquals(0, gauge.min(Axis.Z));
  }

  @Test
  void build_default_measuresAsStated() {
    Part part = part("");
    MeshGauge gauge = Proven.gauge(part.solid());
    Map<String, Double> stated = part.stated();
    // Along X high above the floor, beside notches and tie slots: two end walls.
    List<Double> along = gauge.crossings(Axis.X, 13.017, 7.51);
    assertEquals(List.of(4), List.of(along.size()));
    assertEquals(stated.get("inside-length"), along.get(2) - along.get(1), 2 * GRID);
    List<Double> across = gauge.crossings(Axis.Y, 1.013, 7.53);
    assertEquals(stated.get("inside-width"), across.get(2) - across.get(1), 2 * GRID);
    // Down beside the hexagons, above the strip of floor along the end wall.
    List<Double> down = gauge.crossings(Axis.Z, 38.1 - 0.05, 0.017);
    assertEquals(stated.get("floor"), down.get(1), GRID);
    assertEquals(stated.get("height"), gauge.max(Axis.Z), GRID);
  }

  /** ISO 273 medium M3 3.4, page "Clearance Hole Sizes - Reference Data (ISO 273)", with 0.2 hole allowance. */
  @ParameterizedTest
  @CsvSource({"medium, M3-socket, 3.6", "fine, M2-socket, 2.4", "insert, M3-socket, 4.2", "pilot, M3-socket, 2.8"})
  void build_tabHoles_passTheirScrew(String fit, String screw, double diameter) {
    MeshGauge gauge = gauge("fit=" + fit + " screw=" + screw);
    for (double x : new double[] {-28, 28}) {
      for (double y : new double[] {-16.5, 16.5}) {
        double pin = gauge.pinDiameter(Axis.Y, y, x, 4);
        assertTrue(pin >= diameter - GRID, "pin " + pin);
        assertEquals(diameter, pin, ROUND);
      }
    }
  }

  @Test
  void build_nut_liesInside() {
    MeshGauge gauge = gauge("fit=nut tab-thickness=4 tab-width=12 drop=12 screw-drop=6 straps=0");
    // From outside a clearance hole, from inside a pocket 5.5 across flats with 0.2 allowance.
    assertEquals(3.6, gauge.pinDiameter(Axis.Y, 17.9, 28, 6), ROUND);
    assertEquals(5.7, gauge.pinDiameter(Axis.Y, 14.1, 28, 6), ROUND);
    assertEquals(5.7, gauge.pinDiameter(Axis.Y, -14.1, 28, 6), ROUND);
  }

  @Test
  void build_narrowBox_reachesOutToTheRails() {
    Part part = part("width=30 straps=0");
    MeshGauge gauge = Proven.gauge(part.solid());
    assertEquals(36, gauge.size(Axis.Y), 2 * GRID);
    List<Double> beside = gauge.crossings(Axis.Y, 10.013, 7.53);
    assertEquals(30, beside.get(beside.size() - 1) - beside.get(0), 2 * GRID);
    // The tab is thick enough to keep a shoulder behind the insert.
    assertEquals(3.6, gauge.pinDiameter(Axis.Y, 17.9, 28, 4), ROUND);
    assertEquals(4.2, gauge.pinDiameter(Axis.Y, 12, 28, 4), ROUND);
    assertTrue(gauge("width=35.99").size(Axis.Y) > 35.99);
  }

  @Test
  void build_outboard_isHeldByTheSideNextToTheRail() {
    MeshGauge left = gauge("place=left width=30");
    MeshGauge right = gauge("place=right width=30");
    // The left tray's rail is on its right: the hole is there and the far wall is closed.
    assertEquals(4.2, left.pinDiameter(Axis.Y, -14.5, 28, 4), ROUND);
    assertEquals(4.2, right.pinDiameter(Axis.Y, 14.5, 28, 4), ROUND);
    assertEquals(2, left.crossings(Axis.Y, 28.013, 4.017).size());
    Measures l = Proven.mesh(part("place=left width=30").solid()).measures();
    Measures r = Proven.mesh(part("place=right width=30").solid()).measures();
    assertEquals(l.volume(), r.volume(), 1e-3);
    assertEquals(-l.centroidY(), r.centroidY(), 1e-4);
    assertEquals(List.of("2 x M3-socket x 6 or 8 or 10", "2 x M3-short insert"),
        part("place=left width=30").hardware());
  }

  @Test
  void build_highScrew_raisesTheTabs() {
    Part part = part("drop=12");
    MeshGauge gauge = Proven.gauge(part.solid());
    assertEquals(part.stated().get("height"), gauge.max(Axis.Z), GRID);
    // Hole 8 above the underside, 1.6 of wall above its roof: 12.57, to whole layers 12.6.
    assertEquals(12.6, gauge.max(Axis.Z), GRID);
    assertEquals(8 + 2.1 * Math.sqrt(2) + 1.6, 12.57, 0.01);
    assertEquals(4.2, gauge.pinDiameter(Axis.Y, 16.5, 28, 8), ROUND);
  }

  @Test
  void build_openings_areAllThere() {
    // Genus of a slab: one for each hole through it. Notches are open at the rim and count none.
    Part part = part("");
    int holes = hexagons(part) + 2 + 4 + 4;
    assertEquals(holes, Proven.mesh(part.solid()).measures().genus());
    assertEquals(4, Proven.mesh(part("hexagon=0 straps=0 ties=0").solid()).measures().genus());
    assertEquals(0, Proven.mesh(part("hexagon=0 straps=0 ties=0 tabs=0").solid()).measures().genus());
    assertTrue(hexagons(part) > 10, "only " + hexagons(part) + " hexagons");
  }

  @Test
  void build_strapSlots_passTheStrap() {
    MeshGauge gauge = gauge("hexagon=0 straps=2 strap-pitch=26");
    double plain = gauge("hexagon=0 straps=0").sectionArea(Axis.Z, 0.6);
    assertEquals(4 * 11 * 2, plain - gauge.sectionArea(Axis.Z, 0.6), 1e-3);
    // 0.9 of floor stays beside the wall, whose inside is at 16.6.
    assertEquals(2, gauge.crossings(Axis.Z, 13.01, 16.6 - 0.45).size());
    assertEquals(0, gauge.crossings(Axis.Z, 13.01, 16.6 - 0.95).size());
  }

  @Test
  void build_notches_openTheRim() {
    MeshGauge gauge = gauge("notches=2 ties=0");
    MeshGauge closed = gauge("notches=0 ties=0");
    for (double z : new double[] {4.01, 6, 7.9}) {
      assertEquals(2 * 2 * 6 * 1.4, closed.sectionArea(Axis.Z, z) - gauge.sectionArea(Axis.Z, z), 1e-2);
    }
    assertEquals(closed.sectionArea(Axis.Z, 3.99), gauge.sectionArea(Axis.Z, 3.99), 1e-6);
  }

  @Test
  void build_noOverhang_butBridgesAndHolesOnTheirSide() {
    // Faces that look down above the bed: only the tops of tie slots, 3 wide and 1.4 long.
    for (MeshGauge.Overhang o : gauge("drop=12").overhangs(45.5)) {
      assertEquals(1.2 + 0.9 + 1.7, o.z(), 1e-3, o.toString());
      assertTrue(o.area() <= 3 * 1.4 / 2 + 1e-3, o.toString());
    }
    assertTrue(gauge("drop=12 ties=0").overhangs(45.5).isEmpty());
  }

  @Test
  void build_items_areLaidOutAndStated() {
    Part part = part("length=120 items=battery:60x25x16+0.5,receiver:22x14x8");
    assertTrue(part.notes().stream().anyMatch(n -> n.startsWith("battery lies lengthwise, its middle")));
    double battery = part.stated().get("battery-x");
    double receiver = part.stated().get("receiver-x");
    assertTrue(Math.abs(battery - receiver) >= 30.5 + 7 - 1e-9, battery + " " + receiver);
    assertTrue(Math.abs(part.stated().get("battery-y")) <= (part.stated().get("clear-width") - 26) / 2 + 1e-9);
  }

  @Test
  void build_itemAsLargeAsTheClearFloor_fitsAndNoMore() {
    Map<String, Double> stated = part("straps=0 tabs=0 corner-radius=1").stated();
    double length = stated.get("clear-length");
    double width = stated.get("clear-width");
    assertEquals(77.2, length, 1e-9);
    assertEquals(33.2, width, 1e-9);
    String given = "straps=0 tabs=0 corner-radius=1 items=pack:";
    assertEquals(0, part(given + "77.2x33.2x10").stated().get("pack-x"), 1e-9);
  }

  @Test
  void build_clearFloor_staysWithinTheWallsAtItsCorners() {
    Map<String, Double> stated = part("straps=0 tabs=0 corner-radius=8 ties=0").stated();
    // Inside radius 6.6 about (38.6 - 6.6, 16.6 - 6.6).
    double dx = stated.get("clear-length") / 2 - 32;
    double dy = stated.get("clear-width") / 2 - 10;
    assertTrue(Math.hypot(dx, dy) <= 6.6 + 1e-5, dx + " " + dy);
    assertTrue(Math.hypot(dx, dy) > 6.5, dx + " " + dy);
  }

  @Test
  void build_same_isSameTwice() {
    assertEquals(part(""), part(""));
  }
}
