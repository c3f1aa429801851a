package outrigger.shapes.mesh.meet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import outrigger.shapes.exact.ExactPoint;
import outrigger.shapes.num.Grid;

/**
 * What a plane, not its own, cuts out of a face along the line in which the two planes cross: the places where something
 * changes, in order along an axis, and what lies between them.
 *
 * <p>Each edge of the face is looked at by the sides of its two ends, of nine cases: where it changes side, the face
 * begins or ends along the line there; where it only starts from the line, it does so on one side of the line alone.
 * Counting both sides of the line apart makes touching, standing on and crossing one rule.
 */
final class Section {
  /** Of faces that go clean through, by axis. */
  private static final Section[] THROUGH = {endless(0), endless(1), endless(2)};

  private final int axis;
  private final List<Place> places;

  /**
   * A place on the line.
   *
   * @param at where
   * @param halfEdge the edge that passes through the plane there; -1 where a corner of the face only touches it
   * @param above whether what lies beyond the line on the side of the plane's normal changes here
   * @param below whether what lies on the other side changes
   * @param own whether an edge begins or ends here across which its own operand goes on in the plane
   */
  record Place(ExactPoint at, int halfEdge, boolean above, boolean below, boolean own) {}

  Section(List<Place> places, int axis) {
    this.axis = axis;
    this.places = places;
    if (places.size() == 2) {
      if (compare(places.get(0), places.get(1)) > 0) {
        Collections.swap(places, 0, 1);
      }
    } else if (places.size() > 2) {
      places.sort(this::compare);
    }
  }

  /** Of a face that goes clean through and ends, on either side, farther away than any place that is asked about. */
  static Section through(int axis) {
    return THROUGH[axis];
  }

  /**
   * Of a face of which only the places that are asked about were worked out. What begins or ends lower counts as one place
   * far away, if the face then lies on the line, and what does higher as another.
   *
   * @param places those that were worked out; added to
   * @param comes whether the face lies on the line just below them
   */
  static Section part(List<Place> places, int axis, boolean comes) {
    boolean above = comes;
    boolean below = comes;
    for (Place place : places) {
      above ^= place.above;
      below ^= place.below;
    }
    if (comes) {
      places.add(new Place(far(axis, -1), 0, true, true, false));
    }
    if (above || below) {
      places.add(new Place(far(axis, 1), 0, above, below, false));
    }
    return new Section(places, axis);
  }

  private static Section endless(int axis) {
    List<Place> ends = new ArrayList<>();
    ends.add(new Place(far(axis, -1), 0, true, true, false));
    ends.add(new Place(far(axis, 1), 0, true, true, false));
    return new Section(ends, axis);
  }

  private static ExactPoint far(int axis, int way) {
    int far = way * 2 * Grid.LIMIT;
    return ExactPoint.of(axis == 0 ? far : 0, axis == 1 ? far : 0, axis == 2 ? far : 0);
  }

  private int compare(Place p, Place q) {
    return ExactPoint.compare(p.at, q.at, axis);
  }

  /** The lowest place. */
  ExactPoint low() {
    return places.get(0).at;
  }

  /** The highest place. */
  ExactPoint high() {
    return places.get(places.size() - 1).at;
  }

  /** The pieces of the line on which the face lies, in order; those of no length are left out. */
  List<Span> spans() {
    List<Span> spans = new ArrayList<>(places.size() / 2);
    boolean above = false;
    boolean below = false;
    boolean own = false;
    for (int i = 0; i + 1 < places.size(); i++) {
      Place place = places.get(i);
      Place next = places.get(i + 1);
      above ^= place.above;
      below ^= place.below;
      own ^= place.own;
      if ((above || below) && ExactPoint.compare(place.at, next.at, axis) < 0) {
        spans.add(new Span(place.at, next.at, place.halfEdge, next.halfEdge, above, below, own));
      }
    }
    return spans;
  }

  /**
   * Whether the two faces meet otherwise than by passing through each other: a corner or an edge of one in the other, or
   * two edges crossing.
   */
  static boolean isContact(Section p, List<Span> ofP, Section q, List<Span> ofQ) {
    return p.hasUncleanPlace(q, ofQ) || q.hasUncleanPlace(p, ofP);
  }

  private boolean hasUncleanPlace(Section other, List<Span> spans) {
    for (Place place : places) {
      for (Place its : other.places) {
        if (ExactPoint.compare(place.at, its.at, axis) == 0) {
          return true;
        }
      }
      for (Span span : spans) {
        if ((place.halfEdge < 0 || !span.isThrough()) && ExactPoint.compare(span.from(), place.at, axis) <= 0
            && ExactPoint.compare(place.at, span.to(), axis) <= 0) {
          return true;
        }
      }
    }
    return false;
  }

  /**
   * Whether the face of this section reaches into the inside of another.
   *
   * @param mine the spans of this section
   * @param others those of the other face
   */
  boolean enters(List<Span> mine, List<Span> others) {
    for (Span span : others) {
      if (span.isThrough()) {
        for (Place place : places) {
          if (ExactPoint.compare(span.from(), place.at, axis) < 0 && ExactPoint.compare(place.at, span.to(), axis) < 0) {
            return true;
          }
        }
        for (Span s : mine) {
          if (ExactPoint.compare(s.from(), span.to(), axis) < 0 && ExactPoint.compare(span.from(), s.to(), axis) < 0) {
            return true;
          }
        }
      }
    }
    return false;
  }
}
