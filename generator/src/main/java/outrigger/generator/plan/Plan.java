package outrigger.generator.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import outrigger.generator.fit.TruckFit;
import outrigger.generator.joint.Stock;
import outrigger.generator.param.Fault;
import outrigger.generator.truck.Truck;
import outrigger.presets.Material;
import outrigger.presets.Shelf;
import outrigger.shapes.num.Axis;
import outrigger.shapes.print.Limit;

/**
 * Parts that are wanted together: what a plan file asks for, or one part asked for by options.
 *
 * @param file name of the plan file, without folders; empty where there is none
 * @param title heading of its outputs, may be empty
 * @param shelf presets its parts are made from
 * @param material what they are printed in, if it is said
 * @param stock hardware on hand
 * @param truck the truck they go on, if the plan describes one
 * @param fit the same, solved, unless it is at fault
 * @param mayLackRooms whether a table could not be read that may stand for a place where items go
 * @param requests the parts, in the order of the file
 * @param faults what is wrong with the file so far; values are checked when parts are made
 */
public record Plan(String file, String title, Shelf shelf, Optional<Material> material, Stock stock,
    Optional<Truck> truck, Optional<TruckFit> fit, boolean mayLackRooms, List<Request<?>> requests, List<Fault> faults) {
  public Plan {
    requests = List.copyOf(requests);
    faults = List.copyOf(faults);
  }

  /** The same with limits of printing and a load, if one is given, set for every part, over those of each. */
  public Plan with(Map<Limit, Double> limits, Optional<Axis> load) {
    List<Request<?>> changed = new ArrayList<>();
    requests.forEach(request -> changed.add(request.with(limits).loaded(load)));
    return new Plan(file, title, shelf, material, stock, truck, fit, mayLackRooms, changed, faults);
  }
}
