package outrigger.generator.param;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Declares one parameter of an accessory or a command, on a record component. Nothing else declares it again.
 *
 * <p>The component's name gives the option and plan key ({@code wallThickness} is {@code wall-thickness}). Its type
 * says how it is written: {@code double} a length, an angle, a mass, a temperature or a plain number by {@link #unit};
 * {@code int} a count; {@code boolean} yes or no; an enum one of its constants in lower case with dashes; a preset
 * record (such as {@code Printer}) the name of an item on the shelf; {@code String} free text; {@code Measure} a length
 * with what it may be off, or {@code solve}; {@code List<Double>} lengths separated by commas; {@code List<Item>} (see
 * {@code accessory.tray}) one sized item each, in its own text form.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Param {
  /** Unit of a number. */
  Unit unit() default Unit.MM;

  /** Smallest value allowed. */
  double min() default 0;

  /** Largest value allowed. */
  double max() default 1000;

  /** The default, as a user would write it. */
  String def();

  /** One sentence in the trade's words. */
  String help();
}
