package outrigger.presets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tomlj.TomlArray;

/** Reads one value of a row by what its column wants; what does not fit becomes a fault. */
final class ValueReader {
  /** Names become parts of messages and of file names, so they hold nothing that either could trip over. */
  private static final String NAME_SIGNS = ".+_-";
  private static final int LONGEST_NAME = 60;

  private final Node row;
  private final Column column;
  private final String unit;

  /** @param unit unit of plain numbers: for a length mm, in or thou, otherwise that of the column */
  ValueReader(Node row, Column column, String unit) {
    this.row = row;
    this.column = column;
    this.unit = unit;
  }

  Optional<Datum> read() {
    Object value = row.value(column.name());
    return switch (column.kind()) {
      case NAME, TEXT, CHOICE -> text(value);
      case LENGTH, NUMBER -> amount(value, column.name()).map(Datum.Amount::new);
      case LENGTHS -> amounts(value);
    };
  }

  private Optional<Datum> text(Object value) {
    boolean fits = value instanceof String text && switch (column.kind()) {
      case NAME -> isName(text);
      case CHOICE -> column.choices().contains(text);
      default -> !text.isBlank();
    };
    if (fits) {
      return Optional.of(new Datum.Text((String) value));
    }
    String hint = value instanceof String text ? NearNames.hint(text, column.choices()) : "";
    return wrong(column.name(), Node.shown(value), hint);
  }

  private static boolean isName(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean plain = c >= 'A' && c <= 'Z' || c >= 'a' && c <= 'z' || c >= '0' && c <= '9';
      if (!plain && (i == 0 || NAME_SIGNS.indexOf(c) < 0)) {
        return false;
      }
    }
    return !text.isEmpty() && text.length() <= LONGEST_NAME;
  }

  private Optional<Datum> amounts(Object value) {
    if (!(value instanceof TomlArray list) || list.isEmpty()) {
      return wrong(column.name(), value instanceof TomlArray ? "an empty list" : Node.shown(value), "");
    }
    List<Double> numbers = new ArrayList<>();
    for (int i = 0; i < list.size(); i++) {
      amount(list.get(i), column.name() + " " + (i + 1)).ifPresent(numbers::add);
    }
    for (int i = 1; i < numbers.size(); i++) {
      if (numbers.get(i - 1) >= numbers.get(i)) {
        return wrong(column.name(), "not in rising order at " + Datum.print(numbers.get(i)), "");
      }
    }
    return numbers.size() == list.size() ? Optional.of(new Datum.Amounts(numbers)) : Optional.empty();
  }

  private Optional<Double> amount(Object value, String called) {
    OptionalDouble number = number(value, called);
    if (number.isEmpty()) {
      return Optional.empty();
    }
    double found = number.getAsDouble();
    if (found > 0 && found <= column.most() || column.zero() && found == 0) {
      // Adding 0 turns -0.0 into 0.
      return Optional.of(found + 0.0);
    }
    return wrong(called, Datum.print(found) + (column.unit().isEmpty() ? "" : " " + column.unit()), "");
  }

  /** The number written, lengths in mm; empty, with the fault told, where none is. */
  private OptionalDouble number(Object value, String called) {
    if (value instanceof Long || value instanceof Double) {
      double plain = ((Number) value).doubleValue();
      boolean scaled = column.isLength() && !unit.equals("mm") && Double.isFinite(plain);
      return scaled ? LengthText.parse(value.toString(), unit).value() : OptionalDouble.of(plain);
    }
    if (value instanceof String text && column.isLength()) {
      LengthText.Result length = LengthText.parse(text, unit);
      if (!length.isNumber()) {
        row.fault(column.name(), called + " is " + Quote.of(text) + ": " + length.reason() + ".");
      }
      return length.value();
    }
    wrong(called, Node.shown(value), "");
    return OptionalDouble.empty();
  }

  private <R> Optional<R> wrong(String called, String found, String hint) {
    row.fault(column.name(), called + " is " + found + ". " + hint + "Give " + column.wanted() + ".");
    return Optional.empty();
  }
}
