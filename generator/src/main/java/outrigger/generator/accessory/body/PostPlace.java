package outrigger.generator.accessory.body;

/** Where along the flange the post stands. */
public enum PostPlace {
  /** Between the screws; an odd one goes behind the post. */
  MIDDLE,
  /** At the front end, all screws behind it. */
  FRONT,
  /** At the rear end, all screws ahead of it. */
  REAR
}
