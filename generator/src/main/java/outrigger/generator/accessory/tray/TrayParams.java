package outrigger.generator.accessory.tray;

import java.util.List;
import outrigger.generator.accessory.feature.Fit;
import outrigger.generator.param.Param;
import outrigger.generator.param.Unit;
import outrigger.presets.Printer;
import outrigger.presets.Screw;

/** What an electronics tray is made from. X runs along the rails, Y across, Z up. */
public record TrayParams(
    @Param(def = "demo-0.4", help = "Printer preset: its layers, hole allowance and thinnest wall.")
    Printer printer,

    @Param(def = "between", help = "Where it hangs: between the rails, or outboard of the left or the right one.")
    TrayPlace place,

    @Param(min = 8, max = 200, def = "36.4",
        help = "Inside to inside of the two webs, flat inside; for a tray between the rails.")
    double railSpacing,

    @Param(min = 3, max = 60, def = "10", help = "Height of the rails' webs, top to bottom.")
    double railHeight,

    @Param(min = 0.4, max = 60, def = "2", help = "Thickness of the rails' webs where the tabs' screws go through; for a "
        + "box rail its whole width. The screws' length follows from it.")
    double railWeb,

    @Param(min = 0, max = 5, def = "0.2", help = "Gap between tray and rail, on each side that has one.")
    double clearance,

    @Param(min = 15, max = 400, def = "80", help = "Outside length along the rails.")
    double length,

    @Param(min = 0, max = 200, def = "0", help = "Outside width of the box; 0 takes all the room between the rails. A "
        + "narrower box gets blocks that reach out to the rails. Outboard trays need it.")
    double width,

    @Param(min = 1, max = 80, def = "8", help = "Height of the walls outside, from the underside of the floor to the "
        + "rim.")
    double wallHeight,

    @Param(min = 1, max = 100, def = "8", help = "How far the tray hangs: from the plane of the rails' tops down to the "
        + "underside of the floor.")
    double drop,

    @Param(min = 0, max = 200, def = "30", help = "Free height above the plane of the rails' tops, for items that stand "
        + "higher than the rim.")
    double headroom,

    @Param(min = 0.4, max = 6, def = "1.2", help = "Thickness of the floor.")
    double floor,

    @Param(min = 0.4, max = 8, def = "1.4", help = "Thickness of the walls.")
    double wall,

    @Param(min = 0, max = 50, def = "3", help = "Radius of the four upright corners outside; inside it is less by the "
        + "wall.")
    double cornerRadius,

    @Param(def = "M3-socket", help = "Screw preset of the tabs: size and head.")
    Screw screw,

    @Param(def = "insert", help = "What the screw does in the tab: pass (fine, medium, coarse), cut its own thread "
        + "(pilot), run into a heat-set insert (insert) or into a nut in a pocket inside (nut).")
    Fit fit,

    @Param(unit = Unit.NONE, min = 0, max = 6, def = "2", help = "Screw tabs on each side that has a rail.")
    int tabs,

    @Param(min = 1, max = 390, def = "56", help = "Distance between neighbouring screws along the rail.")
    double tabPitch,

    @Param(min = 3, max = 60, def = "9", help = "Width of a tab along the rail.")
    double tabWidth,

    @Param(min = 1, max = 20, def = "3.2", help = "Thickness of a tab, measured inwards from the outside of the wall.")
    double tabThickness,

    @Param(min = 0, max = 60, def = "4", help = "From the plane of the rails' tops down to the screws' middle.")
    double screwDrop,

    @Param(min = 0, max = 40, def = "6", help = "Width across flats of the holes that lighten the floor; 0 for none.")
    double hexagon,

    @Param(min = 0.4, max = 20, def = "1.6", help = "Width of the ribs between them.")
    double rib,

    @Param(unit = Unit.NONE, min = 0, max = 4, def = "1",
        help = "Straps that hold a battery down: a pair of slots in the floor for each.")
    int straps,

    @Param(min = 2, max = 40, def = "10", help = "Width of a strap; its slots are 1 mm longer.")
    double strapWidth,

    @Param(min = 0.4, max = 6, def = "1.5", help = "Thickness of a strap; its slots are 0.5 mm wider.")
    double strapThickness,

    @Param(min = 1, max = 390, def = "40", help = "Distance between neighbouring straps along the tray.")
    double strapPitch,

    @Param(unit = Unit.NONE, min = 0, max = 6, def = "1", help = "Notches for cables in the rim of each end wall.")
    int notches,

    @Param(min = 1, max = 100, def = "6", help = "Width of a notch.")
    double notchWidth,

    @Param(min = 0.5, max = 79, def = "4", help = "Depth of a notch below the rim.")
    double notchDepth,

    @Param(unit = Unit.NONE, min = 0, max = 6, def = "2",
        help = "Slots for cable ties through each end wall, shared out on both sides of "
        + "the notches.")
    int ties,

    @Param(min = 1, max = 10, def = "2.5", help = "Width of a cable tie; its slots are 0.5 mm wider.")
    double tieWidth,

    @Param(min = 0.5, max = 4, def = "1.2", help = "Thickness of a cable tie; its slots are 0.5 mm higher.")
    double tieThickness,

    @Param(def = "", help = "What it must carry, separated by commas: NAME:LxWxH, NAME:LxWxH+CLEARANCE (room on each "
        + "side), or an electronics preset.")
    List<TrayItem> items) {}
