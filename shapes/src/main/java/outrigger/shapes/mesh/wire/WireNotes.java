package outrigger.shapes.mesh.wire;

import java.util.ArrayList;
import java.util.List;
import outrigger.shapes.exact.ExactPoint;
import outrigger.shapes.mesh.meet.Stretch;
import outrigger.shapes.mesh.outline.CornerNumbers;
import outrigger.shapes.mesh.outline.Outline;
import outrigger.shapes.num.IntList;

/**
 * What one wire walk found, in order: directed edges of the outline, those along a stretch apart. A walk does not know what
 * other walks follow at the same time: of several that followed a stretch, the one that is written down first counts. All
 * stretches that hang together are followed at once, so it is first with all of them.
 */
final class WireNotes {
  /** Stands for a group: a stretch begins, its number and where its edges end follow. */
  private static final int STRETCH = -1;
  /** Stands for an end: a stretch begins, where it stands among the edges and where its ends end follow. */
  private static final int ENDS = Integer.MIN_VALUE;

  /** Of each corner whether it was noted before; corners of one operand are noted by one walker at a time. */
  private final boolean[] noted;
  private final IntList items = new IntList();
  /** The ends of edges in order; corners that were noted before are left out. */
  private final IntList ends = new IntList();
  private final List<ExactPoint> points = new ArrayList<>();
  /** Of each point its number in the outline, and one; 0 where it has none. */
  private int[] numbers = {};
  private int stretchAt = -1;
  private int endsAt;

  WireNotes(boolean[] noted) {
    this.noted = noted;
  }

  /** Forgets all, to be filled again. */
  void clear() {
    items.clear();
    ends.clear();
    points.clear();
  }

  /** What stands for a corner of an operand as an end of edges. */
  static int end(int corner) {
    return corner;
  }

  /** What stands for a point as an end of edges. */
  int end(ExactPoint point) {
    points.add(point);
    return -points.size();
  }

  /** Adds an edge between two ends. */
  void add(int group, int from, int to) {
    put(items, group, from, to);
    addEnd(from);
    addEnd(to);
  }

  private static void put(IntList list, int one, int two, int three) {
    list.add(one);
    list.add(two);
    list.add(three);
  }

  private void addEnd(int end) {
    if (end < 0 || stretchAt >= 0) {
      ends.add(end);
    } else if (!noted[end]) {
      noted[end] = true;
      ends.add(end);
    }
  }

  /** What comes up to {@link #endStretch} is along a stretch. */
  void beginStretch(Stretch stretch) {
    stretchAt = items.size();
    endsAt = ends.size();
    put(items, STRETCH, stretch.number, 0);
    put(ends, ENDS, stretchAt, 0);
  }

  void endStretch() {
    items.set(stretchAt + 2, items.size());
    ends.set(endsAt + 2, ends.size());
    stretchAt = -1;
  }

  /** How many edges there are, about. */
  int size() {
    return items.size() / 3;
  }

  /** Gives ends their numbers in an outline, but for those along stretches that are done; the others then are. */
  void number(List<Stretch> stretches, CornerNumbers corners, Outline outline) {
    numbers = new int[points.size()];
    for (int i = 0; i < ends.size();) {
      int end = ends.get(i++);
      if (end == ENDS) {
        int at = ends.get(i);
        Stretch stretch = stretches.get(items.get(at + 1));
        if (stretch.done) {
          i = ends.get(i + 1);
        } else {
          // its edges follow at once
          items.set(at + 2, at + 3);
          i += 2;
        }
        stretch.done = true;
      } else if (end >= 0) {
        corners.of(end);
      } else if (numbers[-1 - end] == 0) {
        numbers[-1 - end] = outline.vertex(points.get(-1 - end)) + 1;
      }
    }
    points.clear();
  }

  /** Adds the edges whose ends were given numbers to an outline: those of groups from one up to before another. */
  void write(CornerNumbers corners, Outline outline, int fromGroup, int toGroup) {
    for (int i = 0; i < items.size();) {
      int group = items.get(i);
      if (group == STRETCH) {
        i = items.get(i + 2);
      } else {
        if (group >= fromGroup && group < toGroup) {
          outline.add(group, vertex(items.get(i + 1), corners), vertex(items.get(i + 2), corners));
        }
        i += 3;
      }
    }
  }

  private int vertex(int end, CornerNumbers corners) {
    return end >= 0 ? corners.of(end) : numbers[-1 - end] - 1;
  }
}
