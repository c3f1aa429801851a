package outrigger.presets;

import java.util.List;

/**
 * A column of a table: what its values must be.
 *
 * @param name name in files, such as {@code head-diameter}
 * @param kind what a value looks like
 * @param unit unit of its numbers, empty for texts and bare numbers
 * @param zero whether 0 is let through; below 0 never is
 * @param most largest number let through
 * @param choices words let through, where the kind is CHOICE
 */
record Column(String name, Kind kind, String unit, boolean zero, double most, List<String> choices) {
  /** What a value looks like. */
  enum Kind { NAME, TEXT, CHOICE, LENGTH, LENGTHS, NUMBER }

  /** Longest length of an item, mm: no part may reach beyond it, so nothing longer can be put in one. */
  static final double LONGEST = 1024;

  static Column naming() {
    return new Column("name", Kind.NAME, "", false, 0, List.of());
  }

  static Column text(String name) {
    return new Column(name, Kind.TEXT, "", false, 0, List.of());
  }

  static Column choice(String name, String... choices) {
    return new Column(name, Kind.CHOICE, "", false, 0, List.of(choices));
  }

  /** A length above 0. */
  static Column length(String name) {
    return new Column(name, Kind.LENGTH, "mm", false, LONGEST, List.of());
  }

  /** A length that may be 0. */
  static Column lengthOrZero(String name) {
    return new Column(name, Kind.LENGTH, "mm", true, LONGEST, List.of());
  }

  /** Lengths above 0, each longer than the one before. */
  static Column lengths(String name) {
    return new Column(name, Kind.LENGTHS, "mm", false, LONGEST, List.of());
  }

  /** A number above 0. */
  static Column number(String name, String unit, double most) {
    return new Column(name, Kind.NUMBER, unit, false, most, List.of());
  }

  Column orZero() {
    return new Column(name, kind, unit, true, most, choices);
  }

  Column upTo(double largest) {
    return new Column(name, kind, unit, zero, largest, choices);
  }

  boolean isLength() {
    return kind == Kind.LENGTH || kind == Kind.LENGTHS;
  }

  /** What may be written, for a message: "a length above 0 and up to 1024 mm, such as 6, ...". */
  String wanted() {
    String range = (zero ? "from 0" : "above 0") + " up to " + Datum.print(most) + (unit.isEmpty() ? "" : " " + unit);
    return switch (kind) {
      case NAME -> "a name of letters, digits, points, hyphens, plus signs or underscores in quotes";
      case TEXT -> "a text in quotes";
      case CHOICE -> Words.or(choices);
      case LENGTH -> "a length " + range + ", such as 6, \"6mm\", \"0.25in\" or \"40thou\"";
      case LENGTHS -> "a list of lengths in rising order, each " + range + ", such as [8, 10, 12]";
      case NUMBER -> "a number " + range;
    };
  }
}
