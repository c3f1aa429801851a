package outrigger.generator.joint;

import outrigger.generator.param.Origin;

/**
 * A joint of a truck.
 *
 * @param part the part that states it
 * @param set where it is one of several that are used one at a time, a name they share in the whole truck; else empty
 * @param where where the part was asked for
 */
public record NamedJoint(String part, Joint joint, String set, Origin where) {

  /** What it is called, such as {@code cab-front-left, flange to rail}. */
  public String name() {
    return part + ", " + joint.name();
  }
}
