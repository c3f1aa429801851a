package outrigger.shapes.mesh.spatial;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import outrigger.shapes.exact.Plane;
import outrigger.shapes.mesh.face.Faces;
import outrigger.shapes.mesh.meet.Contacts;
import outrigger.shapes.num.IntList;
import outrigger.shapes.num.LongMap;
import outrigger.shapes.num.Workers;

/**
 * Finds the facets of a soup that lie in a plane in which another needs a sheet: a sheet is for all of its plane. Planes
 * of facets that it passes over are not worked out.
 */
final class Coplanar {
  /** Facets that are worth a thread. */
  private static final int AT_ONCE = 1 << 13;

  private final Faces faces;
  private final int[] xyz;
  /** By the key of a direction, where in {@link #planes} the planes with sheets are that have it. */
  private final LongMap directions = new LongMap(64);
  /** Numbers of the planes with sheets, those of one direction together. */
  private final List<IntList> planes = new ArrayList<>();
  private final Set<Integer> entered = new HashSet<>();

  Coplanar(Faces faces, int[] xyz) {
    this.faces = faces;
    this.xyz = xyz;
  }

  /** Marks them; some threads look for them. */
  void spread(Contacts contacts, Workers workers) {
    for (int f = 0; f < faces.faceCount(); f++) {
      if (contacts.needsSheet(f)) {
        enter(faces.face(f).plane);
      }
    }
    workers.split(planes.isEmpty() ? 0 : faces.faceCount(), AT_ONCE, (from, to) -> {
      for (int f = from; f < to; f++) {
        if (!contacts.needsSheet(f) && isOnAny(f)) {
          contacts.mark(f);
        }
      }
    });
  }

  private void enter(int number) {
    if (!entered.add(number)) {
      return;
    }
    Plane plane = faces.plane(number);
    long key = Plane.directionKey(plane.normal(0), plane.normal(1), plane.normal(2));
    int at = directions.get(key);
    if (at < 0) {
      at = planes.size();
      directions.put(key, at);
      planes.add(new IntList());
    }
    planes.get(at).add(number);
  }

  /** Whether a facet lies in a plane with a sheet. */
  private boolean isOnAny(int f) {
    int a = faces.halfEdges().from(3 * f);
    int b = faces.halfEdges().from(3 * f + 1);
    int c = faces.halfEdges().from(3 * f + 2);
    int at = directions.get(directionKey(3 * a, 3 * b, 3 * c));
    for (int i = 0; at >= 0 && i < planes.get(at).size(); i++) {
      Plane plane = faces.plane(planes.get(at).get(i));
      if (faces.side(a, plane) == 0 && faces.side(b, plane) == 0 && faces.side(c, plane) == 0) {
        return true;
      }
    }
    return false;
  }

  private long directionKey(int a, int b, int c) {
    long ux = xyz[b] - xyz[a];
    long uy = xyz[b + 1] - xyz[a + 1];
    long uz = xyz[b + 2] - xyz[a + 2];
    long vx = xyz[c] - xyz[a];
    long vy = xyz[c + 1] - xyz[a + 1];
    long vz = xyz[c + 2] - xyz[a + 2];
    return Plane.directionKey(uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx);
  }
}
