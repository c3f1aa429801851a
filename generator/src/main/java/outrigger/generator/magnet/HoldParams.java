package outrigger.generator.magnet;

import outrigger.generator.param.BadDimension;
import outrigger.generator.param.Param;
import outrigger.generator.param.Unit;
import outrigger.presets.DiscMagnet;
import outrigger.presets.Printer;

/** What a hold is worked out from. Values that have nothing to act on are refused. */
public record HoldParams(
    @Param(def = "6x2", help = "The disc magnet in the mount, diameter x thickness.")
    DiscMagnet magnet,
    @Param(unit = Unit.NONE, min = 1, max = 10, def = "1", help = "Discs lying on each other in the mount.")
    int stack,
    @Param(def = Grade.OWN, help = "Its grade, a name of the table magnet-grades; as-listed takes that of its row in "
        + "the table disc-magnets.")
    Grade grade,
    @Param(def = "magnet", help = "What it looks at in the body: another magnet, or steel.")
    Facing facing,
    @Param(def = FacingMagnet.SAME, help = "The disc magnet in the body, a name of the table disc-magnets; same is as "
        + "in the mount, grade included.")
    FacingMagnet facingMagnet,
    @Param(unit = Unit.NONE, max = 10, def = "0", help = "Discs lying on each other in the body; 0 is as many as in "
        + "the mount.")
    int facingStack,
    @Param(def = Grade.OWN, help = "Grade of the magnet in the body; as-listed takes that of its row.")
    Grade facingGrade,
    @Param(max = 100, def = "0", help = "Thickness of the steel; 0 is thick enough.")
    double steelThickness,
    @Param(max = 1000, def = "0", help = "Width of the steel, or its diameter; 0 is wide enough.")
    double steelWidth,
    @Param(max = 5, def = "0.2", help = "How far the magnet's face lies below the rim of its pocket.")
    double recess,
    @Param(max = 5, def = "0.2", help = "The same in the body.")
    double facingRecess,
    @Param(max = 5, def = "0", help = "Printed skin left over the magnet's face; comes out in whole layers.")
    double skin,
    @Param(max = 5, def = "0", help = "The same in the body.")
    double facingSkin,
    @Param(max = 2, def = "0", help = "Glue over the faces, both halves together.")
    double glue,
    @Param(max = 10, def = "0", help = "Felt, tape, paint or shims between the halves.")
    double pad,
    @Param(max = 0.1, def = "0.015",
        help = "Plating on the face of each magnet: it is no magnet, so it adds to the gap.")
    double plating,
    @Param(def = "demo-0.4", help = "The printer: its layers round skins and pockets.")
    Printer printer,
    @Param(unit = Unit.CELSIUS, min = -40, max = 200, def = "20", help = "How hot the magnets get.")
    double temperature,
    @Param(unit = Unit.GRAMS, min = 1, max = 20000, def = "150", help = "Mass of the body with all that is in it.")
    double mass,
    @Param(unit = Unit.NONE, min = 1, max = 20, def = "4", help = "Mounts that share the body.")
    int mounts,
    @Param(unit = Unit.NONE, min = 0.1, max = 100, def = "5", help = "Jolt it must stay on through, as a multiple of "
        + "its weight.")
    double shock,
    @Param(unit = Unit.NONE, min = 0.1, max = 1, def = "0.75", help = "Share of the weakest pull that is counted on; "
        + "the rest is for what real magnets lack.")
    double derating,
    @Param(unit = Unit.NONE, max = 1, def = "0.15",
        help = "Friction of the faces: sideways hold as a share of the pull.")
    double friction,
    @Param(max = 50, def = "0.5", help = "How far sideways the body may be pushed off a facing magnet; "
        + "steel pulls nothing back, so there it changes nothing.")
    double offset,
    @Param(min = 0.1, max = 50, def = "3", help = "Gap at which the table ends.")
    double to,
    @Param(unit = Unit.NONE, min = 2, max = 60, def = "12", help = "Steps of the table.")
    int steps) {

  public HoldParams {
    if (facing == Facing.STEEL) {
      idle(facingMagnet.named().isPresent(), "facing-magnet", "steel");
      idle(facingStack != 0, "facing-stack", "steel");
      idle(facingGrade.named().isPresent(), "facing-grade", "steel");
    } else {
      idle(steelThickness != 0, "steel-thickness", "magnet");
      idle(steelWidth != 0, "steel-width", "magnet");
    }
  }

  private static void idle(boolean given, String key, String facing) {
    if (given) {
      throw new BadDimension(key, key + " has nothing to act on, since facing is " + facing,
          "Leave it out, or set facing to " + (facing.equals("steel") ? "magnet" : "steel") + ".");
    }
  }

  /** The magnet in the body. */
  public DiscMagnet bodyMagnet() {
    return facingMagnet.named().orElse(magnet);
  }

  /** Discs in the body. */
  public int bodyStack() {
    return facingStack == 0 ? stack : facingStack;
  }
}
