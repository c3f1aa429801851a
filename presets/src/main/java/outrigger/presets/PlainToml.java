package outrigger.presets;

import java.util.ArrayList;
import java.util.List;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;

/**
 * Reads the part of TOML that the tables of the program are written in: tables by headers, keys without quotes, texts on one
 * line, decimal numbers, truth values, and lists and tables in brackets. The full parser takes longer to start than all else
 * that making a small part needs; a test holds the two to the same values and places.
 */
final class PlainToml {
  private final String text;
  private int at;
  private int line = 1;
  private int lineStart;

  private PlainToml(String text) {
    this.text = text;
  }

  /**
   * The root table of a text.
   *
   * @throws IllegalArgumentException with the place, where the text is not of this part of TOML
   */
  static TomlTable read(String text) {
    return new PlainToml(text).root();
  }

  private TomlTable root() {
    PlainTable root = new PlainTable();
    PlainTable open = root;
    skip();
    while (at < text.length()) {
      TomlPosition here = here();
      if (take('[')) {
        open = header(root, here);
      } else {
        pair(open);
      }
      skip();
    }
    return root;
  }

  private PlainTable header(PlainTable root, TomlPosition here) {
    PlainTable table = root;
    do {
      table = table.open(key(), here);
    } while (take('.'));
    need(']');
    return table;
  }

  private void pair(PlainTable table) {
    TomlPosition here = here();
    String key = key();
    blanks();
    need('=');
    blanks();
    if (!table.put(key, value(), here)) {
      throw wrong("a key that is there already");
    }
  }

  private String key() {
    int from = at;
    while (at < text.length() && isOfKey(text.charAt(at))) {
      at++;
    }
    if (at == from) {
      throw wrong("no key");
    }
    return text.substring(from, at);
  }

  private static boolean isOfKey(char c) {
    return c >= 'a' && c <= 'z' || c == '-' || c == '_' || Character.isLetterOrDigit(c);
  }

  private Object value() {
    if (take('"')) {
      return string();
    } else if (take('[')) {
      return list();
    } else if (take('{')) {
      return table();
    }
    return word();
  }

  private String string() {
    int end = text.indexOf('"', at);
    String plain = end < 0 ? "\n" : text.substring(at, end);
    if (plain.indexOf('\\') >= 0 || plain.indexOf('\n') >= 0) {
      return written();
    }
    at = end + 1;
    return plain;
  }

  /** A text as it is written, escapes and all. */
  private String written() {
    StringBuilder result = new StringBuilder();
    while (!take('"')) {
      char c = next();
      if (c == '\\') {
        c = next();
        if (c != '"' && c != '\\') {
          throw wrong("an escape");
        }
      } else if (c == '\n') {
        throw wrong("an open text");
      }
      result.append(c);
    }
    return result.toString();
  }

  private PlainList list() {
    List<Object> values = new ArrayList<>();
    List<TomlPosition> places = new ArrayList<>();
    TomlPosition here = beforeNext();
    while (!take(']')) {
      places.add(here);
      values.add(value());
      skip();
      if (!take(',')) {
        need(']');
        break;
      }
      here = beforeNext();
    }
    return new PlainList(values, places);
  }

  /** Goes to the next entry of a list; its place is the end of the line before it where it begins a line. */
  private TomlPosition beforeNext() {
    blanks();
    TomlPosition place = here();
    skip();
    return place;
  }

  private PlainTable table() {
    PlainTable table = new PlainTable();
    blanks();
    while (!take('}')) {
      pair(table);
      blanks();
      if (!take(',')) {
        need('}');
        break;
      }
      blanks();
    }
    return table;
  }

  private Object word() {
    int from = at;
    while (at < text.length() && " ,]}\r\n#".indexOf(text.charAt(at)) < 0) {
      at++;
    }
    String word = text.substring(from, at);
    if (word.equals("true") || word.equals("false")) {
      return word.equals("true");
    }
    int point = word.indexOf('.');
    if (!isWhole(point < 0 ? word : word.substring(0, point)) || point >= 0 && !isDigits(word.substring(point + 1))) {
      throw wrong("no value");
    }
    return point < 0 ? (Object) Long.valueOf(word) : Double.valueOf(word);
  }

  /** Digits after a minus sign or none; no 0 leads others. */
  private static boolean isWhole(String text) {
    String digits = text.startsWith("-") ? text.substring(1) : text;
    return isDigits(digits) && (digits.length() == 1 || digits.charAt(0) != '0');
  }

  private static boolean isDigits(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) < '0' || text.charAt(i) > '9') {
        return false;
      }
    }
    return !text.isEmpty();
  }

  private char next() {
    if (at == text.length()) {
      throw wrong("an end");
    }
    return text.charAt(at++);
  }

  private boolean take(char c) {
    boolean there = at < text.length() && text.charAt(at) == c;
    at += there ? 1 : 0;
    return there;
  }

  private void need(char c) {
    if (!take(c)) {
      throw wrong("no " + c);
    }
  }

  private void blanks() {
    while (at < text.length() && (text.charAt(at) == ' ' || text.charAt(at) == '\t')) {
      at++;
    }
  }

  /** Passes by blanks, ends of lines and comments. */
  private void skip() {
    while (at < text.length()) {
      char c = text.charAt(at);
      if (c == '#') {
        int end = text.indexOf('\n', at);
        at = end < 0 ? text.length() : end;
      } else if (c == '\n') {
        at++;
        line++;
        lineStart = at;
      } else if (c == ' ' || c == '\t' || c == '\r') {
        at++;
      } else {
        return;
      }
    }
  }

  private TomlPosition here() {
    return TomlPosition.positionAt(line, at - lineStart + 1);
  }

  private IllegalArgumentException wrong(String what) {
    return new IllegalArgumentException(what + " in line " + line + ", column " + (at - lineStart + 1));
  }
}
