package outrigger.presets;

import java.util.List;
import org.tomlj.TomlArray;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;

/**
 * A list that {@link PlainToml} read.
 *
 * @param values what stands in it
 * @param places where each stands
 */
record PlainList(List<Object> values, List<TomlPosition> places) implements TomlArray {
  PlainList {
    values = List.copyOf(values);
    places = List.copyOf(places);
  }

  private boolean holds(Class<?> type) {
    return !values.isEmpty() && values.stream().allMatch(type::isInstance);
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
  public boolean containsStrings() {
    return holds(String.class);
  }

  @Override
  public boolean containsLongs() {
    return holds(Long.class);
  }

  @Override
  public boolean containsDoubles() {
    return holds(Double.class);
  }

  @Override
  public boolean containsBooleans() {
    return holds(Boolean.class);
  }

  @Override
  public boolean containsOffsetDateTimes() {
    return false;
  }

  @Override
  public boolean containsLocalDateTimes() {
    return false;
  }

  @Override
  public boolean containsLocalDates() {
    return false;
  }

  @Override
  public boolean containsLocalTimes() {
    return false;
  }

  @Override
  public boolean containsArrays() {
    return holds(TomlArray.class);
  }

  @Override
  public boolean containsTables() {
    return holds(TomlTable.class);
  }

  @Override
  public Object get(int index) {
    return values.get(index);
  }

  @Override
  public TomlPosition inputPositionOf(int index) {
    return places.get(index);
  }

  @Override
  public List<Object> toList() {
    return values;
  }
}
