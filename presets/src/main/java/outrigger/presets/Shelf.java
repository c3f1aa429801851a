package outrigger.presets;

/** Every table of presets. Pending: loading, lookup with near misses, overriding by a file of the user. */
public final class Shelf {
  /** The tables that come with the program. */
  public static Shelf standard() {
    throw new UnsupportedOperationException("pending");
  }

  /** The item of a table by name, whatever the case of its letters; near names are offered where it is missing. */
  public <T extends Item> T get(Class<T> table, String name) {
    throw new UnsupportedOperationException("pending");
  }

  /** Every item of a table, in the table's order; empty where the table has none. */
  public <T extends Item> java.util.List<T> all(Class<T> table) {
    throw new UnsupportedOperationException("pending");
  }
}
