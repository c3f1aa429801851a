package outrigger.shapes.print;

/**
 * What a printer and its maker set: limits, and the settings that mass and time are reckoned from.
 *
 * <p>No standard gives numbers for these: ISO/ASTM 52910:2018 says in its scope that it holds no process-specific data.
 * Every standard value is therefore common practice of material extrusion, and its {@link #standing()} says so. A
 * printer's own table row and a part's own wish come before it.
 */
public enum Limit {
  NOZZLE("nozzle", "mm", 0.4, 0.05, 3, "the printer's nozzle bore"),
  EXTRUSION_WIDTH("extrusion-width", "mm", 0.45, 0.05, 4,
      "width of one printed line, 100 to 125 % of the nozzle: common practice"),
  LAYER("layer", "mm", 0.2, 0.01, 2, "the printer's layer height"),
  FIRST_LAYER("first-layer", "mm", 0.2, 0.01, 2, "height of the printer's first layer"),
  BED_X("bed-x", "mm", 220, 1, 2000, "the printer's room from left to right"),
  BED_Y("bed-y", "mm", 220, 1, 2000, "the printer's room from front to back"),
  BED_Z("bed-z", "mm", 240, 1, 2000, "the printer's room upward"),
  OVERHANG("overhang", "degree", 45, 0, 89,
      "steepest slope printed without support, from the vertical: common practice, 50 to 60 with good cooling"),
  LEDGE("ledge", "mm", 0.5, 0, 5,
      "flat ledge that holds without support, held on one side: published trials pass 0.5 to 1.5 mm"),
  BRIDGE("bridge", "mm", 10, 0, 200, "span to doubt: common practice, guides range from 5 to 80 mm"),
  BRIDGE_MOST("bridge-most", "mm", 25, 0, 400, "span not to try: common practice"),
  ROOF_HOLE("roof-hole", "mm", 6, 0, 100,
      "widest round hole lying on its side whose roof sags too little to matter: common practice"),
  WALL("minimum-wall", "mm", 0.9, 0.05, 20, "thinnest wall to rely on, two lines: common practice"),
  LEAST_WALL("least-wall", "mm", 0.45, 0.05, 10, "thinnest wall that is printed at all, one line: common practice"),
  FLOOR("least-floor", "mm", 0.4, 0.01, 10, "thinnest level sheet that closes, two layers: common practice"),
  GAP("least-gap", "mm", 0.45, 0, 10, "narrowest gap that stays open, one line's width: common practice"),
  HOLE("least-hole", "mm", 2, 0, 20, "smallest hole to rely on; smaller ones are drilled after: common practice"),
  STROKE("least-stroke", "mm", 0.45, 0, 10, "thinnest rib, pin or stroke of raised text, one line: common practice"),
  CONTACT("least-contact", "mm2", 20, 0, 10000, "least area on the bed that holds a part: common practice"),
  SLENDERNESS("most-slender", "times", 8, 1, 100,
      "height over the least width of the foot from which a part may be knocked over: common practice"),
  BEYOND("most-beyond", "mm", 5, 0, 500,
      "how far the centre of mass may lie beyond the foot, the first layer's grip holding it: own choice"),
  BRIM("brim", "mm", 5, 0, 50, "brim to leave room for round the part: common practice"),
  FOOT("elephant-foot", "mm", 0.2, 0, 2,
      "how far the first layers bulge, each side: common practice, 0.1 to 0.3 mm over 1 to 3 layers"),
  HEIGHT_ERROR("height-error", "mm", 0.05, 0, 2,
      "how far a stated height may miss the layers before it is a caution: own choice, a quarter of a layer"),
  DENSITY("density", "g/cm3", 1.24, 0.1, 20, "of solid filament, from the material: typical values of data bases"),
  FILAMENT("filament", "mm", 1.75, 0.5, 5, "diameter of the filament"),
  OUTLINES("outlines", "lines", 3, 1, 20, "lines side by side in every wall: common practice, 2 to 4"),
  SOLID_LAYERS("solid-layers", "layers", 4, 0, 50, "solid layers below and above: common practice, 3 to 5"),
  INFILL("infill", "percent", 20, 0, 100, "share of plastic inside: common practice, 15 to 25"),
  SPEED("speed", "mm/s", 50, 1, 1000, "mean speed of a printed line: common practice"),
  LAYER_PAUSE("layer-pause", "s", 2, 0, 60, "time a change of layer takes, travel included: own estimate");

  private final String key;
  private final String unit;
  private final double standard;
  private final double least;
  private final double most;
  private final String standing;

  Limit(String key, String unit, double standard, double least, double most, String standing) {
    this.key = key;
    this.unit = unit;
    this.standard = standard;
    this.least = least;
    this.most = most;
    this.standing = standing;
  }

  /** Its name where it is set, lower case with dashes. */
  public String key() {
    return key;
  }

  /** Unit of its value, such as {@code mm}, {@code degree} or {@code mm2}. */
  public String unit() {
    return unit;
  }

  /** Its value where nothing else is said. */
  public double standard() {
    return standard;
  }

  /** Smallest value taken. */
  public double least() {
    return least;
  }

  /** Largest value taken. */
  public double most() {
    return most;
  }

  /** What it is and where the standard value comes from. */
  public String standing() {
    return standing;
  }
}
