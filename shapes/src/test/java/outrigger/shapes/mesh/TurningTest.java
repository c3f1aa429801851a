package outrigger.shapes.mesh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import outrigger.shapes.check.Proof;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.Grid;
import outrigger.shapes.num.ShapeException;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Common;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Solid;
import outrigger.shapes.solid.Union;

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

  /** Faces that are flush as drawn touch all over once the grid has bent them, each by itself. */
  @Test
  void mesh_flushCutsTurnedAlike_areThoseOfTheWholeTurned() {
    Solid plate = Prism.of(Profile.rectangle(20, 12), 0, 4);
    Solid bore = Prism.of(Profile.hole(6), 3, 4);
    Solid shaft = Prism.of(Profile.hole(3), -1, 3).turn(Axis.Z, 45);
    assertTurnedAlike(plate, bore, Axis.X, 68);
    for (int degrees : new int[] {5, 12, 22, 58}) {
      assertTurnedAlike(plate, shaft.join(bore), Axis.Y, degrees);
    }
  }

  private static void assertTurnedAlike(Solid plate, Solid cutter, Axis axis, double degrees) {
    UnaryOperator<Solid> turn = s -> s.turn(axis, degrees).turn(Axis.Z, 20);
    List<Solid> cutters = (cutter instanceof Union union ? union.solids() : List.of(cutter)).stream().map(turn).toList();
    Mesh mesh = Mesher.mesh(turn.apply(plate).cut(cutters));
    assertTrue(Proof.judge(mesh).proven().isPresent(), axis + " " + degrees);
    assertEquals(ReferencePartTest.volume(Mesher.mesh(turn.apply(plate.cut(cutter)))), ReferencePartTest.volume(mesh), 0.05);
  }

  /** Straight, nothing is left of one less the other; as bent by the grid, skins are. */
  @Test
  void mesh_turnedPartLessItsOwnHalves_isNothing() {
    Solid box = Prism.of(Profile.rectangle(3, 3), 0, 5);
    for (double degrees : new double[] {8, 11, 20, 40, 88}) {
      List<Solid> halves = List.of(Prism.of(Profile.rectangle(3, 3), 0, 2), Prism.of(Profile.rectangle(3, 3), 2, 5));
      UnaryOperator<Solid> turn = s -> s.turn(Axis.X, degrees).turn(Axis.Z, 20);
      Solid less = turn.apply(box).cut(halves.stream().map(turn).toList());
      assertTrue(Mesher.meshIfAny(less).isEmpty(), degrees + " degrees");
    }
  }

  @Test
  void mesh_blocksTurnedAlikeThatTouchAlongAnEdge_areRefused() {
    Solid box = Prism.of(Profile.rectangle(3, 3), 0, 5);
    for (double degrees : new double[] {33, 53}) {
      UnaryOperator<Solid> turn = s -> s.turn(Axis.X, degrees).turn(Axis.Y, 7);
      ShapeException refusal = assertThrows(ShapeException.class,
          () -> Mesher.mesh(turn.apply(box).join(turn.apply(box.move(3, 3, 0)))));
      assertTrue(refusal.getMessage().startsWith("parts touch only"), refusal.getMessage());
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
