package outrigger.shapes.profile;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import outrigger.shapes.num.ShapeException;

/**
 * Capitals, figures and signs as strokes on a grid six units high.
 *
 * <p>A glyph is written as polylines parted by spaces, each a row of digit pairs x, y; one pair alone is a dot.
 */
final class StrokeFont {
  /** Height of a capital in font units. */
  static final int CAPITAL = 6;
  /** Width of a space in font units. */
  static final int SPACE = 3;

  private static final char SMALL_M = '\u0001';
  private static final char SMALL_X = '\u0002';
  private static final Map<Character, String> GLYPHS = glyphs();

  private StrokeFont() {}

  /** The text as glyph keys: capitals, but a unit {@code mm} and an {@code x} between figures stay small. */
  static String keys(String text) {
    if (text.indexOf(SMALL_M) >= 0 || text.indexOf(SMALL_X) >= 0) {
      throw lacking(text.indexOf(SMALL_M) >= 0 ? SMALL_M : SMALL_X);
    }
    StringBuilder keys = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == 'm' && text.startsWith("mm", i) && !isLetter(text, i - 1) && !isLetter(text, i + 2)) {
        keys.append(SMALL_M).append(SMALL_M);
        i++;
      } else if (c == 'x' && isFigure(text, i - 1) && isFigure(text, i + 1)) {
        keys.append(SMALL_X);
      } else {
        keys.append(c >= 'a' && c <= 'z' ? (char) (c - 'a' + 'A') : c);
      }
    }
    return keys.toString();
  }

  private static boolean isLetter(String text, int i) {
    return i >= 0 && i < text.length()
        && (text.charAt(i) >= 'a' && text.charAt(i) <= 'z' || text.charAt(i) >= 'A' && text.charAt(i) <= 'Z');
  }

  private static boolean isFigure(String text, int i) {
    return i >= 0 && i < text.length() && (text.charAt(i) == ' ' || text.charAt(i) >= '0' && text.charAt(i) <= '9');
  }

  /** Polylines of a glyph key. */
  static String strokes(char key) {
    String strokes = GLYPHS.get(key);
    if (strokes == null) {
      throw lacking(key);
    }
    return strokes;
  }

  /** Width of a glyph key in font units, from stroke centre to stroke centre. */
  static int width(char key) {
    String strokes = strokes(key);
    int width = key == ' ' ? SPACE : 0;
    for (String line : strokes.split(" ")) {
      for (int i = 0; i < line.length(); i += 2) {
        width = Math.max(width, line.charAt(i) - '0');
      }
    }
    return width;
  }

  private static ShapeException lacking(char c) {
    String shown = Character.isISOControl(c) ? "a control character" : "'" + c + "'";
    return new ShapeException("text holds " + shown + String.format(Locale.ROOT, " (U+%04X)", (int) c)
        + ", which the lettering lacks; it has A-Z, 0-9, space and + - . , / ( ) # :",
        "Leave that character out or write it in words.");
  }

  private static Map<Character, String> glyphs() {
    Map<Character, String> map = new HashMap<>();
    String[] rows = {
      "A 0004264440 0242", "B 00063645443342413000 0333", "C 4536160501103041", "D 00063645413000",
      "E 46060040 0333", "F 460600 0333", "G 45361605011030414323", "H 0006 4046 0343", "I 0006",
      "J 0110203136", "K 0006 360330", "L 060030", "M 0006234640", "N 00064046", "O 011030414536160501",
      "P 00063645443303", "Q 011030414536160501 2240", "R 00063645443303 2340", "S 453616050413334241301001",
      "T 0646 2620", "U 060110304146", "V 062046", "W 0610345066", "X 0046 0640", "Y 062346 2320", "Z 06460040",
      "0 011020313526160501", "1 042620", "2 05163645440040", "3 0516364544334241301001 2333", "4 060242 3630",
      "5 460603334241301001", "6 4536160501103041423303", "7 064610", "8 13040516364544334241301001021333",
      "9 01103041453616050413 1343", "+ 2125 0343", "- 0333", ". 00", ", 1100", "/ 0036", "( 26040220",
      ") 06242200", "# 1016 4046 0151 0555", ": 01 04",
      SMALL_M + " 0004546360 3430", SMALL_X + " 0044 0440",
    };
    for (String row : rows) {
      map.put(row.charAt(0), row.substring(2));
    }
    map.put(' ', "");
    return Map.copyOf(map);
  }
}
