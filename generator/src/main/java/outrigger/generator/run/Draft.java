package outrigger.generator.run;

import java.util.List;
import outrigger.generator.accessory.Part;
import outrigger.generator.param.Fault;
import outrigger.generator.param.Value;
import outrigger.generator.plan.Request;
import outrigger.shapes.print.PrintLimits;

/** A request as far as solids: its values and parts, or why there are none. */
record Draft(Request<?> request, List<Value> values, List<Part> parts, PrintLimits limits,
    List<Fault> faults) {

  /** Name of one of its parts. */
  String name(Part part) {
    return part.suffix().isEmpty() ? request.name() : request.name() + "-" + part.suffix();
  }
}
