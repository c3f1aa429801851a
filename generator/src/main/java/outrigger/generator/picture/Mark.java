package outrigger.generator.picture;

/** Something that stands at a place of a picture. */
interface Mark {
  /** Draws what of it falls into a band. */
  void draw(Canvas canvas);
}
