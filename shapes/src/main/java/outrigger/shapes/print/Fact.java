package outrigger.shapes.print;

import java.util.List;

/**
 * A number worth telling though nothing is wrong, such as the thinnest wall.
 *
 * @param name lower case with dashes, such as {@code thinnest-wall}
 * @param value in the unit
 * @param low the least it may be if it is an estimate, else the value
 * @param high the most it may be if it is an estimate, else the value
 * @param unit such as {@code mm}
 * @param words one line for the maker, with the number in it, without full stop
 * @param assumes what an estimate rests on, a sentence each; nothing for what was measured
 */
public record Fact(String name, double value, double low, double high, String unit, String words, List<String> assumes) {
  public Fact {
    assumes = List.copyOf(assumes);
    if (!(low <= value && value <= high)) {
      throw new IllegalArgumentException(name + " is " + value + ", not between " + low + " and " + high);
    }
  }

  /** Something measured. */
  public Fact(String name, double value, String unit, String words) {
    this(name, value, value, value, unit, words, List.of());
  }

  /** Whether it is an estimate with a band. */
  public boolean isEstimate() {
    return low < high;
  }
}
