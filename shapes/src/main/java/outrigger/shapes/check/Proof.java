package outrigger.shapes.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import outrigger.shapes.exact.BoxTree;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.mesh.Mesher;
import outrigger.shapes.num.Grid;
import outrigger.shapes.num.Workers;
import outrigger.shapes.solid.Solid;

/**
 * The proof that a mesh is sound.
 *
 * <p>A mesh is sound when it has facets; each has an area and none is there twice; every edge joins exactly two facets
 * that run it opposite ways; the facets at a vertex form one fan; no two facets meet other than in a common corner or
 * edge, a touch included; every shell faces away from the solid; and the volume is positive. All of this is decided
 * exactly. A sound mesh takes a time near n log n for n facets; a faulty one longer, as each fault is then looked for by
 * itself.
 */
public final class Proof {
  /** Facets from which on more than one thread is used: about as many as a mesh then has that several threads made. */
  private static final int MANY = 20_000;

  private final Surface surface;
  private final Findings findings = new Findings();

  private Proof(Mesh mesh, Workers workers) {
    surface = new Surface(mesh, workers.from(MANY, mesh.facetCount()));
  }

  /**
   * What the proof found.
   *
   * @param proven the mesh sealed as proven; empty if anything speaks against it or was left unexamined
   * @param findings faults by rule, the first 20 of each
   * @param tallies how many faults of each rule there are in all, rules without fault left out
   * @param notExamined what could not be examined because of other faults, in words; empty for a sound mesh
   * @param measures what the mesh measures, sound or not
   */
  public record Verdict(Optional<CheckedMesh> proven, List<Finding> findings, List<Tally> tallies,
      List<String> notExamined, Measures measures) {
    public Verdict {
      findings = List.copyOf(findings);
      tallies = List.copyOf(tallies);
      notExamined = List.copyOf(notExamined);
    }
  }

  /**
   * Evaluates a solid and judges what comes of it.
   *
   * @throws outrigger.shapes.num.ShapeException as {@link Mesher#mesh} does
   * @throws java.util.concurrent.CancellationException if the thread is interrupted
   */
  public static Verdict of(Solid solid) {
    return of(solid, Workers.of(1));
  }

  /** The same on several threads: the same verdict, sooner where the part is large. */
  public static Verdict of(Solid solid, Workers workers) {
    return of(isSound -> Mesher.mesh(solid, isSound, workers), workers);
  }

  /** Judges a mesh that is made by one who shows what comes of it on the way, as {@link Mesher#mesh(Solid, Predicate)}. */
  public static Verdict of(Function<Predicate<Mesh>, Mesh> maker) {
    return of(maker, Workers.of(1));
  }

  /** The same; judged on several threads. */
  public static Verdict of(Function<Predicate<Mesh>, Mesh> maker, Workers workers) {
    List<Verdict> sound = new ArrayList<>();
    Mesh mesh = maker.apply(shown -> {
      ifSound(shown, workers).ifPresent(sound::add);
      return !sound.isEmpty();
    });
    return sound.isEmpty() ? judge(mesh, workers) : sound.get(0);
  }

  private static Optional<Verdict> ifSound(Mesh mesh, Workers workers) {
    Proof proof = new Proof(mesh, workers);
    proof.findOutOfRange();
    return proof.surface.facets() == 0 || !proof.findings.isClean() ? Optional.empty()
        : QuickProof.examine(proof.surface).map(shells -> proof.verdict(mesh, proof.weigh(shells)))
            .filter(verdict -> verdict.proven().isPresent());
  }

  /** Judges a mesh. Never repairs, never throws for a bad mesh; same mesh, same verdict. */
  public static Verdict judge(Mesh mesh) {
    return judge(mesh, Workers.of(1));
  }

  /** The same on several threads: the same verdict, sooner where the mesh is large. */
  public static Verdict judge(Mesh mesh, Workers workers) {
    Proof proof = new Proof(mesh, workers);
    return proof.verdict(mesh, proof.examine());
  }

  private Verdict verdict(Mesh mesh, Measures measures) {
    Optional<CheckedMesh> proven = findings.isClean() ? Optional.of(new CheckedMesh(mesh, measures)) : Optional.empty();
    return new Verdict(proven, findings.list(), findings.tallies(), findings.notExamined(), measures);
  }

  private Measures examine() {
    if (surface.facets() == 0) {
      findings.add(Rule.EMPTY, 0, 0, 0, () -> "the mesh has no facets");
      findings.skip("everything else: there are no facets");
      return Scale.sizeOnly(surface);
    }
    findOutOfRange();
    if (findings.count(Rule.OUT_OF_RANGE) > 0) {
      findings.skip("everything else, volume and area included: exact arithmetic needs coordinates within range");
      return Scale.sizeOnly(surface);
    }
    return examineFacets();
  }

  private void findOutOfRange() {
    for (int v = 0; v < surface.vertices(); v++) {
      int vertex = v;
      if (!surface.isInRange(v)) {
        findings.addAt(Rule.OUT_OF_RANGE, surface, vertex, () -> "the point " + surface.words(vertex)
            + " mm lies outside the range of +-" + (int) Grid.LIMIT_MM + " mm");
      }
    }
  }

  private Measures examineFacets() {
    Optional<Shells> shells = QuickProof.examine(surface);
    return shells.isPresent() ? weigh(shells.get()) : examineForFaults();
  }

  /** Of a surface without fault so far: what is left are the shells. */
  private Measures weigh(Shells shells) {
    shells.judge(findings);
    judgeVolume(shells);
    return Scale.weigh(surface, shells, genus(shells, surface.corners().length / 2));
  }

  private Measures examineForFaults() {
    SingleFacets.findZeroAreas(surface, findings);
    SingleFacets.findDuplicates(surface, findings);
    Edges edges = Edges.examine(surface, findings);
    Shells shells = Shells.of(surface, edges.shells());
    Contacts.find(surface, BoxTree.ofFacets(surface.xyz(), surface.corners()), findings);
    if (findings.isClean()) {
      throw new AssertionError("the quick proof found a fault that the examination does not find");
    }
    findings.skip("inside-out and nested shells: they have a meaning only for a surface without the faults above");
    if (isPaired()) {
      judgeVolume(shells);
    } else {
      findings.skip("sign of the volume: it has a meaning only for a closed surface");
    }
    return Scale.weigh(surface, shells, genus(shells, edges.count()));
  }

  private void judgeVolume(Shells shells) {
    if (shells.sixVolume().signum() <= 0) {
      findings.addFacet(Rule.VOLUME, surface, 0, () -> "the surface encloses a volume that is not above 0");
    }
  }

  private boolean isPaired() {
    return findings.count(Rule.OPEN_EDGE) == 0 && findings.count(Rule.CROWDED_EDGE) == 0
        && findings.count(Rule.FLIPPED) == 0;
  }

  /** From vertices - edges + facets = 2 (shells - genus) for closed surfaces (Euler, Poincare). */
  private int genus(Shells shells, int edges) {
    if (!isPaired() || findings.count(Rule.PINCHED) > 0 || findings.count(Rule.ZERO_AREA) > 0) {
      return Measures.NO_GENUS;
    }
    return shells.count() - (surface.vertices() - edges + surface.facets()) / 2;
  }
}
