package outrigger.generator.layout;

import java.util.ArrayList;
import java.util.List;

/** Items in their places, with the free room round them. */
final class LaidItems {
  private LaidItems() {}

  /** @param places one for each item, in their order */
  static List<Laid> of(List<Item> items, Room room, List<Walls.Place> places) {
    List<Laid> laid = new ArrayList<>();
    for (int i = 0; i < items.size(); i++) {
      laid.add(at(items.get(i), room, places.get(i)));
    }
    return laid.stream().map(one -> one.with(free(one, laid))).toList();
  }

  /** The item within what it takes of the floor: off its middle where cables take more on one side. */
  private static Laid at(Item item, Room room, Walls.Place place) {
    CableSide cables = place.crosswise() ? item.cables().turned() : item.cables();
    Laid one = new Laid(item, room, 0, 0, place.crosswise(), cables, new Laid.Free(0, 0, 0, 0, 0));
    double x = place.rear() + one.asks(CableSide.REAR) + one.length() / 2;
    double y = place.right() + one.asks(CableSide.RIGHT) + one.width() / 2;
    return new Laid(item, room, x, y, place.crosswise(), cables, one.free());
  }

  private static Laid.Free free(Laid one, List<Laid> all) {
    double rearEnd = one.x() - one.length() / 2;
    double frontEnd = one.x() + one.length() / 2;
    double rightSide = one.y() - one.width() / 2;
    double leftSide = one.y() + one.width() / 2;
    double front = one.room().front() - frontEnd;
    double rear = rearEnd - one.room().rear();
    double left = one.room().left(rearEnd, frontEnd) - leftSide;
    double right = rightSide - one.room().right(rearEnd, frontEnd);
    for (Laid other : all) {
      if (other == one) {
        continue;
      }
      double along = Math.abs(other.x() - one.x()) - (other.length() + one.length()) / 2;
      double across = Math.abs(other.y() - one.y()) - (other.width() + one.width()) / 2;
      if (across < 0 && other.x() > one.x()) {
        front = Math.min(front, along);
      } else if (across < 0) {
        rear = Math.min(rear, along);
      }
      if (along < 0 && other.y() > one.y()) {
        left = Math.min(left, across);
      } else if (along < 0) {
        right = Math.min(right, across);
      }
    }
    return new Laid.Free(front, rear, left, right, one.room().height() - one.item().height());
  }
}
