package outrigger.generator.doc;

import outrigger.generator.param.BadDimension;
import outrigger.generator.param.Param;
import outrigger.generator.param.Texts;
import outrigger.generator.param.Unit;
import outrigger.generator.truck.RailForm;

/** What a starting plan is written from: the measurements without which nothing can be solved. */
public record NewPlan(
    @Param(max = 80, def = "My truck", help = "Heading of the plan.")
    String title,
    @Param(unit = Unit.NONE, min = 4, max = 100, def = "24", help = "Scale: 24 is 1:24.")
    double scale,
    @Param(def = "plate", help = "Section of the rails.")
    RailForm form,
    @Param(min = 8, max = 200, def = "32", help = "Inside to inside of the rails' webs.")
    double spacing,
    @Param(min = 0.5, max = 20, def = "2", help = "Thickness of a web.")
    double web,
    @Param(min = 3, max = 60, def = "11", help = "Height of a web.")
    double height,
    @Param(max = 60, def = "0", help = "Width of the flanges from the outside of the web; 0 for a plate.")
    double flange,
    @Param(min = 40, max = 1000, def = "200", help = "Length of the rails.")
    double length,
    @Param(min = 40, max = 800, def = "150", help = "Front axle to rear axle.")
    double wheelbase,
    @Param(min = -500, max = 500, def = "5", help = "x of the front mounts, forward of the front axle.")
    double frontX,
    @Param(min = 2, max = 300, def = "24.5", help = "Body floor over the rails' tops at the front mounts.")
    double frontFloor,
    @Param(min = -800, max = 500, def = "-45", help = "x of the rear mounts; negative behind the front axle.")
    double rearX,
    @Param(min = 2, max = 300, def = "29", help = "Body floor over the rails' tops at the rear mounts.")
    double rearFloor,
    @Param(unit = Unit.GRAMS, min = 1, max = 20000, def = "150", help = "Mass of the body with all that stays in it.")
    double mass) {

  public NewPlan {
    double front = PlanStarter.FRONT_OVERHANG;
    for (double x : new double[] {frontX, rearX}) {
      if (x > front || x < front - length) {
        throw new BadDimension(x == frontX ? "front-x" : "rear-x", "mounts at x " + Texts.number(x)
            + " mm do not stand on rails that reach from " + Texts.number(front - length) + " to " + Texts.number(front)
            + " mm", "Use an x between them, or longer rails.");
      }
    }
    if (Math.abs(frontX - rearX) < 1) {
      throw new BadDimension("rear-x", "front and rear mounts stand at one place, x " + Texts.number(rearX) + " mm",
          "Set them apart along the truck.");
    }
  }
}
