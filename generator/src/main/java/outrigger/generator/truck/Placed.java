package outrigger.generator.truck;

import outrigger.generator.accessory.Part;
import outrigger.generator.param.ParamValues;
import outrigger.shapes.num.Placement;
import outrigger.shapes.solid.Solid;

/**
 * A printed part at its place on the truck.
 *
 * @param name of the part, which is that of its file
 * @param kind such as {@code body-mount}
 * @param part in its build pose
 * @param values its parameters
 * @param record the same as the record of its kind
 * @param pose from the build pose to the truck's axes
 */
public record Placed(String name, String kind, Part part, ParamValues<?> values, Record record, Placement pose) {

  /** Its shape where it sits on the truck. */
  public Solid solid() {
    return part.solid().place(pose);
  }
}
