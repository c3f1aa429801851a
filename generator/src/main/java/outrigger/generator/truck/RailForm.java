package outrigger.generator.truck;

/** Section of a rail. */
public enum RailForm { PLATE, CHANNEL, BOX }
