package outrigger.shapes.print.spot;

import outrigger.shapes.print.ball.BallProbe;
import outrigger.shapes.print.facet.Vec;
import outrigger.shapes.print.tree.FacetTree;

/**
 * What is measured and how far.
 *
 * @param inward whether the solid is measured, not the air
 * @param bound widths below it are kept as spots, mm
 * @param enough where a ball out of a corner stops growing, mm, at least the bound
 * @param most the greatest width told apart, mm, at least enough
 * @param shown widths up to which the least of each facet is wanted, mm, from enough to most
 * @param spacing of samples, mm
 * @param mapped whether all places measured are kept, for a map
 */
public record Reach(boolean inward, double bound, double enough, double most, double shown, double spacing,
    boolean mapped) {
  /** One that asks for all widths up to one, mm, and for none beyond. */
  public static Reach upTo(double width, boolean inward, double spacing, boolean mapped) {
    return new Reach(inward, width, width, width, width, spacing, mapped);
  }

  /** A probe that looks as far; one for each thread. */
  public BallProbe probe(FacetTree tree) {
    return new BallProbe(tree, most, enough);
  }

  /** Where balls lie, seen from the surface. */
  public Vec direction(Vec normal) {
    return normal.times(inward ? -1 : 1);
  }
}
