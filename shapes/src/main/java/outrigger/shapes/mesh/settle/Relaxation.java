package outrigger.shapes.mesh.settle;

import java.util.Arrays;
import outrigger.shapes.num.IntList;

/**
 * Places of vertices before they are rounded, and steps that set free ones apart from what is near.
 *
 * <p>All go at once, each by the mean of what its pairs ask for, which counts the more the nearer they are. None goes half
 * as far as what is nearest to it, so that nothing passes through anything on the way. Sums are whole numbers, which do not
 * depend on the order of pairs.
 */
final class Relaxation {
  /** How far pairs are set apart, grid steps: more than the root of three, so that it is soon reached. */
  static final double APART = 1.8;
  /** The farthest a corner goes in a step, grid steps. */
  static final double STRIDE = 0.4;
  /** The most of what is between a corner and what is nearest that it goes in a step; below a half nothing is passed. */
  private static final double PART = 0.4;
  /** How far beyond what would set a corner's pairs apart on average it goes, as in successive over-relaxation. */
  private static final double BEYOND = 1.5;
  /** Moves are whole multiples of one over this, grid steps. */
  private static final double FINE = 1 << 28;

  private final Places places;
  private final boolean[] free;
  private final IntList freed = new IntList();
  /** Of each free vertex how far it is from what is nearest, at most what lets it go as far as it may. */
  private final double[] room;
  private final long[] sum;
  private final long[] weight;

  Relaxation(Places places, int vertices) {
    this.places = places;
    free = new boolean[vertices];
    room = new double[vertices];
    sum = new long[3 * vertices];
    weight = new long[vertices];
  }

  /** Lets a vertex move from now on. */
  void free(int v) {
    places.know(v);
    if (!free[v]) {
      free[v] = true;
      freed.add(v);
    }
  }

  boolean isFree(int v) {
    return free[v];
  }

  /** The vertices that may move. */
  IntList freed() {
    return freed;
  }

  /** Moves all free vertices once. */
  void step(NearPairs pairs) {
    for (int i = 0; i < freed.size(); i++) {
      int v = freed.get(i);
      room[v] = STRIDE / PART;
      weight[v] = 0;
      Arrays.fill(sum, 3 * v, 3 * v + 3, 0);
    }
    pairs.measure();
    pairs.forEach(pair -> {
      for (int v : pair.corner) {
        room[v] = Math.min(room[v], pair.distance);
      }
    });
    pairs.forEach(this::push);
    for (int i = 0; i < freed.size(); i++) {
      move(freed.get(i));
    }
  }

  private void push(Approach pair) {
    if (pair.distance >= APART || pair.distance == 0) {
      return;
    }
    double shares = 0;
    for (int k = 0; k < 4; k++) {
      shares += free[pair.corner[k]] ? pair.share[k] * pair.share[k] : 0;
    }
    for (int k = 0; k < 4; k++) {
      int v = pair.corner[k];
      if (free[v] && pair.share[k] != 0) {
        double near = room[v] / pair.distance;
        double urgency = near * near;
        double by = urgency * pair.share[k] / shares * (APART - pair.distance) / pair.distance;
        for (int axis = 0; axis < 3; axis++) {
          sum[3 * v + axis] += Math.round(by * pair.way[axis] * FINE);
        }
        weight[v] += Math.round(urgency * FINE);
      }
    }
  }

  private void move(int v) {
    if (weight[v] == 0) {
      return;
    }
    double square = 0;
    for (int k = 3 * v; k < 3 * v + 3; k++) {
      square += (double) sum[k] * sum[k];
    }
    double far = BEYOND * Math.sqrt(square) / weight[v];
    double most = PART * room[v];
    double scale = BEYOND / weight[v] * (far > most ? most / far : 1);
    for (int k = 0; k < 3; k++) {
      places.move(v, k, scale * sum[3 * v + k]);
    }
  }
}
