package outrigger.generator.param;

/** Units a number can be declared in. Lengths may be written with mm (default), in or thou. */
public enum Unit { MM, DEGREES, NONE }
