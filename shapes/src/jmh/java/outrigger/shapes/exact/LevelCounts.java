package outrigger.shapes.exact;

/** How many exact decisions rested on each level of arithmetic since the last question. */
public record LevelCounts(long doubles, long words, long big) {

  /** Whether this process counts decisions. */
  public static boolean areKept() {
    return Level.COUNTED;
  }

  /** The counts, which begin anew from here. */
  public static LevelCounts take() {
    return new LevelCounts(Level.DOUBLES.take(), Level.WORDS.take(), Level.BIG.take());
  }
}
