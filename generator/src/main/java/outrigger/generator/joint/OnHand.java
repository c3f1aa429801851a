package outrigger.generator.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import outrigger.generator.param.BadDimension;
import outrigger.generator.param.NearMiss;
import outrigger.presets.DiscMagnet;
import outrigger.presets.HeatSetInsert;
import outrigger.presets.LengthText;
import outrigger.presets.Nut;
import outrigger.presets.Screw;
import outrigger.presets.Shelf;
import outrigger.presets.Washer;

/**
 * So many of one article in a drawer.
 *
 * @param piece the article, as lists of hardware call it
 */
public record OnHand(Piece piece) {
  private static final Pattern SCREW = Pattern.compile("(\\S+) x (\\S+)");
  private static final Pattern STANDARD = Pattern.compile(" \\(.*\\)$");
  private static final int MOST = 9999;
  private static final double LONGEST = 200;
  private static final String EXAMPLE = "Write it such as M3-socket x 10:20, M3 nut:50, M3-short insert:12 or "
      + "6x2 magnet:8.";

  /**
   * Reads {@code ARTICLE:COUNT}, the article as lists of hardware call it; a standard in brackets may be left out.
   *
   * @throws BadDimension where the text is none
   */
  public static OnHand parse(String text, Shelf shelf) {
    int colon = text.lastIndexOf(':');
    String count = text.substring(colon + 1).strip();
    if (colon < 0 || !count.matches("[0-9]{1,4}") || Integer.parseInt(count) < 1) {
      throw new BadDimension("hardware", "which says no count from 1 to " + MOST + " behind a colon", EXAMPLE);
    }
    String name = text.substring(0, colon).strip();
    Matcher screw = SCREW.matcher(name);
    Piece one = screw.matches() ? screw(screw.group(1), screw.group(2), shelf) : other(name, shelf);
    return new OnHand(one.times(Integer.parseInt(count)));
  }

  private static Piece screw(String name, String length, Shelf shelf) {
    Optional<Screw> screw = shelf.find(Screw.class, name);
    if (screw.isEmpty()) {
      throw new BadDimension("hardware", "and there is no screw " + name, NearMiss.advice(name, shelf.names(Screw.class)));
    }
    OptionalDouble mm = LengthText.parse(length).value();
    if (mm.isEmpty() || !(mm.getAsDouble() > 0 && mm.getAsDouble() <= LONGEST)) {
      throw new BadDimension("hardware", "in which " + length + " is no length up to " + Lengths.words(LONGEST) + " mm",
          EXAMPLE);
    }
    return Articles.of(screw.get(), mm.getAsDouble());
  }

  private static Piece other(String name, Shelf shelf) {
    List<Piece> known = new ArrayList<>();
    shelf.items(Nut.class).forEach(nut -> known.add(Articles.of(nut)));
    shelf.items(Washer.class).forEach(washer -> known.add(Articles.of(washer)));
    shelf.items(HeatSetInsert.class).forEach(insert -> known.add(Articles.of(insert)));
    shelf.items(DiscMagnet.class).forEach(magnet -> known.add(Articles.of(magnet)));
    return known.stream().filter(piece -> piece.article().equals(name)
        || STANDARD.matcher(piece.article()).replaceFirst("").equals(name)).findFirst()
        .orElseThrow(() -> new BadDimension("hardware", "and nothing is called that",
            NearMiss.advice(name, known.stream().map(Piece::article).toList()) + " " + EXAMPLE));
  }
}
