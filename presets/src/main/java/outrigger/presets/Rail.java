package outrigger.presets;

import java.util.List;

/**
 * A chassis rail, standing on edge; mm.
 *
 * @param form {@code plate}, {@code channel} or {@code box}
 * @param height top to bottom of the web
 * @param web thickness of the web
 * @param flange width of the flanges from the outside of the web, 0 for a plate
 * @param spacing inside to inside of the two webs
 */
public record Rail(String name, String form, double height, double web, double flange, double spacing)
    implements Item {
  private static final List<String> FORMS = List.of("plate", "channel", "box");

  public Rail {
    Checks.text("name", name);
    Checks.positive("height", height);
    Checks.positive("web", web);
    Checks.positive("spacing", spacing);
    Checks.zeroOrMore("flange", flange);
    checkForm(form, height, web, flange);
  }

  private static void checkForm(String form, double height, double web, double flange) {
    if (!FORMS.contains(form)) {
      throw new IllegalArgumentException("form is " + Quote.of(form) + ". Use " + Words.or(FORMS) + ".");
    }
    if (form.equals("plate")) {
      if (flange != 0) {
        throw new IllegalArgumentException(
            "flange is " + Datum.print(flange) + ", but a plate has none. Give 0, or another form.");
      }
      return;
    }
    Checks.below("twice the web", 2 * web, "height", height);
    if (form.equals("box")) {
      Checks.below("twice the web", 2 * web, "flange", flange);
    } else {
      Checks.below("web", web, "flange", flange);
    }
  }
}
