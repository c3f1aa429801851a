package outrigger.generator.run;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import outrigger.generator.accessory.Part;
import outrigger.generator.plan.Plan;
import outrigger.shapes.check.CheckedMesh;
import outrigger.shapes.check.Proof;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.mesh.Mesher;
import outrigger.shapes.num.ShapeException;
import outrigger.shapes.num.Workers;

/** A plan as far as solids; each of its parts is meshed and proven once, by whoever asks first. */
final class Drawn {
  private final Plan plan;
  private final List<Draft> drafts;
  private final Workers workers;
  private final Map<Part, FutureTask<Proof.Verdict>> proofs = new IdentityHashMap<>();

  /**
   * @param workers the threads on which one part is meshed and proven
   */
  Drawn(Plan plan, List<Draft> drafts, Workers workers) {
    this.plan = plan;
    this.workers = workers;
    this.drafts = drafts;
    drafts.forEach(draft -> draft.parts().forEach(
        part -> proofs.put(part, new FutureTask<>(() -> Proof.of(part.solid(), workers)))));
  }

  Plan plan() {
    return plan;
  }

  /** The threads that work on one part. */
  Workers workers() {
    return workers;
  }

  List<Draft> drafts() {
    return drafts;
  }

  /**
   * The proof of one of its parts. Safe to ask from several threads.
   *
   * @throws ShapeException if the part has no mesh
   */
  Proof.Verdict proof(Part part) {
    FutureTask<Proof.Verdict> proof = proofs.get(part);
    proof.run();
    try {
      return proof.get();
    } catch (ExecutionException e) {
      throw Crew.rethrown(e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while a part was being proven", e);
    }
  }

  /**
   * The mesh of one of its parts, sound or not.
   *
   * @throws ShapeException if the part has none
   */
  Mesh mesh(Part part) {
    return proof(part).proven().map(CheckedMesh::mesh).orElseGet(() -> Mesher.mesh(part.solid()));
  }
}
