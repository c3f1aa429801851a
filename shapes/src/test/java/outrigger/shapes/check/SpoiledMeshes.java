package outrigger.shapes.check;

import static outrigger.shapes.check.Meshes.MM;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/** Meshes spoiled on purpose, by name, each with the rules it breaks and no others. */
public final class SpoiledMeshes {
  /** A mesh and the names of the rules it breaks. */
  public record Spoiled(Soup soup, Set<String> rules) {}

  private static final Map<String, Spoiled> ALL = new LinkedHashMap<>();

  static {
    open();
    turned();
    flat();
    twice();
    crowded();
    pinched();
    crossing();
    touching();
    nested();
  }

  private SpoiledMeshes() {}

  /** All of them by name. */
  public static Map<String, Spoiled> all() {
    return ALL;
  }

  private static void put(String name, Soup soup, String... rules) {
    if (ALL.put(name, new Spoiled(soup, Set.of(rules))) != null) {
      throw new AssertionError("two meshes named " + name);
    }
  }

  private static int[] p(int x, int y, int z) {
    return new int[] {x, y, z};
  }

  private static void open() {
    put("empty", new Soup(), "empty");
    put("outOfRange", Meshes.box(1025 * MM, MM, MM), "out-of-range");
    put("oneUnitOutOfRange", Meshes.box(1024 * MM + 1, MM, MM), "out-of-range");
    put("openCone", cone(9, 9).remove(9), "open-edge");
    put("boxWithoutFacet", cube().remove(7), "open-edge");
    put("boxWithoutLid", cube().remove(2).remove(2), "open-edge");
    put("ballWithoutFacet", Meshes.ball(3, 20 * MM).remove(100), "open-edge");
    put("singleFacet", cube().facetsOnly(1), "open-edge");
    put("looseSquare", cube().facetsOnly(2), "open-edge");
    put("edgeSplitOnOneSide", edgeSplitOnOneSide(), "open-edge", "facets-meet");
    put("crackOfOneUnit", cube().moveCorner(2, 0, p(0, 0, 9 * MM), p(0, 0, 9 * MM + 1)), "open-edge");
    put("looseSoup", looseSoup(), "open-edge");
  }

  private static Soup cube() {
    return Meshes.box(9 * MM, 9 * MM, 9 * MM);
  }

  private static Soup cone(int n, int mm) {
    return Meshes.cone(n, mm * MM, mm * MM);
  }

  /** One facet of a pair gets a further corner in the middle of their edge. */
  private static Soup edgeSplitOnOneSide() {
    Soup soup = Meshes.tetrahedron(8 * MM);
    int[] x = p(8 * MM, 0, 0);
    int[] y = p(0, 8 * MM, 0);
    int[] z = p(0, 0, 8 * MM);
    int[] middle = p(4 * MM, 4 * MM, 0);
    return soup.remove(3).facet(x, middle, z).facet(middle, y, z);
  }

  private static Soup looseSoup() {
    Soup soup = new Soup();
    for (int i = 0; i < 30; i++) {
      soup.facet(p(i * MM, 0, 0), p(i * MM, MM, 0), p(i * MM, 0, MM));
    }
    return soup;
  }

  private static void turned() {
    put("flippedFacet", cube().flip(4, 5), "flipped-facet");
    put("flippedSide", cube().flip(4, 6), "flipped-facet");
    put("flippedHalfBall", Meshes.ball(2, 9 * MM).flip(0, 64), "flipped-facet");
    put("moebiusStrip", moebiusStrip(), "open-edge", "flipped-facet");
    put("insideOutBox", cube().flip(), "inside-out-shell", "volume-not-positive");
    put("insideOutTorus", Meshes.torus(12, 8, 20 * MM, 5 * MM).flip(), "inside-out-shell", "volume-not-positive");
    put("insideOutBesideSound", cube().add(cube().flip().move(-10 * MM, 0, 0))
        .add(cube().move(20 * MM, 0, 0)), "inside-out-shell");
  }

  private static Soup moebiusStrip() {
    int n = 12;
    int[][] low = new int[n][];
    int[][] high = new int[n][];
    for (int i = 0; i < n; i++) {
      double a = 2 * StrictMath.PI * i / n;
      for (int s = -1; s <= 1; s += 2) {
        double r = (20 + 5 * s * StrictMath.cos(a / 2)) * MM;
        int[] q = p((int) (r * StrictMath.cos(a)), (int) (r * StrictMath.sin(a)),
            (int) (5 * MM * s * StrictMath.sin(a / 2)));
        (s < 0 ? low : high)[i] = q;
      }
    }
    Soup soup = new Soup();
    for (int i = 0; i < n; i++) {
      int[] nextLow = i + 1 < n ? low[i + 1] : high[0];
      int[] nextHigh = i + 1 < n ? high[i + 1] : low[0];
      soup.facet(low[i], nextLow, nextHigh).facet(low[i], nextHigh, high[i]);
    }
    return soup;
  }

