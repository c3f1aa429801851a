package outrigger.generator.param;

import java.util.List;
import java.util.stream.Collectors;

/** Bad input, in the user's words: every fault found, in the order of what the user wrote. */
public final class InputException extends RuntimeException {
  private final transient List<Fault> faults;

  /** @param faults at least one */
  public InputException(List<Fault> faults) {
    super(faults.stream().map(Fault::message).collect(Collectors.joining("\n")));
    if (faults.isEmpty()) {
      throw new IllegalArgumentException("no fault");
    }
    this.faults = List.copyOf(faults);
  }

  public InputException(Fault fault) {
    this(List.of(fault));
  }

  /** Every fault; at least one. */
  public List<Fault> faults() {
    return faults;
  }
}
