package outrigger.presets;

import java.util.List;

/** An item was asked for by a name that its table does not hold. */
public final class UnknownPreset extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final String table;
  private final String name;
  private final List<String> near;
  private final List<String> all;

  UnknownPreset(String table, String name, List<String> all) {
    super(message(table, name, NearNames.of(name, all), all));
    this.table = table;
    this.name = name;
    this.near = NearNames.of(name, all);
    this.all = List.copyOf(all);
  }

  /** Key of the table, such as {@code disc-magnets}. */
  public String table() {
    return table;
  }

  /** The name asked for, as it was typed. */
  public String name() {
    return name;
  }

  /** Known names it may stand for, nearest first; at most three, maybe none. */
  public List<String> near() {
    return near;
  }

  /** Every name of the table, in file order. */
  public List<String> all() {
    return all;
  }

  private static String message(String table, String name, List<String> near, List<String> all) {
    String offer = near.isEmpty() ? "The table has " + Words.and(all) + ". " : "Did you mean " + Words.or(near) + "? ";
    return table + ": there is no " + Quote.of(name) + ". " + offer
        + "Use a name of the table, or add a row of that name in a table file of your own.";
  }
}
