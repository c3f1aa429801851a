package outrigger.generator.joint;

/**
 * A joint with the length chosen for its screws.
 *
 * @param length mm
 */
public record Chosen(NamedJoint of, double length) {

  /** The screw as an article. */
  public Piece screw() {
    return Articles.of(of.joint().screw(), length);
  }

  /** How much of the thread the screw is in, at least, mm. */
  public double engagement() {
    return of.joint().engagement(length);
  }

  /** How far its end stands out behind the thread, at most, mm. */
  public double protrusion() {
    return of.joint().protrusion(length);
  }
}
