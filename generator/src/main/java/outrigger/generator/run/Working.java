package outrigger.generator.run;

import java.io.IOException;
import outrigger.generator.joint.HardwareList;
import outrigger.generator.layout.Arrangement;

/**
 * What was worked out over all parts of a plan.
 *
 * @param hardware what they are assembled with
 * @param layout where items lie, empty where there are none
 */
public record Working(HardwareList hardware, Arrangement layout) {

  /** All of it, as members of an object. */
  public void write(Json json) throws IOException {
    json.object("assembly", one -> HardwareJson.write(one, hardware));
    if (!layout.fits().isEmpty()) {
      json.object("layout", one -> LayoutJson.write(one, layout));
    }
  }
}