  private static void flat() {
    int[] a = p(0, 0, 0);
    int[] b = p(9 * MM, 0, 0);
    int[] middle = p(4 * MM, 0, 0);
    put("needleFacet", needle(p(4 * MM, 4 * MM, 0)), "zero-area-facet", "facets-meet");
    put("facetCornerTwice", cube().facet(a, a, b), "zero-area-facet", "crowded-edge");
    put("facetOfOnePoint", cube().facet(a, a, a), "zero-area-facet", "pinched-vertex");
    put("straightFacetOnEdge", cube().facet(a, middle, b), "zero-area-facet", "crowded-edge", "open-edge");
    put("collapsedEdge", cube().moveVertex(p(9 * MM, 9 * MM, 9 * MM), p(9 * MM, 9 * MM, 0)), "zero-area-facet",
        "crowded-edge");
    put("flatTetrahedron", Meshes.tetrahedron(8 * MM).moveVertex(p(0, 0, 8 * MM), p(2 * MM, 2 * MM, 0)),
        "facets-meet", "volume-not-positive");
    put("boxWithoutHeight", Meshes.box(9 * MM, 9 * MM, 0), "zero-area-facet", "duplicate-facet", "crowded-edge");
  }

  /** The edge between two facets gets a further corner on one side, closed by a facet without area. */
  private static Soup needle(int[] middle) {
    return edgeSplitOnOneSide().facet(p(8 * MM, 0, 0), p(0, 8 * MM, 0), middle);
  }

  private static void twice() {
    Soup cube = cube();
    put("facetTwice", cube().facet(cube.corner(3, 0), cube.corner(3, 1), cube.corner(3, 2)), "duplicate-facet",
        "crowded-edge");
    put("facetTwiceTurned", cube().facet(cube.corner(3, 2), cube.corner(3, 0), cube.corner(3, 1)), "duplicate-facet",
        "crowded-edge");
    put("facetTwiceFlipped", cube().facet(cube.corner(3, 1), cube.corner(3, 0), cube.corner(3, 2)),
        "duplicate-facet", "crowded-edge");
    put("pillow", cube().facetsOnly(1).add(cube().facetsOnly(1).flip()), "duplicate-facet", "volume-not-positive");
    put("boxTwice", cube().add(cube()), "duplicate-facet", "crowded-edge");
    put("boxesSharingSide", cube().add(cube().move(9 * MM, 0, 0).mirror().move(27 * MM, 0, 0)), "duplicate-facet",
        "crowded-edge");
  }

  private static void crowded() {
    put("boxesSharingEdge", cube().add(cube().move(9 * MM, 9 * MM, 0)), "crowded-edge");
    put("finOnEdge", cube().facet(p(0, 0, 0), p(9 * MM, 0, 0), p(4 * MM, -9 * MM, -9 * MM)), "crowded-edge",
        "open-edge");
    put("innerWall", innerWall(), "crowded-edge");
    put("sealedTwinRooms", twinRooms(), "crowded-edge");
  }

  private static Soup innerWall() {
    int[][] ring = Meshes.circle(6, 9 * MM, 0);
    int[][] low = Meshes.circle(6, 9 * MM, -9 * MM);
    int[][] high = Meshes.circle(6, 9 * MM, 9 * MM);
    return Meshes.wall(low, ring).add(Meshes.wall(ring, high)).fan(high).fan(Meshes.reversed(low)).fan(ring);
  }

  private static Soup twinRooms() {
    boolean[][][] full = new boolean[2][2][1];
    full[0][0][0] = true;
    full[1][1][0] = true;
    return Meshes.cubes(full, 4 * MM);
  }

  private static void pinched() {
    put("boxesSharingCorner", cube().add(cube().move(9 * MM, 9 * MM, 9 * MM)), "pinched-vertex");
    put("conesTipToTip", cone(8, 9).add(flippedOver(8).move(0, 0, 18 * MM)), "pinched-vertex");
    put("hourglass", hourglass(), "pinched-vertex");
    put("hornTorus", hornTorus(), "pinched-vertex");
  }

  /** A cone hanging from z = 0, tip down. */
  private static Soup flippedOver(int n) {
    return cone(n, 9).quarter().cycle().quarter().quarter().cycle().cycle().quarter();
  }

  /** Two funnels joined at their tips and closed round the outside by a tube. */
  private static Soup hourglass() {
    Soup soup = new Soup();
    int[][] low = Meshes.circle(8, 9 * MM, -9 * MM);
    int[][] high = Meshes.circle(8, 9 * MM, 9 * MM);
    for (int i = 0; i < 8; i++) {
      int j = (i + 1) % 8;
      soup.facet(low[i], p(0, 0, 0), low[j]).facet(high[i], high[j], p(0, 0, 0));
    }
    return soup.add(Meshes.wall(low, high));
  }

