package outrigger.generator.param;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import outrigger.presets.Item;

/**
 * The parameters a record declares, in the order of its components. Options, plan keys, pages and checks all read
 * this and hold no copy.
 *
 * @param <R> the record
 */
public final class ParamSpec<R extends Record> {
  private final Class<R> type;
  private final List<Parameter> parameters;

  private ParamSpec(Class<R> type, List<Parameter> parameters) {
    this.type = type;
    this.parameters = List.copyOf(parameters);
  }

  /**
   * Reads the declarations of a record.
   *
   * @throws IllegalArgumentException if a component has no {@code @Param}, a type no form fits, or help text that a
   *     command line parser would interpret
   */
  public static <R extends Record> ParamSpec<R> of(Class<R> type) {
    List<Parameter> parameters = new ArrayList<>();
    Set<String> keys = new HashSet<>();
    for (RecordComponent component : type.getRecordComponents()) {
      Parameter parameter = declared(type, component);
      if (!keys.add(parameter.key())) {
        throw new IllegalArgumentException(type + " declares " + parameter.key() + " twice");
      }
      parameters.add(parameter);
    }
    return new ParamSpec<>(type, parameters);
  }

  private static Parameter declared(Class<?> type, RecordComponent component) {
    Param p = component.getAnnotation(Param.class);
    String place = type.getSimpleName() + "." + component.getName();
    if (p == null) {
      throw new IllegalArgumentException(place + " has no @Param");
    }
    if (p.help().isBlank() || p.help().contains("@|") || p.help().contains("${")) {
      throw new IllegalArgumentException(place + " has no help text, or text with @| or ${");
    }
    return new Parameter(Texts.kebab(component.getName()), p.unit(), p.min(), p.max(), p.def(), p.help(),
        form(component.getGenericType(), p, place));
  }

  private static Form form(Type type, Param p, String place) {
    if (type instanceof ParameterizedType list && list.getRawType() == List.class) {
      return new ListForm(form(list.getActualTypeArguments()[0], p, place));
    }
    if (!(type instanceof Class<?> c)) {
      throw new IllegalArgumentException(place + " has a type no form fits: " + type);
    }
    if (c == double.class || c == Double.class) {
      return new NumberForm(new Range(p.unit(), p.min(), p.max()));
    }
    if (c == int.class || c == Integer.class) {
      return new CountForm(new Range(Unit.NONE, Math.max(p.min(), Integer.MIN_VALUE),
          Math.min(p.max(), Integer.MAX_VALUE)));
    }
    return wordForm(c, p, place);
  }

  private static Form wordForm(Class<?> c, Param p, String place) {
    if (c == Measure.class) {
      return new MeasureForm(new Range(Unit.MM, p.min(), p.max()));
    }
    if (c == boolean.class || c == Boolean.class) {
      return new YesNoForm();
    }
    if (c == String.class) {
      return new TextForm((int) p.max());
    }
    if (c.isEnum()) {
      return ChoiceForm.of(c);
    }
    if (RecordForm.fits(c)) {
      return new RecordForm(c);
    }
    if (Item.class.isAssignableFrom(c)) {
      return new PresetForm(c.asSubclass(Item.class));
    }
    throw new IllegalArgumentException(place + " has a type no form fits: " + c);
  }

  /** The record. */
  public Class<R> type() {
    return type;
  }

  /** Every parameter, in order. */
  public List<Parameter> parameters() {
    return parameters;
  }

  /** Every key, in order. */
  public List<String> keys() {
    return parameters.stream().map(Parameter::key).toList();
  }

  /** The parameter of a key. */
  public Optional<Parameter> find(String key) {
    return parameters.stream().filter(p -> p.key().equals(key)).findFirst();
  }

  /** The fault of a key that is not declared. */
  public Fault unknown(String subject, String key, Origin where) {
    return new Fault(subject, key, "there is no parameter " + Texts.quoted(key) + " (" + where.words() + ")", "", "",
        NearMiss.advice(key, keys()), where);
  }
}
