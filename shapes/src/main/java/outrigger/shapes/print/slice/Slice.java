package outrigger.shapes.print.slice;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import outrigger.shapes.profile.Section;

/** What a level plane cuts out of a solid; mm. */
public final class Slice {
  private final double z;
  private final List<double[]> loops;

  Slice(double z, List<double[]> loops) {
    this.z = z;
    this.loops = List.copyOf(loops);
  }

  /** Height of the plane, a half grid step off the grid, so that no corner of the mesh lies in it. */
  public double z() {
    return z;
  }

  /** x, y of each outline's corners, the first not repeated: outer ones counter-clockwise, holes clockwise. */
  public List<double[]> loops() {
    return loops.stream().map(double[]::clone).toList();
  }

  /** The outlines that are no holes. */
  public List<double[]> outer() {
    return loops.stream().filter(loop -> Outline.area(loop) > 0).toList();
  }

  /** Area, holes taken off, mm^2. */
  public double area() {
    DoubleSummaryStatistics areas = new DoubleSummaryStatistics();
    loops.forEach(loop -> areas.accept(Outline.area(loop)));
    return areas.getSum();
  }

  /** The area with its true corners. */
  public Section section() {
    return Section.of(loops);
  }

  /**
   * The area with fewer corners: corners nearer to the line of their neighbours than a distance are left out.
   *
   * @param within the distance, mm
   */
  public Section section(double within) {
    return Section.of(loops.stream().map(loop -> Outline.simplified(loop, within)).toList());
  }
}
