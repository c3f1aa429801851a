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
    Optional<Node> named = node.child(COLUMN, node.called() + " " + COLUMN);
    if (named.isPresent()) {
      named.get().refuseOthers(columns, "column");
      for (String column : named.get().keys()) {
        Optional<Source> source = book.named(named.get(), column);
        if (source.isPresent()) {
          ofColumn.put(column, source.get());
        }
      }
    }
    return new SourceRules(Map.copyOf(ofColumn), book.named(node, ALL));
  }

  /** The source of a value in a row, by the rules of the row (these) and of its table, then of its file. */
  Optional<Source> find(String column, SourceRules table, SourceBook book) {
    Source named = ofColumn.getOrDefault(column, table.ofColumn.get(column));
    if (named != null) {
      return Optional.of(named);
    }
    if (ofAll.isPresent()) {
      return ofAll;
    }
    return table.ofAll.isPresent() ? table.ofAll : book.otherwise();
  }
}
