package outrigger.shapes.print.layer;

import java.util.List;
import outrigger.shapes.profile.Section;

/**
 * A piece of one layer that stands out over the layer below, its underside beyond the overhang limit; mm.
 *
 * @param layer number of the layer, 0 on the bed
 * @param z height of the layer's lower face
 * @param piece what stands out
 * @param starts whether nothing below carries it anywhere: something starts in the air
 * @param span longest bead that is held at both ends, in the direction that suits best; 0 if there is none
 * @param alongX that direction
 * @param alongY that direction
 * @param midX middle of that bead
 * @param midY middle of that bead
 * @param loose points that stand out too far
 * @param free what of it is not held at both ends
 * @param outmost where it stands out farthest
 * @param rim its edges
 * @param patches undersides within this layer, with their areas
 */
public record Hang(int layer, double z, Section piece, boolean starts, double span, double alongX, double alongY,
    double midX, double midY, OutPoints loose, FreePart free, Outmost outmost, Rim rim, List<Patch> patches) {
  public Hang {
    patches = List.copyOf(patches);
  }

  /** How far it stands out from what carries it where it is not held at both ends, mm; 0 if it is everywhere. */
  public double depth() {
    return loose.most();
  }

  /** Area of its undersides as seen from below, mm^2. */
  public double area() {
    double sum = 0;
    for (Patch patch : patches) {
      sum += patch.area();
    }
    return sum;
  }

  /** Whether it stands out farthest at a corner alone, not along an edge. */
  public boolean isPeaked() {
    return outmost != Outmost.EDGE;
  }

  /** The same, told to be no wider than a ledge may be but for its corners. */
  Hang narrowButCorners() {
    return new Hang(layer, z, piece, starts, span, alongX, alongY, midX, midY, loose, free, Outmost.SQUARE_CORNERS, rim,
        patches);
  }

  /** What of a piece stands out farthest. */
  public enum Outmost {
    /** An edge, throughout. */
    EDGE,
    /** A corner. */
    CORNER,
    /** Right-angled corners of a ledge whose edges stand out no further than a ledge may. */
    SQUARE_CORNERS
  }
}
