package outrigger.shapes.print.hang;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import outrigger.shapes.check.CheckedMesh;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.Grid;
import outrigger.shapes.num.Workers;
import outrigger.shapes.print.Concern;
import outrigger.shapes.print.PrintLimits;
import outrigger.shapes.print.Specimen;
import outrigger.shapes.print.Specimens;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Revolution;
import outrigger.shapes.solid.Solid;

/**
 * Families of parts with one underside of a stated lean, reach, span or diameter, turned about the vertical at random: a
 * concern beyond the limit and none within. Where one is told, {@link ColumnMap}, a map of columns made from the facets
 * alone, shows air below at that place; where none is told of a slope, it shows no column that far from what carries it.
 */
class OverhangFamiliesTest {
  private static final long SEED = 815;
  private static final int EACH = Integer.getInteger("families", 5);

  private final List<String> wrong = new ArrayList<>();

  private static double away(Random random, double least, double most, double limit, double by) {
    double size = limit;
    while (Math.abs(size - limit) < by) {
      size = least + (most - least) * random.nextDouble();
    }
    return size;
  }

  private static double tan(double degrees) {
    return StrictMath.tan(StrictMath.toRadians(degrees));
  }

  private List<Concern> told(Solid solid, boolean slope, Random random) {
    Solid turned = solid.turn(Axis.Z, 360 * random.nextDouble()).move(7 * random.nextDouble(), -4, 3);
    CheckedMesh mesh = Specimens.proven(random.nextBoolean() ? turned : turned.mirror(Axis.X));
    List<Concern> concerns = new OverhangGauge().read(
        new Specimen(mesh, PrintLimits.standard(), Map.of(), Workers.of(1))).concerns();
    ColumnMap map = new ColumnMap(mesh.mesh(), 0.25);
    for (Concern c : concerns) {
      if (!map.hasAirBelow(c.x(), c.y(), c.z())) {
        wrong.add("no air below " + c);
      }
    }
    if (slope && concerns.isEmpty() && map.farthest(2) > 2 * tan(45) + 0.5) {
      wrong.add("a column stands out " + map.farthest(2) + " mm over 2 mm, and nothing is told");
    }
    return concerns;
  }

  private void expect(String name, boolean bad, String rule, List<Concern> told) {
    boolean right = bad ? told.stream().anyMatch(c -> c.rule().equals(rule)) : told.isEmpty();
    if (!right) {
      wrong.add(name + ": " + told);
    }
  }

  @Test
  void read_slopes_areToldBeyondTheLimit() {
    for (int i = 0; i < EACH; i++) {
      Random random = new Random(SEED + i);
      double lean = away(random, 15, 75, 45, 1);
      double out = 9 * tan(lean);
      Solid slab = Specimens.along(8, 0, 0, 10, 0, 10, 4, 10 + out, 13, 10 + out, 16, 0, 16);
      expect("slab of " + lean, lean > 45, "overhang", told(slab, true, random));
      Solid cone = Prism.of(Profile.post(9), 0, 3).join(Revolution.cone(8.9, 8.9 + 12 * tan(lean), 2.9, 8.9));
      expect("cone of " + lean, lean > 45, "overhang", told(cone, true, random));
    }
    assertEquals("", String.join("\n", wrong));
  }

  @Test
  void read_ledgesAndIslands_areToldBeyondTheLimit() {
    for (int i = 0; i < EACH; i++) {
      Random random = new Random(SEED + i);
      double out = away(random, 0.1, 3, 0.5, 0.05);
      Solid ledge = Specimens.along(8, 0, 0, 10, 0, 10, 5, 10 + out, 5, 10 + out, 9, 0, 9);
      expect("ledge of " + out, out > 0.5, "ledge", told(ledge, false, random));
      double drop = 1 + 3 * random.nextDouble();
      Solid hook = Specimens.along(5, 0, 0, 4, 0, 4, 9, 11, 16, 12, 16, 12, 16 - drop, 15, 16 - drop, 15, 20, 0, 20);
      expect("hook of " + drop, true, "island", told(hook, false, random));
    }
    assertEquals("", String.join("\n", wrong));
  }

  @Test
  void read_bridgesAndRoofs_areToldBeyondTheLimit() {
    for (int i = 0; i < EACH; i++) {
      Random random = new Random(SEED + i);
      double span = away(random, 3, 20, 10, 0.2);
      expect("bridge of " + span, span > 10, "bridge", told(Specimens.table(span, 4 + 8 * random.nextDouble()), false,
          random));
      double wide = away(random, 3, 14, 6, 0.1);
      expect("hole of " + wide, wide > 6, "round-roof", told(Specimens.holed(wide, 9), false, random));
    }
    assertEquals("", String.join("\n", wrong));
  }

