package outrigger.presets;

/**
 * A grade of sintered magnets, such as {@code N42}, at 20 degrees Celsius.
 *
 * @param remanenceMin least remanence, T
 * @param remanenceMax greatest remanence, T
 * @param loss remanence lost to warmth and regained on cooling, percent per kelvin
 * @param maximumTemperature degrees Celsius, above which strength is lost for good; flat discs lose it earlier
 */
public record MagnetGrade(String name, double remanenceMin, double remanenceMax, double loss,
    double maximumTemperature) implements Item {
  public MagnetGrade {
    Checks.text("name", name);
    Checks.positive("remanence-min", remanenceMin);
    Checks.positive("remanence-max", remanenceMax);
    Checks.zeroOrMore("loss", loss);
    Checks.positive("maximum-temperature", maximumTemperature);
    Checks.notAbove("remanence-min", remanenceMin, "remanence-max", remanenceMax);
  }
}
