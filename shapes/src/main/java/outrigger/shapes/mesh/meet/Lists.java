package outrigger.shapes.mesh.meet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Lists by number, as of what lies on each plane or face; null for a number that has none, as most have. */
final class Lists {
  /** Room of a list at first: most hold no more. */
  private static final int FEW = 2;

  private Lists() {}

  /** So many lists, all null. */
  static <T> List<List<T>> none(int count) {
    return new ArrayList<>(Collections.nCopies(count, null));
  }

  /** Adds to the list of a number. Several threads may, each for numbers of its own. */
  static <T> void add(T item, int number, List<List<T>> lists) {
    List<T> list = lists.get(number);
    if (list == null) {
      list = new ArrayList<>(FEW);
      lists.set(number, list);
    }
    list.add(item);
  }

  /** The list of a number, empty where it has none. */
  static <T> List<T> at(int number, List<List<T>> lists) {
    List<T> list = lists.get(number);
    return list == null ? List.of() : list;
  }
}
