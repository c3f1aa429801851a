package outrigger.generator.print;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import outrigger.generator.accessory.Words;
import outrigger.generator.param.Fault;
import outrigger.generator.param.InputException;
import outrigger.generator.param.NearMiss;
import outrigger.generator.param.Origin;
import outrigger.generator.param.Texts;
import outrigger.presets.LengthText;
import outrigger.shapes.print.Limit;

/** Reads limits of printing as users write them. */
public final class LimitTexts {
  private LimitTexts() {}

  /** Names of all limits, in their order. */
  public static List<String> keys() {
    return Arrays.stream(Limit.values()).map(Limit::key).toList();
  }

  /**
   * Reads one limit into a map.
   *
   * @param key its name, such as {@code minimum-wall}
   * @param text its value; a length may carry its unit
   * @param where where it was written
   * @throws InputException if there is no such limit, or the value is no number or out of range
   */
  public static void read(String key, String text, Origin where, Map<Limit, Double> into) {
    Optional<Limit> limit = Arrays.stream(Limit.values()).filter(one -> one.key().equals(key.strip())).findFirst();
    if (limit.isEmpty()) {
      throw new InputException(new Fault("", key, "there is no limit " + Texts.quoted(key) + " (" + where.words() + ")",
          key, "", NearMiss.advice(key, keys()), where));
    }
    into.put(limit.get(), value(limit.get(), text, where));
  }

  private static double value(Limit limit, String text, Origin where) {
    LengthText.Result read = limit.unit().equals("mm") ? LengthText.parse(text) : LengthText.parseNumber(text);
    if (!read.isNumber()) {
      throw new InputException(new Fault("", limit.key(), limit.key() + " is " + Texts.quoted(text) + " ("
          + where.words() + "): " + read.reason(), text, "", "Such as " + limit.key() + "="
          + Words.number(limit.standard()) + ".", where));
    }
    double value = read.value().orElseThrow();
    if (!(value >= limit.least() && value <= limit.most())) {
      String range = Words.number(limit.least()) + " to " + Words.number(limit.most()) + " " + limit.unit();
      throw new InputException(new Fault("", limit.key(), limit.key() + " is " + text + " (" + where.words()
          + "), outside " + range, text, range, "Give a value in that range.", where));
    }
    return value;
  }

  /**
   * Reads limits given as {@code name=value}.
   *
   * @throws InputException at the first that cannot be read
   */
  public static Map<Limit, Double> read(List<String> texts, Origin where) {
    Map<Limit, Double> limits = new EnumMap<>(Limit.class);
    for (String text : texts) {
      int sign = text.indexOf('=');
      if (sign < 1) {
        throw new InputException(Fault.of("", Texts.quoted(text) + " (" + where.words() + ") is no limit with a value",
            "Write name=value, such as minimum-wall=0.8. Known are: " + String.join(", ", keys()) + ".", where));
      }
      read(text.substring(0, sign), text.substring(sign + 1), where, limits);
    }
    return limits;
  }
}
