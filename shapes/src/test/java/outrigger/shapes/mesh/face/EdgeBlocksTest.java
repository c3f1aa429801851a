package outrigger.shapes.mesh.face;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.BitSet;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import outrigger.shapes.check.CheckedMesh;
import outrigger.shapes.check.Proof;
import outrigger.shapes.exact.Plane;
import outrigger.shapes.mesh.Mesher;
import outrigger.shapes.mesh.leaf.LeafBuilder;
import outrigger.shapes.num.Axis;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Solid;

/** Faces of many edges, as the top of a plate full of holes. */
class EdgeBlocksTest {
  private static final long SEED = 20261126;

  private static Profile plate() {
    Profile plate = Profile.rectangle(40, 40);
    for (int i = 0; i < 49; i++) {
      plate = plate.cut(Profile.hole(2).move(5 * (i % 7) - 15, 5 * (i / 7) - 15));
    }
    return plate;
  }

  private static Face largest(Faces faces) {
    Face largest = faces.face(0);
    for (int f = 1; f < faces.faceCount(); f++) {
      largest = faces.face(f).edges() > largest.edges() ? faces.face(f) : largest;
    }
    return largest;
  }

  @Test
  void next_anyPlane_leavesOutNoEdgeThatMeetsIt() {
    Faces faces = new Faces();
    faces.addAll(List.of(LeafBuilder.prism(Prism.of(plate(), 0, 3))));
    Face face = largest(faces);
    EdgeBlocks blocks = face.blocks(faces);
    Random random = new Random(SEED);
    int seen = 0;
    for (int i = 0; i < 500; i++) {
      int[] p = random.ints(9, -300_000, 300_000).toArray();
      Plane plane = Plane.through(p[0], p[1], p[2], p[3], p[4], p[5], p[6], p[7], i % 2 == 0 ? p[8] : p[8] / 100_000);
      int axis = i % 3;
      double most = i % 4 == 0 ? p[axis] : Double.POSITIVE_INFINITY;
      BitSet told = new BitSet();
      for (int e = blocks.next(0, plane, axis, most); e < face.edges(); e = blocks.next(e + 1, plane, axis, most)) {
        told.set(e);
      }
      for (int e = 0; e < face.edges(); e++) {
        boolean meets = faces.side(face.from[e], plane) * faces.side(face.to[e], plane) <= 0;
        boolean near = Math.min(faces.coordinate(face.from[e], axis), faces.coordinate(face.to[e], axis)) <= most;
        assertTrue(told.get(e) || !meets || !near, "seed " + SEED + ", plane " + i + ", edge " + e);
      }
      seen += told.cardinality();
    }
    assertTrue(seen < 500 * face.edges() / 4, seen + " of " + 500 * face.edges() + " edges");
  }

  /** Drills cross rims of holes that are there already; what they leave is the same when all is cut at one go. */
  @Test
  void mesh_plateReadBackThenDrilled_isAsAtOneGo() {
    Solid plate = Prism.of(plate(), 0, 3);
    Solid readBack = proven(plate).solid();
    Solid drills = Prism.of(Profile.hole(3), -1, 4).turn(Axis.X, 20).join(
        Prism.of(Profile.hole(2.5), -1, 4).move(-7.3, 6.1, 0), Prism.of(Profile.rectangle(22, 0.7), 1, 2).move(3, -9.2, 0),
        Prism.of(Profile.rectangle(0.9, 50), 2.5, 5).turn(Axis.Z, 31));
    assertEquals(volume(plate.cut(drills)), volume(readBack.cut(drills)), 1e-9);
  }

  private static double volume(Solid solid) {
    return proven(solid).measures().volume();
  }

  private static CheckedMesh proven(Solid solid) {
    return Proof.judge(Mesher.mesh(solid)).proven().orElseThrow();
  }
}
