package outrigger.presets;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;

/** A table that {@link PlainToml} read. Only keys of its own are known to it, no paths. */
final class PlainTable implements TomlTable {
  private final Map<String, Object> values = new LinkedHashMap<>();
  private final Map<String, TomlPosition> places = new LinkedHashMap<>();

  /** Adds a key; false where it is there already. */
  boolean put(String key, Object value, TomlPosition at) {
    places.putIfAbsent(key, at);
    return values.putIfAbsent(key, value) == null;
  }

  /** The table of a key, a new one where there is none. */
  PlainTable open(String key, TomlPosition at) {
    put(key, new PlainTable(), at);
    if (values.get(key) instanceof PlainTable table) {
      return table;
    }
    throw new IllegalArgumentException(key + " is no table");
  }

  @Override
  public int size() {
    return values.size();
  }

  @Override
  public boolean isEmpty() {
    return values.isEmpty();
  }

  @Override
  public Set<String> keySet() {
    return Collections.unmodifiableSet(values.keySet());
  }

  @Override
  public Set<List<String>> keyPathSet(boolean includeTables) {
    throw new UnsupportedOperationException();
  }

  @Override
  public Set<Map.Entry<String, Object>> entrySet() {
    return Collections.unmodifiableMap(values).entrySet();
  }

  @Override
  public Set<Map.Entry<List<String>, Object>> entryPathSet(boolean includeTables) {
    throw new UnsupportedOperationException();
  }

  @Override
  public Object get(List<String> path) {
    return path.size() == 1 ? values.get(path.get(0)) : null;
  }

  @Override
  public TomlPosition inputPositionOf(List<String> path) {
    return path.size() == 1 ? places.get(path.get(0)) : null;
  }

  @Override
  public Map<String, Object> toMap() {
    return Collections.unmodifiableMap(values);
  }
}
