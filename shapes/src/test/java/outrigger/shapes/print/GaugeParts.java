package outrigger.shapes.print;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import outrigger.shapes.check.Proof;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.mesh.Mesher;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Revolution;
import outrigger.shapes.solid.Solid;
import outrigger.shapes.stl.StlWriter;

/** Writes parts of about 1,000 to 1,000,000 facets for {@link PrintTimes}: {@code GaugeParts FOLDER}. */
final class GaugeParts {
  private static final int[] SIZES = {1_000, 10_000, 100_000, 1_000_000};

  private GaugeParts() {}

  public static void main(String[] args) throws IOException {
    Map<String, IntFunction<Mesh>> parts = new LinkedHashMap<>();
    parts.put("sphere", GaugeParts::sphere);
    parts.put("holes", facets -> Mesher.mesh(holes((int) Math.round(Math.sqrt(facets / 224.0)))));
    parts.put("comb", facets -> Mesher.mesh(comb((int) Math.round(Math.sqrt(facets / 224.0)))));
    for (Map.Entry<String, IntFunction<Mesh>> part : parts.entrySet()) {
      for (int facets : SIZES) {
        Mesh mesh = part.getValue().apply(facets);
        Path file = Path.of(args[0], part.getKey() + "-" + facets + ".stl");
        StlWriter.write(Proof.judge(mesh).proven().orElseThrow(), part.getKey(), file);
        System.out.println(file + " " + mesh.facetCount());
      }
    }
  }

  /** A ball of 80 mm. */
  private static Mesh sphere(int facets) {
    int rings = (int) Math.round(Math.sqrt(facets / 4.0));
    double[] xy = new double[2 * rings + 2];
    for (int i = 1; i < rings; i++) {
      xy[2 * i] = 40 * StrictMath.sin(StrictMath.PI * i / rings);
      xy[2 * i + 1] = -40 * StrictMath.cos(StrictMath.PI * i / rings);
    }
    xy[1] = -40;
    xy[2 * rings + 1] = 40;
    return Mesher.mesh(new Revolution(Profile.polygon(xy), 2 * rings, false));
  }

  /** A plate of 4 mm, so many by so many holes of 3 mm, 5 mm apart. */
  private static Solid holes(int rows) {
    double side = 5.0 * rows + 4;
    List<Profile> holes = new ArrayList<>();
    for (int i = 0; i < rows * rows; i++) {
      holes.add(Profile.hole(3, 0.0024).move(5 * (i % rows - (rows - 1) / 2.0), 5 * (i / rows - (rows - 1) / 2.0)));
    }
    return Prism.of(Profile.rectangle(side, side).cut(holes.toArray(Profile[]::new)), 0, 4);
  }

  /** A plate of 3 mm with so many by so many pins of 2.4 mm, 5 mm apart, 8 mm high. */
  private static Solid comb(int rows) {
    double side = 5.0 * rows + 4;
    List<Solid> all = new ArrayList<>();
    for (int i = 0; i < rows * rows; i++) {
      all.add(Prism.of(Profile.post(2.4, 0.0019).move(5 * (i % rows - (rows - 1) / 2.0),
          5 * (i / rows - (rows - 1) / 2.0)), 2, 11));
    }
    return Prism.of(Profile.rectangle(side, side), 0, 3).join(all.toArray(Solid[]::new));
  }
}
