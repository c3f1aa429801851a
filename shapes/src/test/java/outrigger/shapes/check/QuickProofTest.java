package outrigger.shapes.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import outrigger.shapes.exact.BoxTree;
import outrigger.shapes.mesh.Mesh;

/** The quick proof against the examination, which compares every pair of facets whose boxes meet. */
class QuickProofTest {
  private static final long SEED = 31;
  /** Times as many cases as a usual run has. */
  private static final int MORE = Integer.getInteger("outrigger.proof.more", 1);

  private final int[] seen = new int[2];

  @Test
  void examine_soundAndSpoiled_asTheExaminationSays() {
    SoundMeshes.all().forEach((name, soup) -> compare(soup.mesh(), name));
    SpoiledMeshes.all().forEach((name, spoiled) -> {
      if (spoiled.soup().size() > 0 && !spoiled.rules().contains("out-of-range")) {
        compare(spoiled.soup().mesh(), name);
      }
    });
  }

  /** Sound shapes with up to three corners moved elsewhere, by little or by far. */
  @Test
  void examine_bentMeshes_asTheExaminationSays() {
    List<Soup> sound = SoundMeshes.all().values().stream().filter(s -> s.size() < 300).toList();
    for (int i = 0; i < 2_000 * MORE; i++) {
      Random random = new Random(SEED + i);
      Soup soup = sound.get(random.nextInt(sound.size())).copy();
      for (int k = random.nextInt(3); k >= 0; k--) {
        int[] from = soup.corner(random.nextInt(soup.size()), 0);
        int[] to = random.nextBoolean() ? soup.corner(random.nextInt(soup.size()), 1) : from.clone();
        for (int c = 0; c < 3; c++) {
          to[c] = Math.max(-1 << 24, Math.min(1 << 24, to[c] + random.nextInt(5) - 2));
        }
        soup.moveVertex(from, to);
      }
      compare(soup.mesh(), "bent, seed " + (SEED + i));
    }
    assertTrue(seen[0] > 100 && seen[1] > 100, "both answers must occur often: " + Arrays.toString(seen));
  }

  /** Surfaces of few corners on a lattice of few points: flat patches, folds and touches of all kinds. */
  @Test
  void examine_latticeMeshes_asTheExaminationSays() {
    List<Soup> closed = List.of(Meshes.ball(0, 9), Meshes.ball(1, 9), Meshes.prism(Meshes.circle(6, 50, 0), 50),
        Meshes.torus(3, 3, 200, 70), Meshes.torus(4, 5, 200, 70), Meshes.cone(7, 50, 50));
    for (int i = 0; i < 8_000 * MORE; i++) {
      Random random = new Random(SEED + i);
      int range = 2 + random.nextInt(5);
      Mesh shape = closed.get(i % closed.size()).mesh();
      int[] xyz = shape.xyz();
      double share = random.nextInt(4) == 0 ? 1 : 0.3;
      int size = 1 + Arrays.stream(xyz).map(Math::abs).max().getAsInt() / range;
      for (int k = 0; k < xyz.length; k++) {
        xyz[k] = random.nextDouble() < share ? random.nextInt(2 * range + 1) - range : Math.round((float) xyz[k] / size);
      }
      compare(Mesh.of(xyz, shape.corners()), "lattice, seed " + (SEED + i));
    }
    assertTrue(seen[0] > 1_000 && seen[1] > 100, "both answers must occur often: " + Arrays.toString(seen));
  }

  /** Blocks of cubes of many shapes: large flat patches with holes, corners and edges that touch. */
  @Test
  void examine_cubes_asTheExaminationSays() {
    for (int i = 0; i < 500 * MORE; i++) {
      Random random = new Random(SEED + i);
      boolean[][][] full = new boolean[5][5][3];
      double share = i % 3 == 0 ? 0.5 : 0.97;
      for (boolean[][] plane : full) {
        for (boolean[] row : plane) {
          for (int z = 0; z < row.length; z++) {
            row[z] = random.nextDouble() < share;
          }
        }
      }
      Soup soup = Meshes.cubes(full, 4);
      for (int k = random.nextInt(3); k > 0 && soup.size() > 0; k--) {
        int[] from = soup.corner(random.nextInt(soup.size()), 0);
        int[] to = from.clone();
        to[random.nextInt(3)] += random.nextInt(9) - 4;
        soup.moveVertex(from, to);
      }
      compare(soup.mesh(), "cubes, seed " + (SEED + i));
    }
    assertTrue(seen[0] > 100 && seen[1] > 100, "both answers must occur often: " + Arrays.toString(seen));
  }

