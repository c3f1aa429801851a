package outrigger.shapes.mesh.inside;

/** How often each operand winds round a place, and which do so at all. */
public final class Windings {
  private final int[] winding;
  /** The operands whose numbers are not 0, {@code count} of them, and where each stands among them. */
  private final int[] listed;
  private final int[] placeOf;
  private int count;

  /** Of so many operands, 0 each. */
  public Windings(int operands) {
    winding = new int[operands];
    listed = new int[operands];
    placeOf = new int[operands];
  }

  /** Winding number of an operand. */
  public int of(int operand) {
    return winding[operand];
  }

  /** Changes the winding number of an operand. */
  public void add(int operand, int change) {
    boolean before = winding[operand] != 0;
    winding[operand] += change;
    if (before != (winding[operand] != 0)) {
      list(operand, !before);
    }
  }

  private void list(int operand, boolean enters) {
    if (enters) {
      placeOf[operand] = count;
      listed[count++] = operand;
    } else {
      int last = listed[--count];
      listed[placeOf[operand]] = last;
      placeOf[last] = placeOf[operand];
    }
  }

  /** How many operands have a number other than 0. */
  public int count() {
    return count;
  }

  /** One of these, from 0, in no order. */
  public int operand(int i) {
    return listed[i];
  }
}
