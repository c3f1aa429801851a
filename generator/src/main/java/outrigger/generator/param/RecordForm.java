package outrigger.generator.param;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.Locale;
import outrigger.presets.Shelf;

/**
 * A record that reads itself by {@code static X parse(String, Shelf)}.
 *
 * @param type the record
 */
record RecordForm(Class<?> type) implements Form {

  /** Whether a type offers such a method. */
  static boolean fits(Class<?> type) {
    try {
      Method parse = method(type);
      return Modifier.isStatic(parse.getModifiers()) && parse.getReturnType() == type;
    } catch (NoSuchMethodException e) {
      return false;
    }
  }

  private static Method method(Class<?> type) throws NoSuchMethodException {
    return type.getDeclaredMethod("parse", String.class, Shelf.class);
  }

  @Override
  public String kind() {
    return "text";
  }

  @Override
  public String placeholder() {
    return Texts.kebab(type.getSimpleName()).substring(1).toUpperCase(Locale.ROOT);
  }

  @Override
  public String allowed() {
    return "";
  }

  @Override
  public Object parse(String text, Shelf shelf) throws BadText {
    try {
      Method parse = method(type);
      parse.setAccessible(true);
      return parse.invoke(null, text, shelf);
    } catch (InvocationTargetException e) {
      Refused refused = Refused.by(e.getCause());
      throw new BadText(Texts.quoted(text), refused.what(), "", refused.advice());
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(type + " cannot be read", e);
    }
  }

  @Override
  public String print(Object value, String text) {
    return text;
  }
}
