package outrigger.generator.run;

import java.util.List;
import java.util.stream.Collectors;
import outrigger.shapes.check.Proof;

/** Parts that were built but whose meshes did not pass the proof; nothing of their batch is written. */
public final class UnsoundException extends RuntimeException {
  private final transient List<Unsound> parts;

  /**
   * A part that did not pass.
   *
   * @param verdict what the proof found
   */
  public record Unsound(String name, String kind, Proof.Verdict verdict) {}

  UnsoundException(List<Unsound> parts) {
    super(parts.stream().map(p -> p.name() + " did not pass the proof").collect(Collectors.joining("\n")));
    this.parts = List.copyOf(parts);
  }

  /** Every part that did not pass; at least one. */
  public List<Unsound> parts() {
    return parts;
  }
}
