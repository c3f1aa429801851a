package outrigger.generator.joint;

import java.util.ArrayList;
import java.util.List;

/**
 * What a part is assembled with.
 *
 * @param joints its screwed joints
 * @param pieces everything that belongs to no joint, such as magnets
 */
public record Fixings(List<Joint> joints, List<Piece> pieces) {
  /** Nothing. */
  public static final Fixings NONE = new Fixings(List.of(), List.of());

  public Fixings {
    joints = List.copyOf(joints);
    pieces = List.copyOf(pieces);
  }

  /** The same with the screws' ends kept out of what lies ahead of them. */
  public Fixings clearOf(List<Block> blocks) {
    return blocks.isEmpty() ? this : new Fixings(joints.stream().map(joint -> joint.clearOf(blocks)).toList(), pieces);
  }

  /** One line for each thing, such as {@code 2 x M3-socket x 10 or 12}. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    for (Joint joint : joints) {
      lines.add(joint.count() + " x " + joint.screwWords());
      joint.pieces().forEach(piece -> lines.add(piece.line()));
    }
    pieces.forEach(piece -> lines.add(piece.line()));
    return lines;
  }
}
