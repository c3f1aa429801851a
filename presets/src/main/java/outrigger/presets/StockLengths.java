package outrigger.presets;

import java.util.List;

/** Screw lengths one can buy, by size and head, such as {@code M3-socket}; mm, each longer than the one before. */
public record StockLengths(String name, String size, String head, List<Double> lengths) implements Item {
  public StockLengths {
    lengths = List.copyOf(lengths);
    Checks.text("name", name);
    Checks.text("size", size);
    Checks.text("head", head);
    Checks.require(!lengths.isEmpty(), "lengths is an empty list. Give at least one length.");
    for (int i = 0; i < lengths.size(); i++) {
      Checks.positive("lengths " + (i + 1), lengths.get(i));
      if (i > 0 && lengths.get(i - 1) >= lengths.get(i)) {
        throw new IllegalArgumentException(
            "lengths are not in rising order at " + Datum.print(lengths.get(i)) + ". Sort them.");
      }
    }
  }
}
