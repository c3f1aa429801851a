package outrigger.generator.joint;

import java.util.List;
import outrigger.generator.param.Origin;

/**
 * A part of a truck with what it is assembled with.
 *
 * @param part its name
 * @param request name of what was asked for; parts of one set share it
 * @param where where it was asked for
 */
public record Fitted(String part, String request, Fixings fixings, Origin where) {

  /** Its joints, each knowing the part. */
  List<NamedJoint> joints() {
    return fixings.joints().stream().map(joint -> new NamedJoint(part, joint,
        joint.oneOf().isEmpty() ? "" : request + " " + joint.oneOf(), where)).toList();
  }
}
