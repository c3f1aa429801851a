package outrigger.shapes.mesh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import outrigger.shapes.check.Proof;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.Grid;
import outrigger.shapes.num.ShapeException;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Common;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Solid;

/**
 * Operands turned alike that all but coincide: the grid bends their flat faces by up to half a step, so that these cross each
 * other all over. They are evaluated as one of them sees them, and turned as a whole.
 */
class TurningTest {
  private static Solid tilted(Solid upright) {
    return upright.turn(Axis.X, 20).turn(Axis.Y, 7);
  }

  /** A post and copies of it, each a grid step on from the last. */
  private static List<Solid> copies(int count) {
    List<Solid> copies = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      copies.add(tilted(Prism.of(Profile.post(5), 0, 8)).move(Grid.toMm(i), 0, 0));
    }
    return copies;
  }

  @Test
  void mesh_copiesEachAStepOn_isOnePost() {
    for (int count = 2; count <= 5; count++) {
      Mesh one = Mesher.mesh(copies(1).get(0));
      Mesh mesh = Mesher.mesh(Solid.union(copies(count)));
      assertTrue(Proof.judge(mesh).proven().isPresent(), count + " copies");
      double wall = 5 * 8 + 5 * 5;
      assertEquals(ReferencePartTest.volume(one), ReferencePartTest.volume(mesh), wall * count * Grid.STEP);
    }
  }

  @Test
  void mesh_copiesReorderedTurnedByQuartersOrMirrored_hasTheSameVolume() {
    double volume = ReferencePartTest.volume(Mesher.mesh(Solid.union(copies(4))));
    List<Solid> reordered = copies(4);
    Collections.reverse(reordered);
    assertEquals(volume, ReferencePartTest.volume(Mesher.mesh(Solid.union(reordered))));
    for (Axis axis : Axis.values()) {
      List<Solid> turned = copies(4).stream().map(s -> s.turn(axis, 90)).toList();
      assertEquals(volume, ReferencePartTest.volume(Mesher.mesh(Solid.union(turned))), "turned about " + axis);
      List<Solid> mirrored = copies(4).stream().map(s -> s.mirror(axis)).toList();
      assertEquals(volume, ReferencePartTest.volume(Mesher.mesh(Solid.union(mirrored))), "mirrored along " + axis);
    }
  }

  /** A post turned by a hundred-thousandth of a radian about itself: the caps lie in one plane but for the grid. */
  @Test
  void mesh_copiesTurnedByLittle_isSound() {
    for (double radians : new double[] {1e-6, 1e-5, 1e-4, 1e-3}) {
      Solid post = Prism.of(Profile.hexagon(6), 0, 5);
      Solid other = post.turn(Axis.Z, Math.toDegrees(radians));
      Mesh mesh = Mesher.mesh(tilted(post).join(tilted(other)));
      assertTrue(Proof.judge(mesh).proven().isPresent(), radians + " rad");
    }
  }

  @Test
  void mesh_turnedPartThatTouchesItselfAlongALine_isRefused() {
    Solid box = Prism.of(Profile.rectangle(3, 3), 0, 5);
    Solid slivers = box.cut(box.turn(Axis.X, Math.toDegrees(1e-3)));
    ShapeException refusal = assertThrows(ShapeException.class, () -> Mesher.mesh(tilted(slivers)));
    assertTrue(refusal.getMessage().contains("touches itself only along a line here, from ("), refusal.getMessage());
  }

  @Test
  void mesh_turnedPartOfWhichNothingIsLeft_countsForNothing() {
    Solid box = Prism.of(Profile.rectangle(10, 10), 0, 5);
    Solid nothing = tilted(new Common(List.of(box, box.move(30, 0, 0))));
    for (Solid part : List.of(box.cut(nothing), Solid.union(nothing, box), box.turn(Axis.X, 90).join(nothing))) {
      assertEquals(500, ReferencePartTest.volume(Mesher.mesh(part)), 1e-9);
    }
    for (Solid part : List.of(nothing, nothing.cut(box), nothing.turn(Axis.Z, 5), new Common(List.of(box, nothing)))) {
      assertTrue(Mesher.meshIfAny(part).isEmpty());
      ShapeException refusal = assertThrows(ShapeException.class, () -> Mesher.mesh(part));
      assertTrue(refusal.getMessage().startsWith("nothing is left"), refusal.getMessage());
    }
  }
}
