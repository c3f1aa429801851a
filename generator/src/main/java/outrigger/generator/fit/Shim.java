package outrigger.generator.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import outrigger.generator.accessory.Words;
import outrigger.generator.stack.Drawer;
import outrigger.generator.stack.Found;
import outrigger.generator.stack.Stack;
import outrigger.presets.Printer;

/**
 * What goes between pad and floor of a station to bring it in, and what to make it from.
 *
 * @param mount name of the station
 * @param mm how thick it must be
 * @param onHand what the drawer does for it; empty where there is nothing in it, or the shim is thinner than any
 * @param shop what there is to buy
 */
public record Shim(String mount, double mm, Optional<Found> onHand, Optional<Found> shop) {
  /** Less is not worth a shim, mm. */
  private static final double SEEN = 0.01;
  /** The thinnest there is to be had, mm; common practice. */
  static final double WORTH = 0.05;

  /** Shims that bring every mount to the highest, or to its height where all are low. */
  static List<Shim> of(TruckFit fit) {
    double highest = highest(fit);
    Map<String, Double> wanted = new LinkedHashMap<>();
    fit.heights().forEach((site, height) -> {
      double mm = Math.rint((highest - height.error()) * 1000) / 1000;
      if (mm >= SEEN) {
        wanted.putIfAbsent(site.mount().record().name(), mm);
      }
    });
    Printer printer = fit.truck().printer();
    List<Shim> shims = new ArrayList<>();
    wanted.forEach((name, mm) -> {
      Optional<Found> onHand = fit.drawer().stack(mm, printer);
      boolean isFound = onHand.isPresent() && !onHand.get().answers().isEmpty();
      shims.add(new Shim(name, mm, onHand, isFound ? Optional.empty() : fit.drawer().toBuy(mm, printer)));
    });
    return shims;
  }

  /** How high the body lies all over once shims are in, mm. */
  static double highest(TruckFit fit) {
    return Math.max(0, fit.heights().values().stream().mapToDouble(Height::error).max().orElse(0));
  }

  /** The stack from what is on hand, where there is one near enough. */
  public Optional<Stack> stack() {
    return onHand.flatMap(found -> found.answers().stream().findFirst());
  }

  /** What to buy where the drawer does not do: what reaches it in the fewest pieces, else the nearest. */
  public Optional<Stack> toBuy() {
    return shop.flatMap(Shim::nearest);
  }

  /** In words. */
  public String words() {
    if (mm < WORTH) {
      return "mount " + mount + ": stands " + Words.mm(mm) + " lower than the highest, less than any shim; leave it.";
    }
    String from = from(mm, onHand, shop);
    return "mount " + mount + ": a shim of " + Words.mm(mm) + " between pad and floor brings it in"
        + (from.isEmpty() ? "" : ": " + from) + ".";
  }

  /** What a thickness is made from: of the drawer, or nearest and what to buy; empty where nothing is known. */
  static String from(double mm, Optional<Found> onHand, Optional<Found> shop) {
    if (onHand.isPresent() && !onHand.get().answers().isEmpty()) {
      return "on hand " + told(onHand.get().answers().get(0));
    }
    List<String> near = new ArrayList<>();
    onHand.ifPresent(found -> {
      found.below().ifPresent(stack -> near.add(told(stack)));
      found.above().ifPresent(stack -> near.add(told(stack)));
    });
    List<String> words = new ArrayList<>();
    if (onHand.isPresent()) {
      words.add("nothing on hand comes within " + Words.mm(Drawer.near(mm)) + " in up to " + Drawer.PIECES
          + " pieces, nearest " + (near.isEmpty() ? "none" : String.join(" or ", near)));
    }
    shop.flatMap(Shim::nearest).ifPresent(s -> words.add("to buy: " + told(s)));
    return String.join("; ", words);
  }

  private static Optional<Stack> nearest(Found found) {
    return found.answers().stream().findFirst().or(() -> Stream.of(found.below(), found.above()).flatMap(Optional::stream)
        .min(Comparator.comparingDouble(stack -> Math.abs(stack.error()))));
  }

  private static String told(Stack stack) {
    double error = Math.rint(stack.error() * 1000) / 1000;
    return stack.words() + " ("
        + (error == 0 ? "exact" : Words.mm(Math.abs(error)) + (error > 0 ? " over" : " under")) + ")";
  }
}
