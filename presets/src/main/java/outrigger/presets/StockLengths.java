package outrigger.presets;

import java.util.List;

/** Screw lengths one can buy, by size and head, such as {@code M3-socket}; mm. */
public record StockLengths(String name, String size, String head, List<Double> lengths) implements Item {
  public StockLengths {
    lengths = List.copyOf(lengths);
  }
}
