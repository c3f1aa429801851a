package outrigger.generator.truck;

/**
 * How far something flat stands off a rail that bends or steps away from under it.
 *
 * @param x where it does most, mm
 * @param mm how far, 0 where it lies flat
 */
public record StandOff(double x, double mm) {}
