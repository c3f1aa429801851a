package outrigger.generator.magnet;

/** What a magnet looks at across the gap. */
public enum Facing { MAGNET, STEEL }
