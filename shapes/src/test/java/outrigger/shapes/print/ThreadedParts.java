package outrigger.shapes.print;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import outrigger.shapes.num.Grid;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Faceted;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Solid;

/**
 * Rods, nuts and bolts with a thread along Z whose flanks make 60 degrees, cut off by the planes of their ends; mm.
 *
 * @param diameter over the crest
 * @param crest its flat, along the axis; 0 for a sharp one
 * @param root the flat between two crests; 0 for a sharp groove
 * @param depth from crest to root
 * @param sides facets a turn
 * @param begin part of a turn by which the thread is turned
 */
public record ThreadedParts(double diameter, double crest, double root, double depth, int sides, double begin) {
  /** Turns that the rod is longer at either end before it is cut off. */
  private static final double BEYOND = 1.5;

  private double pitch() {
    return crest + root + 2 * depth * Math.tan(Math.PI / 6);
  }

  /** A threaded rod from z = 0 up. */
  public Solid rod(double turns) {
    return Solid.common(helix(turns), Prism.of(Profile.rectangle(2 * diameter, 2 * diameter), 0, turns * pitch()));
  }

  /** The same on a round head. */
  public Solid bolt(double turns) {
    return rod(turns).join(Prism.of(Profile.post(1.6 * diameter), -3, 0));
  }

  /** A round nut from z = 0 up. */
  public Solid nut(double turns) {
    return Prism.of(Profile.post(1.6 * diameter), 0, turns * pitch()).cut(helix(turns));
  }

  /** What turns once a pitch: root, flank, crest, flank, each between two lines that wind round the axis. */
  private Solid helix(double turns) {
    double flank = (pitch() - crest - root) / 2;
    List<double[]> lines = new ArrayList<>();
    lines.add(new double[] {0, diameter / 2 - depth});
    if (root > 0) {
      lines.add(new double[] {root, diameter / 2 - depth});
    }
    lines.add(new double[] {root + flank, diameter / 2});
    if (crest > 0) {
      lines.add(new double[] {root + flank + crest, diameter / 2});
    }
    return new Lines(lines, (int) Math.ceil((turns + 2 * BEYOND) * sides)).solid();
  }

  /** Lines by their height and radius where they begin; the first goes on for a turn beyond the last of the others. */
  private final class Lines {
    private final List<double[]> lines;
    private final int steps;
    private final int[] xyz;

    private Lines(List<double[]> lines, int steps) {
      this.lines = lines;
      this.steps = steps;
      xyz = new int[3 * (lines.size() * (steps + 1) + sides + 2)];
    }

    private Solid solid() {
      for (int line = 0; line < lines.size(); line++) {
        for (int step = 0; step <= (line == 0 ? steps + sides : steps); step++) {
          double angle = 2 * Math.PI * (step % sides) / sides;
          double radius = lines.get(line)[1];
          put(vertex(step, line), radius * StrictMath.cos(angle), radius * StrictMath.sin(angle), height(step, line));
        }
      }
      put(bottom(), 0, 0, height(sides / 2, 0));
      put(bottom() + 1, 0, 0, height(steps + sides / 2, 0));
      int[] facets = IntStream.concat(IntStream.range(0, steps).flatMap(this::along), IntStream.concat(
          IntStream.range(0, sides).flatMap(step -> ends(vertex(step, 0), vertex(step + 1, 0), vertex(steps + step, 0),
              vertex(steps + step + 1, 0))),
          IntStream.range(0, lines.size()).flatMap(line -> ends(vertex(0, line + 1), vertex(0, line),
              vertex(steps, line + 1), vertex(steps, line))))).toArray();
      return Faceted.of(xyz, facets);
    }

    private double height(int step, int line) {
      return lines.get(line)[0] + pitch() * ((double) step / sides - BEYOND - begin);
    }

    private IntStream along(int step) {
      return IntStream.range(0, lines.size()).flatMap(line -> IntStream.of(vertex(step, line), vertex(step + 1, line),
          vertex(step + 1, line + 1), vertex(step, line), vertex(step + 1, line + 1), vertex(step, line + 1)));
    }

    private IntStream ends(int from, int to, int topFrom, int topTo) {
      return IntStream.of(bottom(), to, from, bottom() + 1, topFrom, topTo);
    }

    private int bottom() {
      return xyz.length / 3 - 2;
    }

    private int vertex(int step, int line) {
      if (line == lines.size()) {
        return step + sides;
      }
      return line == 0 ? step : steps + sides + 1 + (line - 1) * (steps + 1) + step;
    }

    private void put(int vertex, double x, double y, double z) {
      xyz[3 * vertex] = (int) Math.rint(x * Grid.PER_MM);
      xyz[3 * vertex + 1] = (int) Math.rint(y * Grid.PER_MM);
      xyz[3 * vertex + 2] = (int) Math.rint(z * Grid.PER_MM);
    }
  }
}
