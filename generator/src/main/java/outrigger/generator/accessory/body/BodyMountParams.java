package outrigger.generator.accessory.body;

import outrigger.generator.accessory.feature.Fit;
import outrigger.generator.accessory.feature.HeadSeat;
import outrigger.generator.accessory.feature.PocketFit;
import outrigger.generator.accessory.feature.Pole;
import outrigger.generator.param.Param;
import outrigger.generator.param.Unit;
import outrigger.presets.DiscMagnet;
import outrigger.presets.Printer;
import outrigger.presets.Rail;
import outrigger.presets.Screw;

/**
 * Parameters of a body mount. A size of 0 is worked out from the others; {@link BodyMount} checks how they go
 * together, since most of that needs the tables.
 */
public record BodyMountParams(
    @Param(def = "left", help = "Which rail it goes on, looking the way the truck drives: left or right.")
    Side side,
    @Param(def = "outboard", help = "Which face of the rail's web it is bolted to: outboard or inboard.")
    Mounting mounting,
    @Param(def = "plate-32", help = "The chassis rail it is bolted to.")
    Rail rail,
    @Param(min = 2, max = 200, def = "24",
        help = "How high the top of its head stands above the rails' top: where the body's floor comes to rest.")
    double height,
    @Param(min = 2, max = 100, def = "10",
        help = "Distance from the face of the web it is bolted to, square out to the middle of the magnet.")
    double reach,
    @Param(def = "6x2", help = "The disc magnet, diameter x thickness.")
    DiscMagnet magnet,
    @Param(unit = Unit.NONE, min = 1, max = 10, def = "1", help = "Discs lying on each other in one pocket.")
    int stack,
    @Param(unit = Unit.NONE, min = 1, max = 2, def = "1", help = "Pockets side by side along the rail: 1 or 2.")
    int magnets,
    @Param(max = 100, def = "0", help = "Middle to middle of two pockets; 0 puts them as close as walls allow.")
    double magnetSpacing,
    @Param(def = "glue", help = "How a magnet is held: glue (crush ribs) or slip (pressed in past a lip).")
    PocketFit pocket,
    @Param(max = 2, def = "0.3", help = "Bevel at the pocket's mouth that leads the magnet in.")
    double leadIn,
    @Param(max = 20, def = "0",
        help = "Hole under the pocket to push a magnet out through; 0 takes four tenths of the magnet.")
    double pushOut,
    @Param(def = "n", help = "Pole of the magnet that looks up, engraved on the post: n, s or none for no mark.")
    Pole pole,
    @Param(def = "yes", help = "Whether the height is engraved on the post.")
    boolean label,
    @Param(max = 60, def = "0",
        help = "Thickness of the post, square to the rail; 0 makes it as slim as the pocket allows.")
    double postSize,
    @Param(def = "middle", help = "Where along the flange the post stands: middle, front or rear.")
    PostPlace postPlace,
    @Param(unit = Unit.DEGREES, max = 70, def = "30",
        help = "Lean of the gusset's underside from the vertical; 0 carries the post straight down.")
    double gussetAngle,
    @Param(min = 2, max = 20, def = "4", help = "Thickness of the flange that lies against the web.")
    double flangeThickness,
    @Param(max = 100, def = "0", help = "Height of the flange, middle on the web's middle; 0 is as high as the web.")
    double flangeHeight,
    @Param(max = 400, def = "0", help = "Length of the flange along the rail; 0 is as short as screws and post allow.")
    double flangeLength,
    @Param(def = "M3-socket", help = "The screw that holds the flange to the web, size and head.")
    Screw screw,
    @Param(def = "medium", help = "What the screw does in the flange: pass (fine, medium, coarse), cut its thread "
        + "(pilot), or run into an insert or a nut held there.")
    Fit fit,
    @Param(def = "none", help = "How the head lies: none (on the flange), counterbore, washer (a counterbore "
        + "for a plain washer) or countersink.")
    HeadSeat headSeat,
    @Param(unit = Unit.NONE, min = 2, max = 8, def = "2", help = "Screws through the web.")
    int screws,
    @Param(max = 200, def = "0",
        help = "Between the two screws next to the post, or twice from its middle to the first; 0 is as close as heads "
            + "allow.")
    double screwSpacing,
    @Param(max = 100, def = "0", help = "Between screws on the same side of the post; 0 is as close as heads allow.")
    double screwPitch,
    @Param(def = "demo-0.4", help = "The printer it is made on: layers, walls, allowances, overhang.")
    Printer printer) {
}
