package outrigger.generator.run;

import java.util.List;
import java.util.stream.Collectors;

/** Parts that are sound but will not print as drawn; nothing of their batch is written. */
public final class UnprintableException extends RuntimeException {
  private final transient Batch batch;

  UnprintableException(Batch batch) {
    super(stopped(batch).stream().map(made -> made.name() + " will not print as drawn")
        .collect(Collectors.joining("\n")));
    this.batch = batch;
  }

  private static List<Made> stopped(Batch batch) {
    return batch.parts().stream().filter(made -> made.report().hasErrors()).toList();
  }

  /** Everything that was made. */
  public Batch batch() {
    return batch;
  }

  /** The parts that stopped it; at least one. */
  public List<Made> parts() {
    return stopped(batch);
  }
}
