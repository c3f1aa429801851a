package outrigger.shapes.campaign;

import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import outrigger.shapes.check.Finding;
import outrigger.shapes.check.Proof;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.mesh.Mesher;
import outrigger.shapes.num.ShapeException;
import outrigger.shapes.solid.Solid;

/**
 * What came of evaluating a solid: a proven mesh, nothing at all, or a refusal.
 *
 * @param mesh the mesh, sound or not; none where nothing is left or it was refused before there was one
 * @param verdict the proof's word on the mesh
 * @param refusal why there is no sound mesh; {@code Cause.NONE} where there is one, or rightly nothing
 * @param words the refusal's words, or nothing
 */
record Outcome(Optional<Mesh> mesh, Optional<Proof.Verdict> verdict, Cause refusal, String words) {
  private static final Set<String> TOUCHES = Set.of("pinched-vertex", "facets-meet", "crowded-edge");

  /** Causes of refusal, as {@code docs/kernel.md} tells them. */
  enum Cause {
    NONE, LINE, TOUCH, ROUNDING, OTHER
  }

  static Outcome of(Solid solid) {
    try {
      Optional<Mesh> mesh = Mesher.meshIfAny(solid);
      Optional<Proof.Verdict> verdict = mesh.map(Proof::judge);
      Set<String> broken = verdict.stream().flatMap(v -> v.findings().stream()).map(Finding::rule)
          .collect(Collectors.toSet());
      return new Outcome(mesh, verdict, broken.isEmpty() ? Cause.NONE : TOUCHES.containsAll(broken) ? Cause.TOUCH
          : Cause.OTHER, verdict.map(v -> v.findings().toString()).orElse(""));
    } catch (ShapeException e) {
      String words = e.getMessage();
      return new Outcome(Optional.empty(), Optional.empty(), words.startsWith("parts touch only along a line") ? Cause.LINE
          : words.startsWith("parts touch only at a point or") ? Cause.TOUCH
          : words.startsWith("rounding to the grid makes facets meet") ? Cause.ROUNDING : Cause.OTHER, words);
    }
  }

  boolean isRefused() {
    return refusal != Cause.NONE;
  }

  /** Volume, mm^3; 0 where nothing is left. */
  double volume() {
    return verdict.map(v -> v.measures().volume()).orElse(0.0);
  }

  /** Surface, mm^2; 0 where nothing is left. */
  double area() {
    return verdict.map(v -> v.measures().area()).orElse(0.0);
  }
}
