package outrigger.generator.stack;

import outrigger.generator.param.BadDimension;

/**
 * A name or length, and how many of it are at hand: {@code NAME} for any number, or {@code NAME:COUNT}.
 *
 * @param name what stands before the colon
 * @param count {@link Piece#ANY} where none is given
 */
record Counted(String name, int count) {

  static Counted of(String parameter, String text) {
    int colon = text.lastIndexOf(':');
    if (colon < 0) {
      return new Counted(text.strip(), Piece.ANY);
    }
    String count = text.substring(colon + 1).strip();
    if (!count.matches("[0-9]{1,3}")) {
      throw new BadDimension(parameter, "in which \"" + count + "\" is no count from 0 to 999",
          "Write how many there are behind the colon, such as " + text.substring(0, colon).strip() + ":3.");
    }
    return new Counted(text.substring(0, colon).strip(), Integer.parseInt(count));
  }
}
