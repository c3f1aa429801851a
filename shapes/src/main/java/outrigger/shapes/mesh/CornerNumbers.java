package outrigger.shapes.mesh;

/** Numbers in an outline of the corners of faces: each is looked up by its place once, however many edges meet there. */
final class CornerNumbers {
  private final Faces faces;
  private final Outline outline;
  /** Of each corner its number and one; 0 where it was not yet asked for. */
  private final int[] numbers;

  CornerNumbers(Faces faces, Outline outline) {
    this.faces = faces;
    this.outline = outline;
    numbers = new int[faces.vertexCount()];
  }

  int of(int corner) {
    if (numbers[corner] == 0) {
      numbers[corner] = outline.vertex(faces.point(corner)) + 1;
    }
    return numbers[corner] - 1;
  }
}
