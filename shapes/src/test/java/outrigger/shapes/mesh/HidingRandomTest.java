package outrigger.shapes.mesh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import outrigger.shapes.mesh.face.Faces;
import outrigger.shapes.mesh.frame.Rounded;
import outrigger.shapes.mesh.inside.ExpressionTree;
import outrigger.shapes.mesh.leaf.Polyhedron;
import outrigger.shapes.mesh.spatial.Kernel;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.ShapeException;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Solid;

/**
 * Boxes about one middle, joined, cut and met at random: what is left out because it is hidden changes nothing. It did, in 1
 * of 100, while numbers at a point were taken from beside it: from there on others change unseen where that is hidden.
 */
class HidingRandomTest {
  /** Expressions; more by a property, for a long run. */
  private static final int SEEDS = Integer.getInteger("outrigger.hiding.seeds", 60);

  @Test
  void evaluate_randomExpressions_isWhatItIsWithoutHiding() {
    int something = 0;
    for (int seed = 0; seed < SEEDS; seed++) {
      double all = volume(seed, false);
      // the facets come in another order, mm^3
      assertEquals(all, volume(seed, true), 1e-9, "seed " + seed);
      something += all > 0 ? 1 : 0;
    }
    assertTrue(2 * something > SEEDS, "only " + something + " of " + SEEDS + " hold anything");
  }

  /** So many boxes that what is hidden of a piece is looked for on faces crowded with them. */
  @Test
  void evaluate_crowdedBoxes_isWhatItIsWithoutHiding() {
    for (int seed = 0; seed < SEEDS / 10; seed++) {
      assertEquals(volume(seed, 36, false), volume(seed, 36, true), 1e-9, "seed " + seed);
    }
  }

  private static double volume(int seed, boolean hide) {
    return volume(seed, 8, hide);
  }

  /** Of the result as it is rounded; 0 where nothing is left, -1 where it touches itself. */
  private static double volume(int seed, int boxes, boolean hide) {
    Random random = new Random(seed);
    List<Polyhedron> operands = new ArrayList<>();
    ExpressionTree tree = new ExpressionTree();
    List<Integer> open = new ArrayList<>();
    for (int i = 0; i < boxes; i++) {
      operands.add(polyhedron(box(random)));
      open.add(tree.operand());
    }
    ExpressionTree.Kind[] kinds = {ExpressionTree.Kind.COMMON, ExpressionTree.Kind.COMMON,
        ExpressionTree.Kind.UNION, ExpressionTree.Kind.CUT};
    while (open.size() > 1) {
      List<Integer> parts = new ArrayList<>();
      int count = Math.min(open.size(), 2 + random.nextInt(3));
      for (int i = 0; i < count; i++) {
        parts.add(open.remove(random.nextInt(open.size())));
      }
      open.add(tree.node(kinds[random.nextInt(kinds.length)], parts));
    }
    Faces faces = new Faces();
    faces.addAll(operands);
    try {
      Rounded result = Kernel.evaluate(faces, tree, hide);
      return ReferencePartTest.volume(Mesh.of(result.xyz(), result.corners()));
    } catch (ShapeException refusal) {
      return -1;
    }
  }

  private static Solid box(Random random) {
    Solid box = Prism.of(Profile.rectangle(8 + random.nextInt(8), 8 + random.nextInt(8)), -4 - random.nextInt(4),
        4 + random.nextInt(4));
    double degrees = new double[] {0, 0, 1e-4, random.nextDouble() * 90}[random.nextInt(4)];
    return box.turn(Axis.values()[random.nextInt(3)], degrees).turn(Axis.values()[random.nextInt(3)], degrees)
        .move(random.nextInt(7) - 3, random.nextInt(7) - 3, random.nextInt(7) - 3);
  }

  private static Polyhedron polyhedron(Solid solid) {
    Mesh mesh = Mesher.mesh(solid);
    List<int[][]> facets = new ArrayList<>();
    for (int f = 0; f < mesh.facetCount(); f++) {
      facets.add(new int[][] {{mesh.corner(f, 0), mesh.corner(f, 1), mesh.corner(f, 2)}});
    }
    return new Polyhedron(mesh.xyz(), facets);
  }
}
