package outrigger.generator.plan;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.tomlj.TomlArray;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;
import outrigger.generator.param.Origin;

/** Values of a TOML file as text with their places. */
final class TomlText {
  private TomlText() {}

  /** A string, number or boolean as a user would type it as an option; empty for anything else. */
  static Optional<String> text(Object value) {
    if (value instanceof String || value instanceof Boolean || value instanceof Long) {
      return Optional.of(value.toString());
    }
    if (value instanceof Double d) {
      return Optional.of(number(d));
    }
    return Optional.empty();
  }

  private static String number(double value) {
    if (!Double.isFinite(value)) {
      return Double.isNaN(value) ? "nan" : value > 0 ? "inf" : "-inf";
    }
    BigDecimal exact = new BigDecimal(Double.toString(value)).stripTrailingZeros();
    boolean plain = value == 0 || Math.abs(value) < 1e9 && Math.abs(value) > 1e-6;
    return value == 0 ? "0" : plain ? exact.toPlainString() : exact.toString();
  }

  /** What a value is, for messages. */
  static String noun(Object value) {
    if (value instanceof TomlTable) {
      return "a table";
    }
    if (value instanceof TomlArray) {
      return "a list";
    }
    return value instanceof String ? "a text" : value instanceof Boolean ? "true or false"
        : value instanceof Number ? "a number" : "a date or time";
  }

  static Origin place(String file, TomlTable table, String key) {
    return place(file, table.inputPositionOf(List.of(key)));
  }

  static Origin place(String file, TomlArray array, int index) {
    return place(file, array.inputPositionOf(index));
  }

  static Origin place(String file, TomlPosition position) {
    return position == null ? Origin.file(file) : Origin.plan(file, position.line(), position.column());
  }
}
