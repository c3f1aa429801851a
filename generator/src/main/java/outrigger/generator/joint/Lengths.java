package outrigger.generator.joint;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import outrigger.generator.param.Texts;
import outrigger.presets.Screw;
import outrigger.presets.Shelf;
import outrigger.presets.StockLengths;

/**
 * Lengths a screw is made in; mm.
 *
 * @param usual first choice of the standard, rising; empty where no table lists the screw
 * @param odd second choice, rarely sold: what ISO 888 puts in brackets
 */
public record Lengths(List<Double> usual, List<Double> odd) {
  /** Below this, lengths are equal: sums of decimals differ in their last binary digits. */
  static final double EQUAL = 1e-6;
  /** ISO 888:2012, lengths in brackets up to 50 mm; 14 as in tables of ISO 1207, the others from memory. */
  private static final List<Double> BRACKETED = List.of(14.0, 18.0, 22.0, 28.0);

  public Lengths {
    usual = List.copyOf(usual);
    odd = List.copyOf(odd);
  }

  /** Lengths of a screw: those of its own row, or those of its size and head whatever its drive. */
  public static Lengths of(Screw screw, Shelf shelf) {
    List<StockLengths> rows = shelf.items(StockLengths.class);
    Optional<StockLengths> row = rows.stream().filter(r -> r.name().equals(screw.name())).findFirst()
        .or(() -> rows.stream().filter(r -> r.size().equals(screw.size()) && r.head().equals(screw.head()))
            .findFirst());
    return row.map(r -> of(r.lengths())).orElse(new Lengths(List.of(), List.of()));
  }

  private static Lengths of(List<Double> usual) {
    double least = usual.get(0);
    double most = usual.get(usual.size() - 1);
    return new Lengths(usual,
        BRACKETED.stream().filter(l -> l > least && l < most && !usual.contains(l)).toList());
  }

  /** All of them, rising. */
  public List<Double> all() {
    return Stream.concat(usual.stream(), odd.stream()).sorted().toList();
  }

  static String words(double mm) {
    return Texts.number(Math.rint(mm * 1000) / 1000);
  }
}
