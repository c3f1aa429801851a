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

  private final IntList items = new IntList();
  private final List<ExactPoint> points = new ArrayList<>();
  private int stretchAt;

  /** Forgets all, to be filled again. */
  void clear() {
    items.clear();
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
    items.add(group);
    items.add(from);
    items.add(to);
  }

  /** What comes up to {@link #endStretch} is along a stretch. */
  void beginStretch(Stretch stretch) {
    stretchAt = items.size();
    add(STRETCH, stretch.number, 0);
  }

  void endStretch() {
    items.set(stretchAt + 2, items.size());
  }

  /** Adds all edges to an outline, but for those along stretches that are done; the others then are. */
  void write(List<Stretch> stretches, CornerNumbers corners, Outline outline) {
    int[] numbers = new int[points.size()];
    for (int i = 0; i < items.size();) {
      if (items.get(i) == STRETCH) {
        Stretch stretch = stretches.get(items.get(i + 1));
        i = stretch.done ? items.get(i + 2) : i + 3;
        stretch.done = true;
      } else {
        int from = vertex(items.get(i + 1), numbers, corners, outline);
        outline.add(items.get(i), from, vertex(items.get(i + 2), numbers, corners, outline));
        i += 3;
      }
    }
  }

  /** Number of an end in the outline; that of a point, and one, is kept. */
  private int vertex(int end, int[] numbers, CornerNumbers corners, Outline outline) {
    if (end >= 0) {
      return corners.of(end);
    }
    int point = -1 - end;
    if (numbers[point] == 0) {
      numbers[point] = outline.vertex(points.get(point)) + 1;
    }
    return numbers[point] - 1;
  }
}
