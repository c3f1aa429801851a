package outrigger.generator.cli;

import java.util.List;
import outrigger.generator.param.Param;
import outrigger.generator.param.Unit;
import outrigger.presets.Printer;
import outrigger.presets.Screw;

/** Parameters of a part that only tests make, one of every form. */
record HookParams(
    @Param(def = "demo-0.4", help = "Printer.") Printer printer,
    @Param(min = 1, max = 200, def = "20", help = "Width, 100% of it.") double width,
    @Param(min = 1, max = 200, def = "10", help = "Height.") double height,
    @Param(min = 0.5, max = 9, def = "2", help = "Wall thickness.") double wallThickness,
    @Param(unit = Unit.DEGREES, min = 0, max = 60, def = "30", help = "Lean.") double lean,
    @Param(unit = Unit.NONE, min = 1, max = 4, def = "2", help = "Screws.") int screws,
    @Param(def = "M3-socket", help = "Screw.") Screw screw,
    @Param(def = "left", help = "Hand.") Side side,
    @Param(def = "no", help = "Marked.") boolean marked,
    @Param(max = 12, def = "", help = "Label.") String label,
    @Param(min = 0.5, max = 50, def = "", help = "Thicknesses of a set.") List<Double> set) {

  enum Side { LEFT, RIGHT }
}
