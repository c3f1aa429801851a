package outrigger.generator.joint;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * What is on hand.
 *
 * @param counts by article, each 0 or more
 */
public record Stock(Map<String, Integer> counts) {
  /** An empty drawer. */
  public static final Stock NONE = new Stock(Map.of());

  public Stock {
    counts = Collections.unmodifiableMap(new TreeMap<>(counts));
    for (int count : counts.values()) {
      if (count < 0) {
        throw new IllegalArgumentException(counts.toString());
      }
    }
  }

  /** The counts of pieces, equal articles added up. */
  public static Stock of(List<Piece> pieces) {
    return new Stock(pieces.stream().collect(Collectors.toMap(Piece::article, Piece::count, Integer::sum)));
  }

  /** How many there are of an article. */
  public int count(String article) {
    return counts.getOrDefault(article, 0);
  }

  /** Lengths on hand of a screw, mm. */
  List<Double> lengths(String screw) {
    String begin = screw + " x ";
    return counts.entrySet().stream().filter(e -> e.getValue() > 0 && e.getKey().startsWith(begin))
        .map(e -> Double.valueOf(e.getKey().substring(begin.length()))).toList();
  }
}
