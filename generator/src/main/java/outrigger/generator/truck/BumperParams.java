package outrigger.generator.truck;

import outrigger.generator.param.Measure;
import outrigger.generator.param.Param;

/** Table {@code [bumper]}: the bumper in front; spacers between it and the chassis bring its face where it must be. */
public record BumperParams(
    @Param(min = -500, max = 500, def = "40+-0.2", help = "Where its foremost face must be: x.")
    Measure face,
    @Param(min = -500, max = 500, def = "30+-0.1", help = "Where the chassis ends that it is screwed to: x.")
    Measure seat,
    @Param(min = 0.2, max = 100, def = "6+-0.1", help = "Depth of the bumper itself, from its back to its face.")
    Measure depth,
    @Param(max = 100, def = "solve", help = "Thickness of the spacer between seat and bumper; solve works it out.")
    Measure spacer,
    @Param(min = -200, max = 200, def = "-5.5", help = "z of its screws.")
    double z) {}
