package outrigger.shapes.mesh.meet;

import java.util.HashMap;
import java.util.Map;
import outrigger.shapes.exact.ExactPoint;
import outrigger.shapes.mesh.face.Faces;

/** The points in which three planes meet, each worked out once. */
final class PlaneMeetings {
  private final Faces faces;
  private final Map<Meeting, ExactPoint> known = new HashMap<>();

  /** Three planes, in order of their numbers. */
  private record Meeting(int p, int q, int r) {
    @Override
    public boolean equals(Object other) {
      return other instanceof Meeting m && p == m.p && q == m.q && r == m.r;
    }

    /** Spread wide: of numbers that run up to a thousand, what a record makes up lets hundreds of triples fall together. */
    @Override
    public int hashCode() {
      int hash = (p * 0x9E3779B1 ^ q) * 0x9E3779B1 ^ r;
      return hash * 0x9E3779B1;
    }
  }

  /** None yet; the faces know the planes. */
  PlaneMeetings(Faces faces) {
    this.faces = faces;
  }

  /** Where three planes meet, in whatever order their numbers come. */
  ExactPoint of(int p, int q, int r) {
    int low = Math.min(p, Math.min(q, r));
    int high = Math.max(p, Math.max(q, r));
    return known.computeIfAbsent(new Meeting(low, p + q + r - low - high, high),
        m -> ExactPoint.meeting(faces.plane(m.p), faces.plane(m.q), faces.plane(m.r)).in(m.p, m.q, m.r));
  }
}
