package outrigger.generator.magnet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What to mind with magnets, in short sentences, those that concern this hold. */
public final class Cautions {
  /** Temperature from which flat discs may lose strength for good, degrees C; own judgement. */
  private static final double WARM = 60;
  /** Thickness to diameter below which a disc does not stand what its grade is listed for; suppliers' tables. */
  private static final double STOCKY = 0.7;

  private Cautions() {}

  /** Every caution; never empty. */
  public static List<String> of(Hold hold) {
    List<String> cautions = new ArrayList<>();
    cautions.add("Swallowed magnets are an emergency: two can pinch through the gut. "
        + "Keep them captive, and from children.");
    cautions.add(String.format(Locale.ROOT, "Toy rules (16 CFR 1262) allow loose magnets a flux index below 50 kG2 mm2; "
        + "one of these has about %.0f.", hold.fluxIndex()));
    cautions.add(String.format(Locale.ROOT, "Keep them 15 cm from pacemakers and other implants; one side alone has "
        + "1 mT as far as %.0f mm.", hold.oneMillitesla()));
    cautions.add("They snap together, pinch and splinter: protect your eyes, do not drill or grind them.");
    cautions.add(heat(hold));
    cautions.add("What real magnets, plating and prints do differs: an estimate, so try it gently first.");
    return cautions;
  }

  private static String heat(Hold hold) {
    HoldParams p = hold.given();
    boolean flat = p.stack() * p.magnet().thickness() < STOCKY * p.magnet().diameter();
    if (p.temperature() > WARM) {
      return "Above 60 degrees C " + (flat ? "discs as flat as these" : "discs") + " may lose strength for good, more "
          + "than the table of grades says; this is not in the figures.";
    }
    return "Heat ruins them: keep irons, hot nozzles and inserts away.";
  }
}
