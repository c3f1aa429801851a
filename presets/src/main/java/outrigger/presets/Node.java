package outrigger.presets;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tomlj.TomlArray;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;

/**
 * A TOML table being read, with its place and what to call it in messages. Keys are taken whole: a point in one is no
 * path.
 */
record Node(TomlTable toml, TomlPosition at, String called, Faults faults) {
  Set<String> keys() {
    return toml.keySet();
  }

  boolean has(String key) {
    return toml.keySet().contains(key);
  }

  Object value(String key) {
    return toml.get(List.of(key));
  }

  TomlPosition at(String key) {
    return toml.inputPositionOf(List.of(key));
  }

  void fault(String key, String text) {
    faults.add(at(key), called + ": " + text);
  }

  /** Faults every key that is not among the known ones, offering near names. */
  void refuseOthers(Collection<String> known, String what) {
    for (String key : keys()) {
      if (!known.contains(key)) {
        fault(key, "unknown " + what + " " + Quote.of(key) + ". " + NearNames.hint(key, known)
            + "Known are " + Words.and(List.copyOf(known)) + ".");
      }
    }
  }

  /** The text of a key; a fault if something else stands there. */
  Optional<String> text(String key) {
    if (!has(key)) {
      return Optional.empty();
    }
    if (value(key) instanceof String text && !text.isBlank()) {
      return Optional.of(text);
    }
    fault(key, key + " is " + shown(value(key)) + ". Give a text in quotes.");
    return Optional.empty();
  }

  /** The table of a key; a fault if something else stands there. */
  Optional<Node> child(String key, String childCalled) {
    if (!has(key)) {
      return Optional.empty();
    }
    if (value(key) instanceof TomlTable table) {
      return Optional.of(new Node(table, at(key), childCalled, faults));
    }
    fault(key, key + " is " + shown(value(key)) + ". Write it as a table, [" + key + "].");
    return Optional.empty();
  }

  /** A value as messages show it. */
  static String shown(Object value) {
    if (value instanceof String text) {
      return "the text " + Quote.of(text);
    }
    if (value instanceof TomlTable) {
      return "a table";
    }
    if (value instanceof TomlArray) {
      return "a list";
    }
    return value instanceof Double number ? Datum.print(number) : String.valueOf(value);
  }
}
