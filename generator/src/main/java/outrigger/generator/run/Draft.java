package outrigger.generator.run;

import java.util.List;
import outrigger.generator.accessory.Part;
import outrigger.generator.param.Fault;
import outrigger.generator.param.Value;
import outrigger.generator.plan.Request;

/** A request as far as solids: its values and parts, or why there are none. */
record Draft(Request<?> request, List<Value> values, List<Part> parts, List<Fault> faults) {

  /** Name of one of its parts. */
  String name(Part part) {
    return part.suffix().isEmpty() ? request.name() : request.name() + "-" + part.suffix();
  }
}
