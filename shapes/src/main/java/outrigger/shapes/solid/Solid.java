package outrigger.shapes.solid;

import java.util.ArrayList;
import java.util.List;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.Placement;

/**
 * The exact description of a solid, in millimetres, with no triangles yet.
 *
 * <p>Solids are values: every method returns a new one. Booleans are kept as one expression and evaluated whole.
 * Coplanar and touching faces are ordinary cases.
 */
public sealed interface Solid permits Prism, Revolution, Faceted, Placed, Union, Cut, Common {

  /** All of the given solids together. At least one. */
  static Solid union(List<? extends Solid> solids) {
    return new Union(List.copyOf(solids));
  }

  /** All of the given solids together. */
  static Solid union(Solid... solids) {
    return union(List.of(solids));
  }

  /** What all of the given solids have in common. At least one. */
  static Solid common(Solid... solids) {
    return new Common(List.of(solids));
  }

  /** This solid and the others together. Thousands joined one after the other are one union, not nested ones. */
  default Solid join(Solid... others) {
    List<Solid> all = new ArrayList<>(this instanceof Union union ? union.solids() : List.of(this));
    all.addAll(List.of(others));
    return union(all);
  }

  /** This solid with the others cut away. */
  default Solid cut(Solid... cutters) {
    return cut(List.of(cutters));
  }

  /** This solid with the others cut away; likewise one cut where it has been cut before. */
  default Solid cut(List<? extends Solid> cutters) {
    if (cutters.isEmpty()) {
      return this;
    }
    List<Solid> all = new ArrayList<>(this instanceof Cut cut ? cut.cutters() : List.of());
    all.addAll(cutters);
    return new Cut(this instanceof Cut cut ? cut.solid() : this, all);
  }

  /** Moved by millimetres. */
  default Solid move(double x, double y, double z) {
    return place(Placement.move(x, y, z));
  }

  /** Turned about an axis through the origin, degrees, counter-clockwise seen from the axis's positive end. */
  default Solid turn(Axis axis, double degrees) {
    return place(Placement.turn(axis, degrees));
  }

  /** Mirrored in the plane through the origin normal to an axis. */
  default Solid mirror(Axis normal) {
    return place(Placement.mirror(normal));
  }

  /** Placed anew. */
  default Solid place(Placement placement) {
    return new Placed(this, placement);
  }
}
