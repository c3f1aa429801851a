package outrigger.generator.truck;

import outrigger.generator.param.Param;

/** Table {@code [[rail-at]]}: the rails' section at a place along the truck. */
public record RailAt(
    @Param(min = -1000, max = 500, def = "0", help = "Where: x, forward of the front axle; negative behind it.")
    double x,
    @Param(max = 200, def = "0", help = "Inside to inside of the webs there; 0 is as before it.")
    double spacing,
    @Param(max = 60, def = "0", help = "Height of the web there, its top edge staying level; 0 is as before it.")
    double height) {}
