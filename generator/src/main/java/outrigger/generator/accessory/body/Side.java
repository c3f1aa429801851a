package outrigger.generator.accessory.body;

/** Which rail, looking the way the truck drives. */
public enum Side { LEFT, RIGHT }
