package outrigger.generator.truck;

/** Which axles are driven. */
public enum DrivenAxles { REAR, FRONT, ALL }
