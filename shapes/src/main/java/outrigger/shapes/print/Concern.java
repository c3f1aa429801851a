package outrigger.shapes.print;

/**
 * One thing about a sound part that a careful maker would worry about, and where.
 *
 * @param rule short name of what is measured, lower case with dashes, such as {@code thin-wall}
 * @param severity whether it stops the part
 * @param x place, mm, in the mesh's own axes
 * @param y place, mm
 * @param z place, mm
 * @param measured what was measured there, in the limit's unit
 * @param bound the value it was held against, as set for this part
 * @param limit which limit that is: gives its key, unit and standing
 * @param area how much surface is concerned, mm^2; 0 where an area has no meaning
 * @param message what is the matter, in a maker's words, without full stop and without the place
 * @param advice what to change, a sentence
 */
public record Concern(String rule, Severity severity, double x, double y, double z, double measured, double bound,
    Limit limit, double area, String message, String advice) {
  public Concern {
    if (!(Double.isFinite(x) && Double.isFinite(y) && Double.isFinite(z) && Double.isFinite(measured)
        && Double.isFinite(bound) && area >= 0)) {
      throw new IllegalArgumentException(rule + " with a number that is none: " + x + ", " + y + ", " + z + ", "
          + measured + ", " + bound + ", " + area);
    }
  }
}
