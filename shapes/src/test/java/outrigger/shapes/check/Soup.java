package outrigger.shapes.check;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import outrigger.shapes.mesh.Mesh;

/** Facets in the making: a mesh's parts as tests put them together, spoil them and turn them about. Grid units. */
public final class Soup {
  private static final int[][] BOX = {{0, 2, 3, 1}, {4, 5, 7, 6}, {0, 1, 5, 4}, {1, 3, 7, 5}, {3, 2, 6, 7},
      {2, 0, 4, 6}};

  private final List<int[]> facets = new ArrayList<>();

  /** Adds a facet by its corners. */
  public Soup facet(int[] a, int[] b, int[] c) {
    facets.add(new int[] {a[0], a[1], a[2], b[0], b[1], b[2], c[0], c[1], c[2]});
    return this;
  }

  /** Adds a flat loop of corners, cut into facets from its first corner. */
  public Soup fan(int[]... loop) {
    for (int i = 2; i < loop.length; i++) {
      facet(loop[0], loop[i - 1], loop[i]);
    }
    return this;
  }

  /** Adds a box, two facets a side: bottom, top, front, right, back, left. */
  public Soup box(int x0, int y0, int z0, int x1, int y1, int z1) {
    int[][] p = new int[8][];
    for (int i = 0; i < 8; i++) {
      p[i] = new int[] {(i & 1) == 0 ? x0 : x1, (i & 2) == 0 ? y0 : y1, (i & 4) == 0 ? z0 : z1};
    }
    for (int[] q : BOX) {
      fan(p[q[0]], p[q[1]], p[q[2]], p[q[3]]);
    }
    return this;
  }

  /** Adds all facets of another. */
  public Soup add(Soup other) {
    other.facets.forEach(f -> facets.add(f.clone()));
    return this;
  }

  /** Takes a facet away. */
  public Soup remove(int facet) {
    facets.remove(facet);
    return this;
  }

  /** Keeps the first facets alone. */
  public Soup facetsOnly(int n) {
    facets.subList(n, size()).clear();
    return this;
  }

  /** Turns facets over, from one number up to before another. */
  public Soup flip(int from, int to) {
    for (int f = from; f < to; f++) {
      int[] p = facets.get(f);
      for (int k = 0; k < 3; k++) {
        int t = p[3 + k];
        p[3 + k] = p[6 + k];
        p[6 + k] = t;
      }
    }
    return this;
  }

  /** Turns all facets over. */
  public Soup flip() {
    return flip(0, size());
  }

  /** Moves all corners at one place to another. */
  public Soup moveVertex(int[] from, int[] to) {
    for (int f = 0; f < size(); f++) {
      for (int c = 0; c < 3; c++) {
        moveCorner(f, c, from, to);
      }
    }
    return this;
  }

  /** Moves one corner of one facet alone, if it is at the place. */
  public Soup moveCorner(int facet, int corner, int[] from, int[] to) {
    int[] p = facets.get(facet);
    if (p[3 * corner] == from[0] && p[3 * corner + 1] == from[1] && p[3 * corner + 2] == from[2]) {
      System.arraycopy(to, 0, p, 3 * corner, 3);
    }
    return this;
  }

  /** A corner's place. */
  public int[] corner(int facet, int corner) {
    int[] p = facets.get(facet);
    return new int[] {p[3 * corner], p[3 * corner + 1], p[3 * corner + 2]};
  }

  /** Moves everything. */
  public Soup move(int dx, int dy, int dz) {
    for (int[] p : facets) {
      for (int c = 0; c < 9; c += 3) {
        p[c] += dx;
        p[c + 1] += dy;
        p[c + 2] += dz;
      }
    }
    return this;
  }

  /** Swaps the axes round (x to y to z to x), a turn of a third about the space diagonal. */
  public Soup cycle() {
    for (int[] p : facets) {
      for (int c = 0; c < 9; c += 3) {
        int z = p[c + 2];
        p[c + 2] = p[c + 1];
        p[c + 1] = p[c];
        p[c] = z;
      }
    }
    return this;
  }

  /** Turns everything by a quarter about Z. */
  public Soup quarter() {
    for (int[] p : facets) {
      for (int c = 0; c < 9; c += 3) {
        int x = p[c];
        p[c] = -p[c + 1];
        p[c + 1] = x;
      }
    }
    return this;
  }

  /** Mirrors x and turns all facets over, so that outside stays outside. */
  public Soup mirror() {
    for (int[] p : facets) {
      for (int c = 0; c < 9; c += 3) {
        p[c] = -p[c];
      }
    }
    return flip();
  }

  /** Puts the facets in reverse order. */
  public Soup reverseOrder() {
    Collections.reverse(facets);
    return this;
  }

  /** A copy to go on from. */
  public Soup copy() {
    return new Soup().add(this);
  }

  /** Number of facets. */
  public int size() {
    return facets.size();
  }

  /** The welded mesh. */
  public Mesh mesh() {
    int[] xyz = new int[9 * size()];
    int[] corners = new int[3 * size()];
    for (int f = 0; f < size(); f++) {
      System.arraycopy(facets.get(f), 0, xyz, 9 * f, 9);
    }
    for (int c = 0; c < corners.length; c++) {
      corners[c] = c;
    }
    return Mesh.of(xyz, corners);
  }
}
