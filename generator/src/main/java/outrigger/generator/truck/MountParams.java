package outrigger.generator.truck;

import outrigger.generator.accessory.body.Mounting;
import outrigger.generator.accessory.feature.Pole;
import outrigger.generator.magnet.Facing;
import outrigger.generator.param.Measure;
import outrigger.generator.param.Param;
import outrigger.generator.param.Unit;

/**
 * Table {@code [[mount]]}: a station along the truck where the body rests, and its stack from rail top to body floor:
 * post, pocket floor, magnets, what lies between the faces, facing magnets or steel, pad.
 */
public record MountParams(
    @Param(max = 40, def = "mount", help = "What its parts are called, such as cab-front.")
    String name,
    @Param(min = -1000, max = 500, def = "0", help = "Where along the truck: x of the magnet.")
    double x,
    @Param(def = "both", help = "On which rails: both, left or right.")
    Sides side,
    @Param(def = "outboard", help = "Which face of the web it is bolted to.")
    Mounting mounting,
    @Param(min = 2, max = 100, def = "11", help = "From that face square out to the magnet's middle.")
    double reach,
    @Param(min = -200, max = 300, def = "24+-0.2", help = "Height of the body's floor over the rails' tops there.")
    Measure floor,
    @Param(max = 300, def = "solve", help = "Post: rails' tops to the underside of the pocket's floor.")
    Measure post,
    @Param(min = 0.4, max = 20, def = "1.6", help = "Floor of the pocket, which the magnet lies on.")
    Measure pocketFloor,
    @Param(def = "choose", help = "The magnet, a name of the table disc-magnets; choose takes the fewest and smallest "
        + "on hand that hold.")
    MagnetChoice magnet,
    @Param(unit = Unit.NONE, max = 10, def = "0", help = "Discs on each other in the pocket; 0 leaves it open.")
    int stack,
    @Param(max = 5, def = "0.4", help = "Between the faces as drawn: 0.2 below each rim, felt or paint added.")
    Measure gap,
    @Param(max = 2, def = "0", help = "Glue under the two magnets, both together.")
    Measure glue,
    @Param(def = "magnet", help = "What the magnet looks at in the body: a magnet like it, or steel.")
    Facing facing,
    @Param(min = 0.2, max = 20, def = "1", help = "Thickness of the steel, where it faces steel.")
    Measure steel,
    @Param(min = 1, max = 100, def = "12", help = "Width of the steel, or its diameter.")
    double steelWidth,
    @Param(max = 50, def = "1.2", help = "Pad between facing magnet and the body's floor.")
    Measure pad,
    @Param(def = "none", help = "Pole that looks up; none leaves it to the pole plan.")
    Pole pole) {}
