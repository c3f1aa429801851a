package outrigger.shapes.check;

import static outrigger.shapes.check.Meshes.MM;

import java.util.LinkedHashMap;
import java.util.Map;
import outrigger.shapes.num.Grid;

/** Sound meshes by name, many of them only just so. */
public final class SoundMeshes {
  private SoundMeshes() {}

  /** All of them by name. */
  public static Map<String, Soup> all() {
    Map<String, Soup> all = new LinkedHashMap<>();
    boxes(all);
    rounds(all);
    nearMisses(all);
    for (int n = 3; n <= 12; n++) {
      all.put("prism" + n, Meshes.prism(Meshes.circle(n, 9 * MM, 0), n * MM));
    }
    for (int n = 0; n <= 4; n++) {
      all.put("holedPlate" + n, Meshes.holedPlate(n, 2 * MM));
    }
    return all;
  }

  private static void boxes(Map<String, Soup> all) {
    int most = Grid.LIMIT;
    all.put("box", Meshes.box(1 * MM, 2 * MM, 3 * MM));
    all.put("smallestBox", Meshes.box(1, 1, 1));
    all.put("largestBox", new Soup().box(-most, -most, -most, most, most, most));
    all.put("sheet", Meshes.box(200 * MM, 200 * MM, 1));
    all.put("wire", Meshes.box(1, 1, 1000 * MM));
    all.put("tetrahedron", Meshes.tetrahedron(5 * MM));
    all.put("smallestTetrahedron", Meshes.tetrahedron(1));
    for (int depth = 2; depth <= 6; depth++) {
      all.put("nest" + depth, Meshes.nest(depth));
    }
    Soup row = new Soup();
    for (int i = 0; i < 7; i++) {
      row.add(Meshes.box(MM, MM, MM).move(2 * i * MM, 0, 0));
    }
    all.put("row", row);
    all.put("voidsInARow", Meshes.box(20 * MM, 5 * MM, 5 * MM).add(row.copy().flip().move(2 * MM, 2 * MM, 2 * MM)));
  }

  private static void rounds(Map<String, Soup> all) {
    for (int times = 0; times <= 4; times++) {
      all.put("ball" + times, Meshes.ball(times, 9 * MM));
    }
    all.put("cone", Meshes.cone(24, 9 * MM, 20 * MM));
    all.put("torus3", Meshes.torus(3, 3, 20 * MM, 5 * MM));
    all.put("torus24", Meshes.torus(24, 16, 20 * MM, 7 * MM));
    all.put("linkedTori", Meshes.torus(16, 8, 20 * MM, 4 * MM)
        .add(Meshes.torus(16, 8, 20 * MM, 4 * MM).cycle().move(20 * MM, 0, 0)));
    all.put("hollowBall", Meshes.ball(3, 9 * MM).add(Meshes.ball(2, 8 * MM).flip()));
    all.put("ringVoid", Meshes.box(80 * MM, 80 * MM, 20 * MM)
        .add(Meshes.torus(12, 8, 20 * MM, 6 * MM).flip().move(40 * MM, 40 * MM, 10 * MM)));
    all.put("ballInRingsHole", Meshes.torus(12, 8, 20 * MM, 6 * MM).add(Meshes.ball(2, 9 * MM)));
  }

  private static void nearMisses(Map<String, Soup> all) {
    Soup cube = Meshes.box(9 * MM, 9 * MM, 9 * MM);
    all.put("sidesOneUnitApart", cube.copy().add(cube.copy().move(9 * MM + 1, 0, 0)));
    all.put("cornersOneUnitApart", cube.copy().add(cube.copy().move(9 * MM + 1, 9 * MM + 1, 9 * MM + 1)));
    all.put("boxOneUnitAboveBox", cube.copy().add(Meshes.box(3 * MM, 3 * MM, MM).move(MM, MM, 9 * MM + 1)));
    all.put("voidOneUnitDeep", cube.copy().add(new Soup().box(1, 1, 1, 9 * MM - 1, 9 * MM - 1, 9 * MM - 1).flip()));
    all.put("tipOneUnitBelow", cube.copy().add(Meshes.cone(5, 5 * MM, 5 * MM).move(4 * MM, 3 * MM, -5 * MM - 1)));
    all.put("edgesCrosswiseOneUnitApart", cube.copy().add(SpoiledMeshes.edgeAcross(
        new int[] {4 * MM, -4 * MM, 5 * MM + 1}, new int[] {4 * MM, 4 * MM, 13 * MM + 1})));
    all.put("voidInNestedSolid", Meshes.nest(3)
        .add(Meshes.tetrahedron(2 * MM).flip().move(20 * MM, 20 * MM, 20 * MM)));
  }
}
