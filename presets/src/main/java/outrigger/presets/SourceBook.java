package outrigger.presets;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The sources a file declares in its {@code [source.KEY]} tables, by key. */
final class SourceBook {
  static final String KEY = "source";

  private final Map<String, Source> sources = new LinkedHashMap<>();
  private final Optional<Source> otherwise;
  private final String suffix;

  private SourceBook(Optional<Source> otherwise, String suffix) {
    this.otherwise = otherwise;
    this.suffix = suffix;
  }

  /** Sources of a file that comes with the program: each value must name one. */
  static SourceBook standard(Node root) {
    return new SourceBook(Optional.empty(), "").read(root);
  }

  /** Sources of a file of the user: values that name none come from the file itself, and texts name it too. */
  static SourceBook user(Node root, String file) {
    return new SourceBook(Optional.of(new Source(Source.Kind.USER, file)), " (" + file + ")").read(root);
  }

  /** The source of values that name none. */
  Optional<Source> otherwise() {
    return otherwise;
  }

  /** The source that a key of a node names; a fault if there is none of that name. */
  Optional<Source> named(Node node, String key) {
    Optional<String> name = node.text(key);
    if (name.isEmpty()) {
      return Optional.empty();
    }
    if (!sources.containsKey(name.get())) {
      node.fault(key, "unknown source " + Quote.of(name.get()) + ". " + NearNames.hint(name.get(), sources.keySet())
          + "Declare it as [source." + name.get().replaceAll("[^A-Za-z0-9_-]", "-") + "] with kind and text.");
    }
    return Optional.ofNullable(sources.get(name.get()));
  }

  private SourceBook read(Node root) {
    Optional<Node> book = root.child(KEY, KEY);
    if (book.isPresent()) {
      for (String name : book.get().keys()) {
        Optional<Node> entry = book.get().child(name, "source " + name);
        if (entry.isPresent()) {
          readEntry(name, entry.get());
        }
      }
    }
    return this;
  }

  private void readEntry(String name, Node entry) {
    entry.refuseOthers(List.of("kind", "text"), "key");
    for (String key : List.of("kind", "text")) {
      if (!entry.has(key)) {
        entry.faults().add(entry.at(), entry.called() + ": " + key + " is missing. Give kind and text.");
      }
    }
    Optional<String> word = entry.text("kind");
    Optional<Source.Kind> kind = word.isPresent() ? Source.Kind.of(word.get()) : Optional.empty();
    if (word.isPresent() && kind.isEmpty()) {
      entry.fault("kind", "kind is " + Quote.of(word.get()) + ". " + NearNames.hint(word.get(), Source.Kind.words())
          + "Use " + Words.or(Source.Kind.words()) + ".");
    }
    String text = entry.text("text").orElse(name) + suffix;
    // A faulty entry is kept, so that the values that name it are not blamed too.
    sources.put(name, new Source(kind.orElse(Source.Kind.USER), text));
  }
}
