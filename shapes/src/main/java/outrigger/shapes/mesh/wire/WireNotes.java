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
 *
 * <p>Notes are plain numbers, three an entry, for there are as many as edges. An end of an edge is the number of a corner,
 * or -1 - i for the i-th point noted.
 */
final class WireNotes {
  /** In the place of a group: the edges of a stretch begin. Its number follows, and where those after them begin. */
  private static final int STRETCH = -1;
  /** In the place of an end: the ends of a stretch begin. Where its edges do follows, and where the ends after them do. */
  private static final int ENDS = Integer.MIN_VALUE;

  /** Of each corner whether it was noted before; corners of one operand are noted by one walker at a time. */
  private final boolean[] noted;
  /** Group, start and end of each edge, and an entry before those of a stretch. */
  private final IntList edges = new IntList();
  /** The ends of edges in order, and an entry before those of a stretch; corners that were noted before are left out. */
  private final IntList ends = new IntList();
  private final List<ExactPoint> points = new ArrayList<>();
  /** Of each point its number in the outline, and one; 0 where it has none. */
  private int[] numbers = {};
  /** Where the entries of the stretch are that is being noted; -1 where none is. */
  private int stretchAt = -1;
  private int endsAt;

  WireNotes(boolean[] noted) {
    this.noted = noted;
  }

  /** Forgets all, to be filled again. */
  void clear() {
    edges.clear();
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
    put(edges, group, from, to);
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

  /** Edges that come from now on, up to {@link #endStretch}, are along a stretch. */
  void beginStretch(Stretch stretch) {
    stretchAt = edges.size();
    endsAt = ends.size();
    put(edges, STRETCH, stretch.number, 0);
    put(ends, ENDS, stretchAt, 0);
  }

  void endStretch() {
    edges.set(stretchAt + 2, edges.size());
    ends.set(endsAt + 2, ends.size());
    stretchAt = -1;
  }

  /** How many edges there are, about. */
  int size() {
    return edges.size() / 3;
  }

  /** Gives ends their numbers in an outline, but for those along stretches that are done already; all others then are. */
  void number(List<Stretch> stretches, CornerNumbers corners, Outline outline) {
    numbers = new int[points.size()];
    for (int i = 0; i < ends.size();) {
      int end = ends.get(i++);
      if (end == ENDS) {
        int at = ends.get(i);
        Stretch stretch = stretches.get(edges.get(at + 1));
        if (stretch.done) {
          i = ends.get(i + 1);
        } else {
          // its edges are to be written: they follow its entry
          edges.set(at + 2, at + 3);
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

  /** Adds the edges whose ends were given numbers to an outline, of groups from one up to before another. */
  void write(CornerNumbers corners, Outline outline, int fromGroup, int toGroup) {
    for (int i = 0; i < edges.size();) {
      int group = edges.get(i);
      if (group == STRETCH) {
        i = edges.get(i + 2);
      } else {
        if (group >= fromGroup && group < toGroup) {
          outline.add(group, vertex(edges.get(i + 1), corners), vertex(edges.get(i + 2), corners));
        }
        i += 3;
      }
    }
  }

  private int vertex(int end, CornerNumbers corners) {
    return end >= 0 ? corners.of(end) : numbers[-1 - end] - 1;
  }
}
