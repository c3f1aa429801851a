package outrigger.generator.truck;

import outrigger.generator.param.Param;
import outrigger.generator.param.Unit;

/** Table {@code [[holes]]}: a row of holes through the webs. */
public record HoleRow(
    @Param(max = 40, def = "row", help = "What messages call it.")
    String name,
    @Param(def = "both", help = "Which rails have it: both, left or right.")
    Sides side,
    @Param(min = -1000, max = 500, def = "0", help = "x of the foremost hole.")
    double x,
    @Param(min = 1, max = 500, def = "10", help = "From hole to hole, backward.")
    double pitch,
    @Param(unit = Unit.NONE, min = 1, max = 200, def = "1", help = "Holes in the row.")
    int count,
    @Param(min = 0.5, max = 12, def = "3.4", help = "Diameter of a hole.")
    double diameter,
    @Param(max = 60, def = "5.5", help = "From the rail's top edge down to the holes' middle.")
    double drop) {}
