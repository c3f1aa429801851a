package outrigger.generator.accessory.spacer;

import java.util.List;
import outrigger.generator.accessory.feature.Fit;
import outrigger.generator.accessory.feature.HeadSeat;
import outrigger.generator.param.Param;
import outrigger.generator.param.Unit;
import outrigger.presets.Printer;
import outrigger.presets.Screw;

/** What a bumper spacer is made from. X is its length, Y its width, Z its thickness. */
public record SpacerParams(
    @Param(def = "demo-0.4", help = "Printer preset: its layers, hole allowance and thinnest wall.")
    Printer printer,

    @Param(min = 4, max = 300, def = "30", help = "Length over all.")
    double length,

    @Param(min = 4, max = 300, def = "12", help = "Width over all.")
    double width,

    @Param(min = 0.4, max = 100, def = "4.2", help = "Thickness of a single spacer, between its two faces.")
    double thickness,

    @Param(min = 0.4, max = 100, def = "", help = "Thicknesses of a marked set, one spacer each, such as 1, 1.5, 2; "
        + "with none given, one spacer of the given thickness is made.")
    List<Double> set,

    @Param(min = 0, max = 150, def = "2", help = "Radius of the four corners seen from above.")
    double cornerRadius,

    @Param(def = "M3-socket", help = "Screw preset: size and head.")
    Screw screw,

    @Param(def = "medium", help = "What the screw does in its hole: pass (fine, medium, coarse), cut its own thread "
        + "(pilot), run into a heat-set insert (insert) or into a nut held in a pocket (nut).")
    Fit fit,

    @Param(max = 60, def = "4", help = "Thickness of what else the screw goes through, bumper and mount together; the "
        + "screw's length follows from it.")
    double clamped,

    @Param(def = "none", help = "How the screw's head lies in the upper face: on it (none), in a counterbore, in one "
        + "on a plain washer (washer), or in a countersink.")
    HeadSeat headSeat,

    @Param(unit = Unit.NONE, min = 0, max = 12, def = "2", help = "Holes in a row along the length.")
    int holes,

    @Param(min = 1, max = 290, def = "18", help = "Distance between neighbouring holes of a row, centre to centre.")
    double pitch,

    @Param(unit = Unit.NONE, min = 1, max = 2, def = "1", help = "Rows of holes: two rows of two make a rectangle.")
    int rows,

    @Param(min = 1, max = 290, def = "6", help = "Distance between two rows, centre to centre.")
    double rowPitch,

    @Param(min = 0, max = 100, def = "0", help = "How far a screw can be shifted along the length: slots in place of "
        + "round holes, longer than wide by this much.")
    double slot,

    @Param(def = "sets", help = "Which spacers get their thickness engraved in the upper face: those of sets, always "
        + "or never.")
    Engrave engrave,

    @Param(min = 0.1, max = 2, def = "0.4", help = "Depth of the engraving.")
    double engraveDepth,

    @Param(min = 0, max = 2, def = "0", help = "Bevel on every rim that lies on the bed, against the bulge of a "
        + "squashed first layer.")
    double bedChamfer,

    @Param(def = "flat", help = "How it is printed: flat, or on-edge where the thickness must not depend on layers.")
    SpacerPose pose) {}
