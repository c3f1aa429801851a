package outrigger.presets;

/**
 * Where a preset value comes from.
 *
 * @param kind what standing it has
 * @param text the title of the source, or what the practice is
 */
public record Source(Kind kind, String text) {
  /** Standing of a value. */
  public enum Kind { STANDARD, COMMON_PRACTICE, INVENTED_DEMO, USER }
}
