package outrigger.generator.run;

import java.util.Optional;
import outrigger.generator.accessory.Part;
import outrigger.generator.param.Fault;
import outrigger.generator.param.Refused;
import outrigger.shapes.check.CheckedMesh;
import outrigger.shapes.check.Proof;
import outrigger.shapes.num.ShapeException;
import outrigger.shapes.print.PrintReport;
import outrigger.shapes.print.Printability;
import outrigger.shapes.print.Specimen;
import outrigger.shapes.stl.StlWriter;

/** A part to be meshed, proven and turned into the bytes of its file. */
record Job(Drawn drawn, Draft draft, Part part) {

  /** What came of it: exactly one of the three. */
  record Outcome(Optional<Made> made, Optional<UnsoundException.Unsound> unsound, Optional<Fault> fault) {
    static Outcome made(Made made) {
      return new Outcome(Optional.of(made), Optional.empty(), Optional.empty());
    }

    static Outcome unsound(UnsoundException.Unsound unsound) {
      return new Outcome(Optional.empty(), Optional.of(unsound), Optional.empty());
    }

    static Outcome fault(Fault fault) {
      return new Outcome(Optional.empty(), Optional.empty(), Optional.of(fault));
    }
  }

  String name() {
    return draft.name(part);
  }

  Outcome finish() {
    try {
      return judged(drawn.proof(part));
    } catch (ShapeException e) {
      Fault fault = Refused.by(e).fault(name(), draft.request().values());
      return Outcome.fault(FaultList.atPart(fault, draft.request().where()));
    }
  }

  private Outcome judged(Proof.Verdict verdict) {
    String kind = draft.request().accessory().kind();
    if (verdict.proven().isEmpty()) {
      return Outcome.unsound(new UnsoundException.Unsound(name(), kind, verdict));
    }
    CheckedMesh mesh = verdict.proven().get();
    byte[] stl = StlWriter.bytes(mesh, "Outrigger " + kind + " " + name(), drawn.workers());
    Specimen specimen = new Specimen(mesh, draft.limits(), part.heights(), drawn.workers());
    PrintReport report = Printability.examine(draft.request().load().map(specimen::loaded).orElse(specimen));
    return Outcome.made(new Made(name(), kind, draft.values(), part, mesh, report, stl));
  }
}
