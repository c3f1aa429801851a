package outrigger.generator.run;

import java.io.IOException;
import java.util.Optional;
import outrigger.generator.fit.TruckFit;
import outrigger.generator.joint.HardwareList;
import outrigger.generator.layout.Arrangement;

/**
 * What was worked out over all parts of a plan.
 *
 * @param hardware what they are assembled with
 * @param layout where items lie, empty where there are none
 * @param fit the truck, solved, where the plan describes one
 * @param standing how the finished truck stands, where it is solved
 */
public record Working(HardwareList hardware, Arrangement layout, Optional<TruckFit> fit,
    Optional<Standing> standing) {

  /** All of it, as members of an object. */
  public void write(Json json) throws IOException {
    json.object("assembly", one -> HardwareJson.write(one, hardware));
    if (fit.isPresent()) {
      json.object("truck", one -> FitJson.write(one, fit.get()));
    }
    if (standing.isPresent()) {
      json.object("standing", one -> standing.get().write(one));
    }
    if (!layout.fits().isEmpty()) {
      json.object("layout", one -> LayoutJson.write(one, layout));
    }
  }
}