  /** Where the vertical line through the middle of each square of a grid runs inside the solid. */
  private static final class ColumnMap {
    private final double side;
    private final double minX;
    private final double minY;
    private final int columns;
    private final int rows;
    private final List<List<Double>> crossings = new ArrayList<>();
    private final double low;
    private final double high;

    ColumnMap(Mesh mesh, double side) {
      this.side = side;
      double[] box = {1e9, 1e9, 1e9, -1e9, -1e9, -1e9};
      for (int v = 0; v < mesh.vertexCount(); v++) {
        double[] p = place(mesh, v);
        for (int k = 0; k < 3; k++) {
          box[k] = Math.min(box[k], p[k]);
          box[k + 3] = Math.max(box[k + 3], p[k]);
        }
      }
      minX = box[0];
      minY = box[1];
      low = box[2];
      high = box[5];
      columns = 1 + (int) ((box[3] - minX) / side);
      rows = 1 + (int) ((box[4] - minY) / side);
      for (int i = 0; i < columns * rows; i++) {
        crossings.add(new ArrayList<>());
      }
      for (int f = 0; f < mesh.facetCount(); f++) {
        add(place(mesh, mesh.corner(f, 0)), place(mesh, mesh.corner(f, 1)), place(mesh, mesh.corner(f, 2)));
      }
    }

    private static double[] place(Mesh mesh, int v) {
      return new double[] {mesh.x(v) * Grid.STEP, mesh.y(v) * Grid.STEP, mesh.z(v) * Grid.STEP};
    }

    private static double area(double[] a, double[] b, double x, double y) {
      return (a[0] - x) * (b[1] - y) - (a[1] - y) * (b[0] - x);
    }

    private void add(double[] a, double[] b, double[] c) {
      double whole = area(a, b, c[0], c[1]);
      for (int i = 0; i < columns * rows && whole != 0; i++) {
        double x = minX + (i % columns + 0.4983) * side;
        double y = minY + (i / columns + 0.5019) * side;
        double ofC = area(a, b, x, y) / whole;
        double ofA = area(b, c, x, y) / whole;
        double ofB = area(c, a, x, y) / whole;
        if (ofA >= 0 && ofB >= 0 && ofC >= 0) {
          crossings.get(i).add(ofA * a[2] + ofB * b[2] + ofC * c[2]);
        }
      }
    }

    private boolean isSolid(int i, int j, double z) {
      if (i < 0 || j < 0 || i >= columns || j >= rows) {
        return false;
      }
      return crossings.get(j * columns + i).stream().filter(crossing -> crossing < z).count() % 2 == 1;
    }

    /** Whether within a millimetre beside and 3 mm below a place there is a column of solid over air. */
    boolean hasAirBelow(double x, double y, double z) {
      int near = (int) Math.ceil(1 / side);
      int i = (int) ((x - minX) / side);
      int j = (int) ((y - minY) / side);
      for (int k = Math.max(0, i - near); k <= Math.min(columns - 1, i + near); k++) {
        for (int l = Math.max(0, j - near); l <= Math.min(rows - 1, j + near); l++) {
          for (double from : crossings.get(l * columns + k)) {
            if (from > low + 0.1 && Math.abs(from - z) < 3 && isSolid(k, l, from + 1e-3) && !isSolid(k, l, from - 1e-3)) {
              return true;
            }
          }
        }
      }
      return false;
    }

    /** How far a solid column stands out at most from the solid a step lower, mm; flat ledges and spans count too. */
    double farthest(double step) {
      double farthest = 0;
      int most = (int) (12 / side);
      for (double z = low + step + 0.1; z < high; z += step / 2) {
        for (int n = 0; n < columns * rows; n++) {
          int i = n % columns;
          int j = n / columns;
          if (isSolid(i, j, z) && !isSolid(i, j, z - step)) {
            farthest = Math.max(farthest, nearest(i, j, z - step, most));
          }
        }
      }
      return farthest;
    }

    private double nearest(int i, int j, double z, int most) {
      double nearest = most * side;
      for (int k = -most; k <= most; k++) {
        for (int l = -most; l <= most; l++) {
          if (Math.hypot(k, l) * side < nearest && isSolid(i + k, j + l, z)) {
            nearest = Math.hypot(k, l) * side;
          }
        }
      }
      return nearest;
    }
  }
}
