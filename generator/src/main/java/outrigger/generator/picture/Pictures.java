package outrigger.generator.picture;

import java.util.List;
import outrigger.shapes.print.PrintReport;

/** Draws parts as PNG, each over its name, with a bar of a round length below that sizes are judged by. */
public final class Pictures {
  private static final int ONE = 900;
  private static final int SHEET = 1500;

  private Pictures() {}

  /** One part, at most 900 pixels wide. */
  public static byte[] one(Shown part) {
    return new Page(List.of(part), ONE).draw();
  }

  /**
   * A part in the colours of what was measured on it, from above and below, with legends and the places of concerns; 1200
   * pixels wide.
   */
  public static byte[] map(Shown part, PrintReport report) {
    return new MapPage(part, report).draw();
  }

  /**
   * Several parts in rows, in their order and all to one scale, at most 1500 pixels wide and as high as it takes.
   *
   * @throws IllegalArgumentException if there is no part
   */
  public static byte[] sheet(List<Shown> parts) {
    if (parts.isEmpty()) {
      throw new IllegalArgumentException("a picture of no part");
    }
    return new Page(List.copyOf(parts), SHEET).draw();
  }
}
