package outrigger.presets;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Which source a value has, at one level (the table, or a row of it). A source named for the column beats one named for
 * all columns, and among equals the row's beats the table's.
 */
record SourceRules(Map<String, Source> ofColumn, Optional<Source> ofAll) {
  static final String ALL = "source";
  static final String COLUMN = "source-of";

  /** Reads the two keys of a table or row. */
  static SourceRules read(Node node, List<String> columns, SourceBook book) {
    Map<String, Source> ofColumn = new HashMap<>();
    node.child(COLUMN, node.called() + " " + COLUMN).ifPresent(named -> {
      named.refuseOthers(columns, "column");
      for (String column : named.keys()) {
        book.named(named, column).ifPresent(source -> ofColumn.put(column, source));
      }
    });
    return new SourceRules(Map.copyOf(ofColumn), book.named(node, ALL));
  }

  /** The source of a value in a row, by the rules of the row (these) and of its table. */
  Optional<Source> find(String column, SourceRules table) {
    return Optional.ofNullable(ofColumn.get(column))
        .or(() -> Optional.ofNullable(table.ofColumn.get(column)))
        .or(() -> ofAll)
        .or(table::ofAll);
  }
}
