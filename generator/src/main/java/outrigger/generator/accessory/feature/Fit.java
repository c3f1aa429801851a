package outrigger.generator.accessory.feature;

/** What a screw does in its hole. */
public enum Fit {
  /** Passes with little play, ISO 273 fine series. */
  FINE,
  /** Passes, ISO 273 medium series. */
  MEDIUM,
  /** Passes with play to line holes up, ISO 273 coarse series. */
  COARSE,
  /** Cuts its own thread in the plastic. */
  PILOT,
  /** Runs into a brass insert melted into the hole. */
  INSERT,
  /** Passes, medium series, into a nut held in a hexagon pocket. */
  NUT;

  /** Whether the screw passes through and out of the part, its head on this side. */
  public boolean isThrough() {
    return isClearance() && this != NUT;
  }

  /** Whether the screw passes through without gripping. */
  public boolean isClearance() {
    return this == FINE || this == MEDIUM || this == COARSE || this == NUT;
  }
}
