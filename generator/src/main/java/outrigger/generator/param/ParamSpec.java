package outrigger.generator.param;

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
  private final Declared<R> declared;
  private final List<Parameter> parameters;

  private ParamSpec(Class<R> type, Declared<R> declared, List<Parameter> parameters) {
    this.type = type;
    this.declared = declared;
    this.parameters = List.copyOf(parameters);
  }

  /**
   * The declarations of a record.
   *
   * @throws IllegalArgumentException if a component has no {@code @Param}, a type no form fits, or help text that a
   *     command line parser would interpret
   */
  public static <R extends Record> ParamSpec<R> of(Class<R> type) {
    return of(type, type.isMemberClass() || type.isLocalClass() ? new Reflected<>(type) : compiled(type));
  }

  static <R extends Record> ParamSpec<R> of(Class<R> type, Declared<R> declared) {
    List<Parameter> parameters = new ArrayList<>();
    Set<String> keys = new HashSet<>();
    for (Declaration declaration : declared.declarations()) {
      Parameter parameter = parameter(declaration, type.getSimpleName() + "." + declaration.name());
      if (!keys.add(parameter.key())) {
        throw new IllegalArgumentException(type + " declares " + parameter.key() + " twice");
      }
      parameters.add(parameter);
    }
    return new ParamSpec<>(type, declared, parameters);
  }

  /** What the compiler made of a record's annotations, beside the record. */
  @SuppressWarnings("unchecked")
  private static <R extends Record> Declared<R> compiled(Class<R> type) {
    try {
      return (Declared<R>) Class.forName(type.getName() + "Declared").getConstructor().newInstance();
    } catch (ReflectiveOperationException e) {
      throw new IllegalArgumentException(type + " was compiled without what it declares: see module declare", e);
    }
  }

  private static Parameter parameter(Declaration p, String place) {
    if (p.help().isBlank() || p.help().contains("@|") || p.help().contains("${")) {
      throw new IllegalArgumentException(place + " has no help text, or text with @| or ${");
    }
    Form form = form(p.element(), p, place);
    return new Parameter(Texts.kebab(p.name()), p.unit(), p.min(), p.max(), p.def(), p.help(),
        p.type() == List.class ? new ListForm(form) : form);
  }

  private static Form form(Class<?> c, Declaration p, String place) {
    if (c == double.class || c == Double.class) {
      return new NumberForm(new Range(p.unit(), p.min(), p.max()));
    }
    if (c == int.class || c == Integer.class) {
      return new CountForm(new Range(Unit.NONE, Math.max(p.min(), Integer.MIN_VALUE),
          Math.min(p.max(), Integer.MAX_VALUE)));
    }
    return wordForm(c, p, place);
  }

  private static Form wordForm(Class<?> c, Declaration p, String place) {
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
    if (Item.class.isAssignableFrom(c)) {
      return new PresetForm(c.asSubclass(Item.class));
    }
    if (RecordForm.fits(c)) {
      return new RecordForm(c);
    }
    throw new IllegalArgumentException(place + " has a type no form fits: " + c);
  }

  /** The record. */
  public Class<R> type() {
    return type;
  }

  /** The record of these values, one for each parameter; throws what its constructor refuses. */
  R make(List<Object> values) {
    return declared.make(values);
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
    for (Parameter parameter : parameters) {
      if (parameter.key().equals(key)) {
        return Optional.of(parameter);
      }
    }
    return Optional.empty();
  }

  /** The fault of a key that is not declared. */
  public Fault unknown(String subject, String key, Origin where) {
    return new Fault(subject, key, "there is no parameter " + Texts.quoted(key) + " (" + where.words() + ")", "", "",
        NearMiss.advice(key, keys()), where);
  }
}