  private static Soup hornTorus() {
    Soup soup = Meshes.torus(12, 8, 10 * MM, 10 * MM);
    for (int f = soup.size() - 1; f >= 0; f--) {
      boolean same = false;
      for (int c = 0; c < 3; c++) {
        same |= Arrays.equals(soup.corner(f, c), soup.corner(f, (c + 1) % 3));
      }
      if (same) {
        soup.remove(f);
      }
    }
    return soup;
  }

  private static void crossing() {
    put("crossingBoxes", cube().add(cube().move(4 * MM, 5 * MM, 6 * MM)), "facets-meet");
    put("crossingByOneUnit", cube().add(cube().move(9 * MM - 1, 1, 1)), "facets-meet");
    put("shiftedByOneUnit", cube().add(cube().move(1, 1, 1)), "facets-meet");
    put("boxOnASpike", cube().add(cone(5, 12).move(4 * MM, 4 * MM, -2 * MM)), "facets-meet");
    put("ballTurnedThrough", Meshes.ball(2, 9 * MM).moveVertex(p(9 * MM, 0, 0), p(-20 * MM, 0, 0)), "facets-meet");
    put("spindleTorus", Meshes.torus(12, 8, 5 * MM, 8 * MM), "facets-meet");
    put("crossingTori", Meshes.torus(12, 8, 20 * MM, 4 * MM)
        .add(Meshes.torus(12, 8, 20 * MM, 4 * MM).cycle().move(3 * MM, 7 * MM, MM)), "facets-meet");
    put("badlyCutCap", badlyCutCap(), "facets-meet");
    put("starInPlane", cube().add(cube().move(4 * MM, 4 * MM, 0)), "facets-meet");
  }

  /** An L-shaped prism whose caps are fanned from a corner that does not see all of the L. */
  private static Soup badlyCutCap() {
    int[][] loop = {p(9 * MM, 0, 0), p(9 * MM, 4 * MM, 0), p(4 * MM, 4 * MM, 0), p(4 * MM, 9 * MM, 0),
        p(0, 9 * MM, 0), p(0, 0, 0)};
    return Meshes.prism(loop, 3 * MM);
  }

  private static void touching() {
    put("boxOnBox", cube().add(Meshes.box(3 * MM, 3 * MM, 3 * MM).move(MM, 2 * MM, 9 * MM)), "facets-meet");
    put("boxFlushInBox", cube().add(Meshes.box(3 * MM, 3 * MM, 3 * MM).flip().move(MM, 2 * MM, 6 * MM)),
        "facets-meet");
    put("boxAgainstEdge", cube().add(Meshes.box(3 * MM, 3 * MM, 3 * MM).move(-3 * MM, 2 * MM, 9 * MM)),
        "facets-meet");
    put("tipOnSide", cube().add(cone(5, 5).move(4 * MM, 3 * MM, -5 * MM)), "facets-meet");
    put("tipOnEdge", cube().add(cone(5, 5).move(0, 3 * MM, -5 * MM)), "facets-meet");
    put("edgesCrosswise", cube().add(edgeAcross(p(4 * MM, -4 * MM, 5 * MM), p(4 * MM, 4 * MM, 13 * MM))),
        "facets-meet");
    put("edgesCrosswiseByOneUnit", cube().add(edgeAcross(p(4 * MM, -4 * MM, 5 * MM - 1),
        p(4 * MM, 4 * MM, 13 * MM - 1))), "facets-meet");
    put("voidTouchesWall", cube().add(Meshes.tetrahedron(4 * MM).flip().move(0, MM, 2 * MM)), "facets-meet");
  }

  /** A tetrahedron over the given edge, which lies on the upper front edge of the cube and runs across it. */
  static Soup edgeAcross(int[] a, int[] b) {
    int[] c = p(2 * MM, -6 * MM, 14 * MM);
    int[] d = p(6 * MM, -6 * MM, 14 * MM);
    return new Soup().facet(a, c, b).facet(a, d, c).facet(a, b, d).facet(b, c, d);
  }

  private static void nested() {
    Soup inner = cube().move(20 * MM, 20 * MM, 20 * MM);
    put("solidInSolid", Meshes.nest(1).add(inner), "nested-shell");
    put("voidNotTurned", Meshes.nest(2).flip(12, 24), "nested-shell");
    put("allInsideOut", Meshes.nest(2).flip(), "inside-out-shell", "nested-shell", "volume-not-positive");
    put("voidWithoutSolid", cube().add(Meshes.box(MM, MM, MM).flip().move(-80 * MM, 0, 0)), "inside-out-shell");
    put("voidInVoid", Meshes.nest(2).add(inner.copy().flip()), "inside-out-shell");
    put("solidVoidSolidInside", Meshes.nest(3).flip(24, 36), "inside-out-shell", "volume-not-positive");
    put("solidInSolidWithVoid", Meshes.nest(1).add(inner).add(Meshes.box(MM, MM, MM).flip()
        .move(22 * MM, 22 * MM, 22 * MM)), "nested-shell");
    put("voidBesideItsSolid", Meshes.nest(1).add(cube().flip().move(-9 * MM - 1, 0, 0)), "inside-out-shell");
  }
}
