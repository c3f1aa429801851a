package outrigger.generator.run;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import outrigger.generator.param.Fault;
import outrigger.generator.param.InputException;
import outrigger.generator.param.Origin;

/** The faults of a plan, each told once, in the order of the file. */
final class FaultList {
  private FaultList() {}

  /** A fault that has no place of its own, placed at the part it concerns. */
  static Fault atPart(Fault fault, Origin part) {
    if (fault.where().kind() != Origin.Kind.DEFAULT || part.kind() != Origin.Kind.PLAN) {
      return fault;
    }
    return new Fault(fault.subject(), fault.parameter(), fault.what() + " (part at " + part.words() + ")",
        fault.value(), fault.limit(), fault.advice(), part);
  }

  static void throwIfAny(List<Fault> faults) {
    if (!faults.isEmpty()) {
      throw new InputException(inOrder(faults));
    }
  }

  /** One written value may be at fault in many parts: it is told once. */
  private static List<Fault> inOrder(List<Fault> faults) {
    Set<List<Object>> told = new HashSet<>();
    List<Fault> once = new ArrayList<>();
    for (Fault fault : faults) {
      if (fault.where().line() == 0 || told.add(List.of(fault.what(), fault.where()))) {
        once.add(fault);
      }
    }
    once.sort(Comparator.comparingInt((Fault f) -> f.where().line()).thenComparingInt(f -> f.where().column()));
    return once;
  }
}