  /** Plates of one layer of blocks, some corners moved within their plane, both ends of an upright edge or one alone. */
  @Test
  void examine_plates_asTheExaminationSays() {
    int plates = 0;
    for (int i = 0; i < 1_500 * MORE; i++) {
      Random random = new Random(SEED + i);
      boolean[][][] full = new boolean[4][4][1];
      for (boolean[][] row : full) {
        for (boolean[] block : row) {
          block[0] = random.nextDouble() < 0.8;
        }
      }
      Soup soup = Meshes.cubes(full, 6);
      for (int k = random.nextInt(4); k > 0 && soup.size() > 0; k--) {
        int[] from = soup.corner(random.nextInt(soup.size()), 0).clone();
        int[] by = {random.nextInt(9) - 4, random.nextInt(9) - 4};
        for (int z : random.nextInt(3) == 0 ? new int[] {from[2]} : new int[] {0, 6}) {
          soup.moveVertex(new int[] {from[0], from[1], z}, new int[] {from[0] + by[0], from[1] + by[1], z});
        }
      }
      Surface surface = new Surface(soup.mesh());
      plates += HalfEdges.of(surface).flatMap(e -> Plate.regions(surface, e)).isPresent() ? 1 : 0;
      compare(soup.mesh(), "plate, seed " + (SEED + i));
    }
    assertTrue(plates > 100 && seen[0] > 100, plates + " shown to be plates, " + Arrays.toString(seen));
  }

  /** Drums on drums: rims of many corners between regions, some corners moved within their plane or out of it. */
  @Test
  void examine_stacksOfDrums_asTheExaminationSays() {
    for (int i = 0; i < 300 * MORE; i++) {
      Random random = new Random(SEED + i);
      int n = 16 + random.nextInt(40);
      int levels = 2 + random.nextInt(4);
      int[][][] loops = new int[levels][][];
      int z = 0;
      for (int l = 0; l < levels; l++) {
        loops[l] = Meshes.circle(n, 20 + random.nextInt(5_000), z);
        z += random.nextInt(7) == 0 ? 0 : 1 + random.nextInt(3_000);
      }
      for (int k = random.nextInt(4); k > 0; k--) {
        int[] corner = loops[random.nextInt(levels)][random.nextInt(n)];
        int[] to = loops[random.nextInt(levels)][random.nextInt(n)];
        int share = 1 + random.nextInt(3);
        corner[0] += (to[0] - corner[0]) / share;
        corner[1] += (to[1] - corner[1]) / share;
        corner[2] += random.nextInt(4) == 0 ? (to[2] - corner[2]) / share : 0;
      }
      Soup soup = new Soup();
      for (int l = 1; l < levels; l++) {
        soup.add(Meshes.wall(loops[l - 1], loops[l]));
      }
      compare(soup.fan(loops[levels - 1]).fan(Meshes.reversed(loops[0])).mesh(), "drums, seed " + (SEED + i));
    }
    assertTrue(seen[0] > 50 && seen[1] > 50, "both answers must occur often: " + Arrays.toString(seen));
  }

  private void compare(Mesh mesh, String what) {
    Surface surface = new Surface(mesh);
    Findings findings = new Findings();
    SingleFacets.findZeroAreas(surface, findings);
    SingleFacets.findDuplicates(surface, findings);
    Edges.examine(surface, findings);
    Contacts.find(surface, BoxTree.ofFacets(surface.xyz(), surface.corners()), findings);
    boolean sound = findings.isClean();
    seen[sound ? 1 : 0]++;
    assertEquals(sound, QuickProof.examine(surface).isPresent(), () -> what + ": " + findings.list());
  }
}
