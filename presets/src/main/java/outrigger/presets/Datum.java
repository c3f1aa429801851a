package outrigger.presets;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Collectors;

/** One value of a table: a text, a number or a list of numbers. */
sealed interface Datum {
  /** A text. */
  record Text(String text) implements Datum {
    @Override
    public String print() {
      return text;
    }
  }

  /** A number in the unit of its column; lengths are mm by now. */
  record Amount(double number) implements Datum {
    @Override
    public String print() {
      return Datum.print(number);
    }
  }

  /** A list of numbers in the unit of its column. */
  record Amounts(List<Double> numbers) implements Datum {
    public Amounts {
      numbers = List.copyOf(numbers);
    }

    @Override
    public String print() {
      return numbers.stream().map(Datum::print).collect(Collectors.joining(", "));
    }
  }

  /** The value as a table shows it. */
  String print();

  /** The shortest plain decimal that reads back as the same number: 3, not 3.0; never with an exponent. */
  static String print(double number) {
    if (!Double.isFinite(number)) {
      return Double.toString(number);
    }
    String plain = BigDecimal.valueOf(number).toPlainString();
    return plain.endsWith(".0") ? plain.substring(0, plain.length() - 2) : plain;
  }
}
