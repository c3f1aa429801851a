package outrigger.generator.accessory.tray;

import java.util.ArrayList;
import java.util.List;
import outrigger.generator.accessory.Words;
import outrigger.generator.param.BadDimension;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Solid;

/** Cable notches and tie slots in the front and rear wall, shared out evenly across it. */
final class EndWalls {
  private static final double TIE_PLAY = 0.5;
  private static final double OVERSHOOT = 1;

  private final TrayFrame frame;
  private final TrayParams p;
  private final double wall;

  EndWalls(TrayFrame frame) {
    this.frame = frame;
    this.p = frame.params();
    this.wall = p.printer().minimumWall();
  }

  /**
   * What is cut from both end walls.
   *
   * @throws BadDimension where it does not fit the wall
   */
  List<Solid> cutters() {
    requireHeights();
    List<Boolean> order = order();
    double gap = gap(order);
    List<Solid> cutters = new ArrayList<>();
    double y = -straight() / 2;
    for (boolean notch : order) {
      double width = width(notch);
      y += gap;
      for (int end : new int[] {-1, 1}) {
        cutters.add(cutter(notch, width, y + width / 2).move(end * (frame.halfLength() - p.wall() / 2), 0, 0));
      }
      y += width;
    }
    return cutters;
  }

  private Solid cutter(boolean notch, double width, double y) {
    Profile through = Profile.rectangle(p.wall() + 2 * OVERSHOOT, width).move(0, y);
    return notch ? Prism.of(through, p.wallHeight() - p.notchDepth(), p.wallHeight() + OVERSHOOT)
        : Prism.of(through, tieBottom(), tieTop());
  }

  /** Half of the ties, the notches, the rest of the ties: true for a notch. */
  private List<Boolean> order() {
    List<Boolean> order = new ArrayList<>();
    for (int i = 0; i < p.ties() + p.notches(); i++) {
      int first = (p.ties() + 1) / 2;
      order.add(i >= first && i < first + p.notches());
    }
    return order;
  }

  private double width(boolean notch) {
    return notch ? p.notchWidth() : p.tieWidth() + TIE_PLAY;
  }

  /** Width of the end wall between its rounded corners. */
  private double straight() {
    return 2 * (frame.halfWidth() - Math.max(p.cornerRadius(), p.wall()));
  }

  private double gap(List<Boolean> order) {
    double taken = order.stream().mapToDouble(this::width).sum();
    double gap = (straight() - taken) / (order.size() + 1);
    if (!order.isEmpty() && !TrayFrame.keeps(gap, wall)) {
      String key = p.notches() > 0 ? "notch-width" : "ties";
      throw new BadDimension(key, many(p.notches(), "notch", "notches") + " and "
          + many(p.ties(), "tie slot", "tie slots") + " take " + Words.mm(taken) + " and "
          + Words.mm((order.size() + 1) * wall) + " of wall around them, but the end wall is straight for "
          + Words.mm(straight()), "Make notches narrower or fewer, or leave out tie slots.");
    }
    return gap;
  }

  private static String many(int count, String one, String more) {
    return count + " " + (count == 1 ? one : more);
  }

  private double tieBottom() {
    return p.floor() + wall;
  }

  private double tieTop() {
    return tieBottom() + p.tieThickness() + TIE_PLAY;
  }

  private void requireHeights() {
    double deepest = p.wallHeight() - p.floor();
    if (p.notches() > 0 && p.notchDepth() > deepest) {
      throw new BadDimension("notch-depth", "a notch " + Words.mm(p.notchDepth()) + " deep cuts into the floor: the wall "
          + "stands " + Words.mm(deepest) + " above it", "Lower notch-depth or raise wall-height.");
    }
    double left = p.wallHeight() - tieTop();
    if (p.ties() > 0 && !TrayFrame.keeps(left, wall)) {
      throw new BadDimension("ties", "a tie slot " + Words.mm(p.tieThickness() + TIE_PLAY) + " high, "
          + Words.mm(wall) + " above the floor, leaves " + Words.mm(Math.max(0, left)) + " of the wall above it, below "
          + Words.mm(wall), "Raise wall-height by " + Words.mm(wall - left) + ", or set ties to 0.");
    }
  }
}
