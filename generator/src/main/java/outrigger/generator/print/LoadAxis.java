package outrigger.generator.print;

import java.util.Arrays;
import outrigger.generator.param.Fault;
import outrigger.generator.param.InputException;
import outrigger.generator.param.Origin;
import outrigger.generator.param.Texts;
import outrigger.shapes.num.Axis;

/** Reads the axis along which a part is loaded, as users write it. */
public final class LoadAxis {
  private LoadAxis() {}

  /**
   * The axis of a text.
   *
   * @throws InputException if it names no axis
   */
  public static Axis read(String text, Origin where) {
    return Arrays.stream(Axis.values()).filter(axis -> axis.name().equalsIgnoreCase(text)).findFirst()
        .orElseThrow(() -> new InputException(new Fault("", "load", "there is no axis " + Texts.quoted(text)
            + (where.line() > 0 ? " (" + where.words() + ")" : ""), text, "X, Y or Z",
            "It is X, Y or Z, the axis of the file along which the part is loaded.", where)));
  }
}
