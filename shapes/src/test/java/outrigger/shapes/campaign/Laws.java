package outrigger.shapes.campaign;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import outrigger.shapes.campaign.Expression.Op;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.Grid;
import outrigger.shapes.num.Placement;

/**
 * Evaluates one expression and others that must agree with it.
 *
 * <p>vol(A) + vol(B) = vol(A or B) + vol(A and B); A less B and the common part are A: within what rounding to the grid
 * can do, half a step on either side over the surfaces. Order, grouping, turning by right angles and mirroring change no
 * bit of the volume. Moved operands give the moved mesh. The whole holds the same points as its operands and the
 * expression do.
 */
final class Laws {
  private final RandomExpression expression;
  private final Random random;
  private final Random near;
  private final List<String> broken = new ArrayList<>();
  private final List<Outcome> refusals = new ArrayList<>();
  private final List<Expression> refused = new ArrayList<>();
  private int evaluated;

  Laws(RandomExpression expression, long seed) {
    this.expression = expression;
    random = new Random(~seed);
    near = new Random(seed);
  }

  /** Holds all laws and returns what came of the whole. */
  Outcome hold() {
    Outcome union = evaluate(expression.with(Op.UNION));
    Outcome common = evaluate(expression.with(Op.COMMON));
    Outcome less = evaluate(expression.with(Op.CUT));
    volumes(union, common, less, evaluate(expression.a()), evaluate(expression.b()));
    Outcome whole = expression.op() == Op.UNION ? union : expression.op() == Op.COMMON ? common : less;
    if (!whole.isRefused()) {
      points(whole);
      arranged(whole);
      placed(whole);
      moved(whole);
    }
    return whole;
  }

  List<String> broken() {
    return broken;
  }

  /** Refusals met on the way, and the expressions that were refused. */
  List<Outcome> refusals() {
    return refusals;
  }

  List<Expression> refused() {
    return refused;
  }

  int evaluated() {
    return evaluated;
  }

  private Outcome evaluate(Expression e) {
    evaluated++;
    Outcome outcome = Outcome.of(e.solid());
    if (outcome.isRefused()) {
      refusals.add(outcome);
      refused.add(e);
    }
    return outcome;
  }

  private void volumes(Outcome union, Outcome common, Outcome less, Outcome a, Outcome b) {
    // a union that is left out whole, as thinner than the grid, has surfaces all the same: at most those of both
    double whole = union.area() > 0 ? union.area() : a.area() + b.area();
    double bound = (whole + common.area() + less.area() + a.area() + b.area()) * Grid.STEP / 2;
    if (!union.isRefused() && !common.isRefused() && !a.isRefused() && !b.isRefused()) {
      near("vol(A) + vol(B)", a.volume() + b.volume(), union.volume() + common.volume(), bound);
    }
    if (!less.isRefused() && !common.isRefused() && !a.isRefused()) {
      near("vol(A - B) + vol(A and B)", a.volume(), less.volume() + common.volume(), bound);
    }
  }

  private void near(String law, double expected, double actual, double bound) {
    if (!(Math.abs(expected - actual) <= bound + 1e-12 * expected)) {
      broken.add(law + ": " + expected + " against " + actual + ", bound " + bound);
    }
  }

  private void points(Outcome whole) {
    String differing = whole.mesh().map(mesh -> Points.differing(expression.whole(), mesh, near)).orElse("");
    if (!differing.isEmpty()) {
      broken.add("points: the result differs from its operands at " + differing + " grid steps");
    }
  }

  private void arranged(Outcome whole) {
    same("order and grouping", whole, evaluate(expression.whole().rearranged(random)));
  }

  private void placed(Outcome whole) {
    Placement turn = Placement.turn(Axis.values()[random.nextInt(3)], 90 * random.nextInt(4))
        .then(Placement.turn(Axis.values()[random.nextInt(3)], 90 * random.nextInt(4)));
    Placement p = random.nextBoolean() ? turn.then(Placement.mirror(Axis.values()[random.nextInt(3)])) : turn;
    same("quarter turns and mirrors " + p, whole, evaluate(expression.whole().map(s -> s.place(p))));
  }

  private void same(String law, Outcome expected, Outcome actual) {
    if (actual.isRefused() || expected.volume() != actual.volume()) {
      broken.add(law + ": volume " + expected.volume() + " against "
          + (actual.isRefused() ? actual.words() : actual.volume()));
    }
  }

  private void moved(Outcome whole) {
    int[] by = {random.nextInt(1 << 17) - (1 << 16), random.nextInt(1 << 17) - (1 << 16),
        random.nextInt(1 << 17) - (1 << 16)};
    Placement p = Placement.move(Grid.toMm(by[0]), Grid.toMm(by[1]), Grid.toMm(by[2]));
    Outcome moved = evaluate(expression.whole().map(s -> s.place(p)));
    if (moved.isRefused() || !isMoved(whole.mesh(), moved.mesh(), by)) {
      broken.add("moved by whole grid steps: " + (moved.isRefused() ? moved.words() : "another mesh"));
    }
  }

  private static boolean isMoved(Optional<Mesh> from, Optional<Mesh> to, int[] by) {
    return from.map(m -> FacetSet.of(m, by)).equals(to.map(m -> FacetSet.of(m, new int[3])));
  }
}
