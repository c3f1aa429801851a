package outrigger.generator.param;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import outrigger.presets.Shelf;

/**
 * What was given for the parameters of a record: the default where nothing was, a plan's value before the default,
 * an option before a plan's value. Immutable.
 *
 * @param <R> the record
 */
public final class ParamValues<R extends Record> {
  private final ParamSpec<R> spec;
  private final Map<String, Given> given;

  private ParamValues(ParamSpec<R> spec, Map<String, Given> given) {
    this.spec = spec;
    this.given = given;
  }

  /** Every parameter at its default. */
  public static <R extends Record> ParamValues<R> of(ParamSpec<R> spec) {
    return new ParamValues<>(spec, Map.of());
  }

  /**
   * The record with some parameters given, the others at their defaults: the short way for code and tests.
   *
   * @param keysAndTexts key, text, key, text, such as {@code "post-height", "0.25in"}
   * @throws InputException naming every fault
   */
  public static <R extends Record> R record(Class<R> type, Shelf shelf, String... keysAndTexts) {
    ParamValues<R> values = of(ParamSpec.of(type));
    for (int i = 0; i < keysAndTexts.length; i += 2) {
      values = values.with(keysAndTexts[i], Given.of(keysAndTexts[i + 1], Origin.option("--" + keysAndTexts[i])));
    }
    return values.resolve("", shelf).record();
  }

  /**
   * The same with one more value given; the stronger origin stays, the later among equals.
   *
   * @throws InputException if the key is not declared
   */
  public ParamValues<R> with(String key, Given value) {
    if (spec.find(key).isEmpty()) {
      throw new InputException(spec.unknown("", key, value.origin()));
    }
    Given before = given.get(key);
    if (before != null && before.origin().kind().compareTo(value.origin().kind()) > 0) {
      return this;
    }
    Map<String, Given> more = new LinkedHashMap<>(given);
    more.put(key, value);
    return new ParamValues<>(spec, more);
  }

  /** What is given for a key, the default included. */
  public Given given(String key) {
    Given value = given.get(key);
    if (value != null) {
      return value;
    }
    return Given.of(spec.find(key).map(Parameter::def).orElse(""), Origin.DEFAULT);
  }

  /** The declarations. */
  public ParamSpec<R> spec() {
    return spec;
  }

  /** The record, and each value as it was used. */
  public record Resolved<R>(R record, List<Value> values) {
    public Resolved {
      values = List.copyOf(values);
    }
  }

  /**
   * Reads every value and builds the record.
   *
   * @param subject what messages begin with
   * @throws InputException naming every text that cannot be read and every value out of range; or what the record
   *     itself refuses
   */
  public Resolved<R> resolve(String subject, Shelf shelf) {
    List<Object> arguments = new ArrayList<>();
    List<Value> values = new ArrayList<>();
    List<Fault> faults = new ArrayList<>();
    for (Parameter parameter : spec.parameters()) {
      Given value = given(parameter.key());
      try {
        Object argument = read(parameter, value, shelf);
        arguments.add(argument);
        values.add(new Value(parameter, print(parameter, argument, value), value.origin()));
      } catch (BadText e) {
        each(parameter, value, shelf, e).forEach(bad -> faults.add(bad.fault(subject, parameter.key(), value)));
      }
    }
    if (!faults.isEmpty()) {
      throw new InputException(faults);
    }
    return new Resolved<>(construct(subject, arguments), values);
  }

  private static Object read(Parameter parameter, Given value, Shelf shelf) throws BadText {
    Form form = parameter.form();
    if (!value.isList()) {
      return form.parse(value.text(), shelf);
    }
    if (form instanceof ListForm list) {
      return list.parse(value.texts(), shelf);
    }
    throw new BadText(value.text(), "a list where one value is expected", "one value", "Give one value.");
  }

  /** What is wrong with every value of a list, else with the one value. */
  private static List<BadText> each(Parameter parameter, Given value, Shelf shelf, BadText first) {
    if (!(parameter.form() instanceof ListForm list)) {
      return List.of(first);
    }
    List<BadText> all = new ArrayList<>();
    for (String text : value.isList() ? value.texts() : ListForm.split(value.text())) {
      try {
        list.element().parse(text, shelf);
      } catch (BadText e) {
        all.add(e);
      }
    }
    return all;
  }

  private static String print(Parameter parameter, Object argument, Given value) {
    if (value.isList() && parameter.form() instanceof ListForm list) {
      return list.print((List<?>) argument, value.texts());
    }
    return parameter.form().print(argument, value.text());
  }

  private R construct(String subject, List<Object> arguments) {
    try {
      return spec.make(arguments);
    } catch (RuntimeException e) {
      throw new InputException(Refused.by(e).fault(subject, this));
    }
  }
}
