package outrigger.generator.truck;

import outrigger.generator.param.BadDimension;
import outrigger.generator.param.Param;
import outrigger.generator.param.Texts;
import outrigger.generator.param.Unit;

/** Table {@code [rail]}: both rails, which mirror each other. */
public record RailParams(
    @Param(def = "plate", help = "Section: a flat plate on edge, a channel open to the truck's middle, or a box.")
    RailForm form,
    @Param(min = 8, max = 200, def = "32", help = "Inside to inside of the webs, at the front end.")
    double spacing,
    @Param(min = 0.5, max = 20, def = "2", help = "Thickness of the web.")
    double web,
    @Param(min = 3, max = 60, def = "11", help = "Height of the web, top to bottom, at the front end.")
    double height,
    @Param(max = 60, def = "0", help = "Width of the flanges from the outside of the web; 0 for a plate.")
    double flange,
    @Param(min = -500, max = 500, def = "25", help = "Where the rails end in front: x, forward of the front axle.")
    double front,
    @Param(min = 20, max = 1000, def = "200", help = "Length of the rails.")
    double length,
    @Param(def = "taper", help = "How they change between the places given by [[rail-at]]: taper evenly or step.")
    RailChange change) {

  public RailParams {
    if (form == RailForm.PLATE && flange != 0) {
      throw new BadDimension("flange", "flange is " + Texts.number(flange, Unit.MM) + ", but a plate has none",
          "Leave flange out, or set form to channel or box.");
    }
    double least = form == RailForm.BOX ? 2 * web : web;
    if (form != RailForm.PLATE && !(flange > least)) {
      throw new BadDimension("flange", "flange is " + Texts.number(flange, Unit.MM) + ", but a "
          + Texts.choice(form) + " of web " + Texts.number(web, Unit.MM) + " needs more than "
          + Texts.number(least, Unit.MM), "Measure it from the outside of the web to the flange's edge.");
    }
    if (form != RailForm.PLATE && !(height > 2 * web)) {
      throw new BadDimension("height", "height is " + Texts.number(height, Unit.MM) + ", not more than twice the web of "
          + Texts.number(web, Unit.MM), "Measure both again, or set form to plate.");
    }
  }

  /** Where they end behind, x. */
  public double rear() {
    return front - length;
  }
}
