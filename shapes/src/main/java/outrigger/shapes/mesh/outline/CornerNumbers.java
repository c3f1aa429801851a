package outrigger.shapes.mesh.outline;

import outrigger.shapes.mesh.face.Faces;

/** Numbers in an outline of the corners of faces: each is looked up by its place once, however many edges meet there. */
public final class CornerNumbers {
  private final Faces faces;
  private final Outline outline;
  /** Of each corner its number and one; 0 where it was not yet asked for. */
  private final int[] numbers;

  /** For the corners of some faces, each to be numbered when first asked for. */
  public CornerNumbers(Faces faces, Outline outline) {
    this.faces = faces;
    this.outline = outline;
    numbers = new int[faces.vertexCount()];
  }

  /** Number in the outline of a corner of the faces. */
  public int of(int corner) {
    if (numbers[corner] == 0) {
      numbers[corner] = outline.vertex(faces.point(corner)) + 1;
    }
    return numbers[corner] - 1;
  }

  /** The same, or -1 for a corner that nobody asked for. */
  public int known(int corner) {
    return numbers[corner] - 1;
  }
}
