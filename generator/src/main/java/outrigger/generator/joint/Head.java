package outrigger.generator.joint;

/**
 * How a screw's head lies; mm.
 *
 * @param above how far its top stands above the face round it, negative where it lies below
 * @param around least room round it in its recess, 0 where there is no recess
 */
public record Head(double above, double around) {}
