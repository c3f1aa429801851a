package outrigger.presets;

/**
 * A chassis rail, standing on edge; mm.
 *
 * @param form {@code plate}, {@code channel} or {@code box}
 * @param height top to bottom of the web
 * @param web thickness of the web
 * @param flange width of the flanges from the outside of the web, 0 for a plate
 * @param spacing inside to inside of the two webs
 */
public record Rail(String name, String form, double height, double web, double flange, double spacing)
    implements Item {}
