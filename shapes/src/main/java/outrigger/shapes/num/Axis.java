package outrigger.shapes.num;

/** A coordinate axis. */
public enum Axis { X, Y, Z }
