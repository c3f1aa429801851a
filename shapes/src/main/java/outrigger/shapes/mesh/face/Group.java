package outrigger.shapes.mesh.face;

/**
 * Numbers of groups: the faces of one plane that look the same way are one, and what of them bounds the result is outlined
 * together, so that no seam is left between them.
 */
public final class Group {
  private Group() {}

  /** Number of the faces of a plane that look up or down it. */
  public static int of(int plane, boolean up) {
    return 2 * plane + (up ? 1 : 0);
  }

  /** The group of the faces of the same plane that look the other way. */
  public static int turned(int group) {
    return group ^ 1;
  }

  /** The plane of a group. */
  public static int plane(int group) {
    return group / 2;
  }

  /** Whether its faces look the way the plane's normal points. */
  public static boolean isUp(int group) {
    return group % 2 == 1;
  }
}
