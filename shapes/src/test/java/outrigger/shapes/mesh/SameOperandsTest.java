package outrigger.shapes.mesh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import outrigger.shapes.mesh.face.Faces;
import outrigger.shapes.mesh.frame.Rounded;
import outrigger.shapes.mesh.inside.ExpressionTree;
import outrigger.shapes.mesh.leaf.Polyhedron;
import outrigger.shapes.mesh.leaf.SamePlace;
import outrigger.shapes.mesh.spatial.Kernel;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.ShapeException;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Revolution;
import outrigger.shapes.solid.Solid;

/** Operands that are the same, in the very same place, are one: in an expression as often as they stand there. */
class SameOperandsTest {
  private static final Solid BALL = Revolution.sphere(10, 24);
  /** The same when turned by right angles or mirrored, but for the order of corners. */
  private static final Solid BLOCK = Prism.of(Profile.rectangle(8, 8), -4, 4);
  private static final Solid BAR = Prism.of(Profile.rectangle(4, 6), -9, 9).turn(Axis.X, 31).turn(Axis.Y, 17);

  @Test
  void mesh_sameOperandsJoinedOrMet_isTheOperand() {
    for (Solid many : List.of(Solid.union(Collections.nCopies(30, BALL)), Solid.common(BALL, BALL),
        Solid.union(BALL.cut(BAR), BALL), Solid.common(BALL, Solid.union(BALL, BAR)))) {
      assertSame(BALL, many, 1e-9);
    }
    for (Solid many : List.of(Solid.union(BLOCK, BLOCK.mirror(Axis.X), BLOCK.turn(Axis.Y, 90)),
        Solid.common(BLOCK, Solid.union(BAR, BLOCK.turn(Axis.Z, 180))))) {
      assertSame(BLOCK, many, 1e-9);
    }
  }

  @Test
  void mesh_cutByItself_isNothing() {
    for (Solid nothing : List.of(BALL.cut(BALL), BALL.cut(BAR, BALL), Solid.common(BALL.cut(BAR), BALL, BAR),
        BLOCK.cut(BAR, BLOCK.mirror(Axis.Y)), Solid.common(BLOCK.cut(BAR), BLOCK.turn(Axis.Z, 180), BAR))) {
      assertThrows(ShapeException.class, () -> Mesher.mesh(nothing));
      assertEquals(Optional.empty(), Mesher.meshIfAny(nothing));
    }
  }

  @Test
  void mesh_nestedRepeats_areTheShorterExpressions() {
    // which frame corners are rounded in, the repeats tell with: half a grid step over the surfaces, mm^3
    double rounding = 0.02;
    assertSame(Solid.common(BALL, BAR), BALL.cut(BALL.cut(BAR)), rounding);
    assertSame(BAR.cut(BALL), Solid.union(BALL, BAR).cut(BALL), rounding);
    assertSame(Solid.union(BALL, BAR), Solid.union(BALL.cut(BAR), Solid.common(BALL, BAR), BAR.cut(BALL)), rounding);
  }

  private static void assertSame(Solid expected, Solid actual, double rounding) {
    Mesh one = Mesher.spatial(expected);
    Mesh other = Mesher.mesh(actual);
    assertEquals(one.facetCount(), other.facetCount());
    assertEquals(volume(one), volume(other), rounding);
  }

  @Test
  void equals_anotherOrder_isThatOfPlaces() {
    int[] xyz = {0, 0, 0, 4, 0, 0, 0, 4, 0, 0, 0, 4};
    int[][][] faces = {{{0, 2, 1}}, {{0, 1, 3}}, {{1, 2, 3}}, {{2, 0, 3}}};
    int[] turned = {0, 0, 4, 0, 0, 0, 4, 0, 0, 0, 4, 0};
    int[][][] others = {{{2, 0, 1}}, {{3, 1, 0}}, {{2, 1, 3}}, {{0, 2, 3}}};
    int[][][] inward = {{{2, 1, 0}}, {{3, 0, 1}}, {{2, 3, 1}}, {{0, 3, 2}}};
    SamePlace same = new SamePlace(new Polyhedron(xyz, List.of(faces)));
    assertEquals(same, new SamePlace(new Polyhedron(turned, List.of(others))));
    assertTrue(!same.equals(new SamePlace(new Polyhedron(turned, List.of(inward)))));
  }

  @Test
  void evaluate_randomExpressions_isWhatCopiesMake() {
    int something = 0;
    for (int seed = 0; seed < 60; seed++) {
      double once = volume(seed, true);
      assertEquals(volume(seed, false), once, 1e-9, "seed " + seed);
      something += once > 0 ? 1 : 0;
    }
    assertTrue(something > 30, "only " + something + " hold anything");
  }

  /** Of an expression over boxes at two places each; 0 where nothing is left, -1 where it touches itself. */
  private static double volume(int seed, boolean once) {
    Random random = new Random(seed);
    List<Polyhedron> operands = new ArrayList<>();
    ExpressionTree tree = new ExpressionTree();
    List<Integer> open = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      Polyhedron box = box(random);
      operands.addAll(Collections.nCopies(once ? 1 : 2, box));
      open.add(tree.operand());
      open.add(once ? tree.again(i) : tree.operand());
    }
    ExpressionTree.Kind[] kinds = {ExpressionTree.Kind.UNION, ExpressionTree.Kind.COMMON,
        ExpressionTree.Kind.UNION, ExpressionTree.Kind.CUT};
    while (open.size() > 1) {
      List<Integer> parts = new ArrayList<>();
      for (int i = Math.min(open.size(), 2 + random.nextInt(2)); i > 0; i--) {
        parts.add(open.remove(random.nextInt(open.size())));
      }
      open.add(tree.node(kinds[random.nextInt(kinds.length)], parts));
    }
    Faces faces = new Faces();
    faces.addAll(operands);
    try {
      Rounded result = Kernel.evaluateAny(faces, tree);
      return volume(Mesh.of(result.xyz(), result.corners()));
    } catch (ShapeException refusal) {
      return -1;
    }
  }

  private static Polyhedron box(Random random) {
    Mesh mesh = Mesher.mesh(Prism.of(Profile.rectangle(8 + random.nextInt(8), 8), -5, 4 + random.nextInt(4))
        .turn(Axis.values()[random.nextInt(3)], random.nextInt(2) * random.nextDouble() * 90)
        .turn(Axis.values()[random.nextInt(3)], random.nextInt(4) * 15).move(random.nextInt(7) - 3, 0, random.nextInt(7)));
    List<int[][]> facets = new ArrayList<>();
    for (int f = 0; f < mesh.facetCount(); f++) {
      facets.add(new int[][] {{mesh.corner(f, 0), mesh.corner(f, 1), mesh.corner(f, 2)}});
    }
    return new Polyhedron(mesh.xyz(), facets);
  }

  private static double volume(Mesh mesh) {
    return ReferencePartTest.volume(mesh);
  }
}
