package outrigger.shapes.mesh.inside;

/** Takes how often operands wind round a place, or by how much that changes, just above a plane and just below. */
public interface WindingTaker {
  /** The operand winds {@code above} times, or times more, just above the plane and {@code below} just below. */
  void add(int operand, int above, int below);
}
