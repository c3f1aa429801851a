package outrigger.shapes.solid;

import outrigger.shapes.num.Grid;
import outrigger.shapes.num.ShapeException;
import outrigger.shapes.profile.Profile;

/**
 * A profile in the XY plane, extruded along Z from {@code bottom} to {@code top}.
 *
 * @param profile the cross section at the bottom (before its rim is broken)
 * @param bottom z of the lower end face, mm
 * @param top z of the upper end face, mm, above {@code bottom}
 * @param draftDegrees taper from the Z direction: positive makes solid matter thinner towards the top (outer walls
 *     lean in, holes widen), negative the other way; 0 for straight walls
 * @param bottomEdge how the lower rim is broken; outer rims and hole rims alike lose matter
 * @param topEdge how the upper rim is broken
 */
public record Prism(Profile profile, double bottom, double top, double draftDegrees, EdgeForm bottomEdge,
    EdgeForm topEdge) implements Solid {

  /**
   * Checks what can be told before building.
   *
   * @throws ShapeException if the profile is empty, the top is not above the bottom, the draft is 89 degrees or more
   *     either way, or the rims take more than the height
   */
  public Prism {
    if (profile.isEmpty()) {
      throw new ShapeException("the profile of a prism is empty", "Give it an area.");
    }
    if (Grid.fromMm(top) <= Grid.fromMm(bottom)) {
      throw new ShapeException("a prism from " + bottom + " up to " + top + " mm has no height",
          "Put its top above its bottom.");
    }
    if (!(Math.abs(draftDegrees) < 89)) {
      throw new ShapeException("a draft of " + draftDegrees + " degrees; the limit is 89 either way",
          "Use a smaller draft.");
    }
    double rims = bottomEdge.height() + topEdge.height();
    if (!(rims <= top - bottom)) {
      throw new ShapeException("rims of " + rims + " mm together do not fit a prism " + (top - bottom) + " mm high",
          "Use smaller chamfers or fillets.");
    }
  }

  /** A straight prism with sharp rims. */
  public static Prism of(Profile profile, double bottom, double top) {
    return new Prism(profile, bottom, top, 0, EdgeForm.sharp(), EdgeForm.sharp());
  }

  /** The same with drafted walls. */
  public Prism withDraft(double degrees) {
    return new Prism(profile, bottom, top, degrees, bottomEdge, topEdge);
  }

  /** The same with its lower rim broken. */
  public Prism withBottomEdge(EdgeForm form) {
    return new Prism(profile, bottom, top, draftDegrees, form, topEdge);
  }

  /** The same with its upper rim broken. */
  public Prism withTopEdge(EdgeForm form) {
    return new Prism(profile, bottom, top, draftDegrees, bottomEdge, form);
  }
}
