package outrigger.generator.plan;

import java.util.List;
import outrigger.generator.param.Fault;
import outrigger.presets.Shelf;

/**
 * What a plan file asks for.
 *
 * @param file name of the file, without folders
 * @param title heading of its outputs, may be empty
 * @param shelf presets its parts are made from
 * @param requests the parts, in the order of the file
 * @param faults what is wrong with the file so far; values are checked when parts are made
 */
public record Plan(String file, String title, Shelf shelf, List<Request<?>> requests, List<Fault> faults) {
  public Plan {
    requests = List.copyOf(requests);
    faults = List.copyOf(faults);
  }
}
