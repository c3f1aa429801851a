package outrigger.generator.stack;

import java.util.List;
import java.util.Optional;
import outrigger.presets.Printer;

/**
 * What lies in the drawer to make up a thickness from, and what the shop has; nothing is printed.
 *
 * @param sheets sheet on hand
 * @param washers washers on hand
 * @param shims measured pieces on hand
 * @param shop every sheet there is to buy
 */
public record Drawer(List<Sheet> sheets, List<WasherSize> washers, List<Shim> shims, List<Sheet> shop) {
  /** An empty one, and no shop. */
  public static final Drawer EMPTY = new Drawer(List.of(), List.of(), List.of(), List.of());
  /** How near a thickness is near enough, mm, or a quarter of it where that is less. */
  private static final double NEAR = 0.05;
  private static final double SHARE = 4;
  private static final double LEAST = 0.05;
  private static final double MOST = 200;
  /** Most pieces it stacks. */
  public static final int PIECES = 4;
  private static final double MEASURED_OFF = 0.02;
  private static final double UNPRINTED = 1;

  public Drawer {
    sheets = List.copyOf(sheets);
    washers = List.copyOf(washers);
    shims = List.copyOf(shims);
    shop = List.copyOf(shop);
  }

  /** How far from a thickness is near enough, either way, mm. */
  public static double near(double mm) {
    return Math.min(NEAR, mm / SHARE);
  }

  /** Whether nothing is known to lie in it. */
  public boolean isEmpty() {
    return sheets.isEmpty() && washers.isEmpty() && shims.isEmpty();
  }

  /**
   * What to stack for a thickness of 0.05 to 200 mm, fewest pieces first, then least error; empty where there is nothing
   * to stack, or the thickness lies outside.
   */
  public Optional<Found> stack(double mm, Printer printer) {
    return find(mm, printer, sheets, washers, shims);
  }

  /** The same from what the shop has. */
  public Optional<Found> toBuy(double mm, Printer printer) {
    return find(mm, printer, shop, List.of(), List.of());
  }

  private static Optional<Found> find(double mm, Printer printer, List<Sheet> sheets, List<WasherSize> washers,
      List<Shim> shims) {
    if (!(mm >= LEAST && mm <= MOST) || Stacks.pieces(sheets, washers, shims, MEASURED_OFF).isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(Stacks.find(new StackParams(mm, near(mm), PIECES, 1, sheets, washers, shims,
        MEASURED_OFF, false, printer, UNPRINTED, 0)));
  }

  /**
   * Refuses what no search takes.
   *
   * @throws outrigger.generator.param.BadDimension if a thing is named twice or there are too many kinds
   */
  public void require() {
    Stacks.pieces(sheets, washers, shims, MEASURED_OFF);
  }
}
