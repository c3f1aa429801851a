package outrigger.shapes.mesh.face;

/**
 * One flat face of an operand, as its directed edges: matter lies to the left, seen from outside.
 *
 * <p>Working data: the arrays are shared, not copied.
 */
public final class Face {
  /** Number of the operand whose boundary it is part of. */
  public final int operand;
  /** Number of its plane; -1 until it has one. */
  public int plane = -1;
  /** Whether it looks the way the plane's normal points. */
  public final boolean up;
  /** Number of its first half-edge among those of all faces; the others follow. */
  public final int first;
  /** Vertex each edge starts at. */
  public final int[] from;
  /** Vertex each edge ends at. */
  public final int[] to;
  /** Face on the other side of each edge; -1 where that is not known, as in a soup. */
  public final int[] across;
  /** Made when first asked for, perhaps by several threads: all alike. */
  private EdgeBlocks blocks;

  Face(int operand, boolean up, int first, int[] from, int[] to, int[] across) {
    this.operand = operand;
    this.up = up;
    this.first = first;
    this.from = from;
    this.to = to;
    this.across = across;
  }

  /** How many edges it has. */
  public int edges() {
    return from.length;
  }

  /** Its edges in blocks, or null if they are few. */
  public EdgeBlocks blocks(Faces faces) {
    if (from.length < EdgeBlocks.MANY) {
      return null;
    }
    EdgeBlocks known = blocks;
    if (known == null) {
      known = new EdgeBlocks(faces, this);
      blocks = known;
    }
    return known;
  }
}
