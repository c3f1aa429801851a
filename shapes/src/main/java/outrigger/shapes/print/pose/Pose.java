package outrigger.shapes.print.pose;

/**
 * A way to lay a part on the bed.
 *
 * @param downX direction that faces the bed, a unit vector in the part's axes
 * @param downY direction that faces the bed
 * @param downZ direction that faces the bed
 * @param contact area on the bed, mm^2
 * @param support volume below slopes and roofs beyond the overhang limit down to the bed, mm^3: at most what supports fill
 * @param height over the bed, mm
 * @param tilt how far the part must be tilted to fall, degrees; 0 where it does not stand
 * @param layersAcross whether layers lie across the part's longest direction, where a pull or a bend parts them easiest
 * @param fits whether it fits the bed with its brim, turned about the vertical as it is
 */
record Pose(double downX, double downY, double downZ, double contact, double support, double height, double tilt,
    boolean layersAcross, boolean fits) {

  /** The same, known to need no support: what leans beyond the limit is held by what is beside it. */
  Pose carried() {
    return new Pose(downX, downY, downZ, contact, 0, height, tilt, layersAcross, fits);
  }

  /** Whether the same direction faces the bed. */
  boolean liesLike(Pose other) {
    return downX == other.downX && downY == other.downY && downZ == other.downZ;
  }

  /** Whether it stands for itself. */
  boolean stands() {
    return tilt >= PoseRank.LEAST_TILT;
  }
}
