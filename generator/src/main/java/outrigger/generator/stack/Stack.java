package outrigger.generator.stack;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalLong;
import outrigger.generator.param.Texts;
import outrigger.generator.param.Unit;

/**
 * Pieces on each other.
 *
 * @param target wanted, nm
 * @param members pieces, the thickest first; no kind twice
 * @param blockLayers layers after the first one of the printed block, if there is one
 * @param blockNano its height, nm; 0 where there is none
 */
public record Stack(long target, List<Member> members, OptionalLong blockLayers, long blockNano) {
  /** Fewest pieces first, then least error, then fewest kinds; the rest settles the order for good. */
  static final Comparator<Stack> BEST_FIRST = Comparator.<Stack>comparingInt(Stack::pieces)
      .thenComparingLong(stack -> Math.abs(stack.errorNano())).thenComparingInt(Stack::kinds)
      .thenComparingLong(Stack::errorNano).thenComparingLong(Stack::blockNano).thenComparing(Stack::words);

  /** Some pieces of one kind. */
  public record Member(Piece piece, int count) {}

  public Stack {
    members = List.copyOf(members);
  }

  /** How many pieces, the block among them. */
  public int pieces() {
    return members.stream().mapToInt(Member::count).sum() + (blockLayers.isPresent() ? 1 : 0);
  }

  private int kinds() {
    return members.size() + (blockLayers.isPresent() ? 1 : 0);
  }

  long totalNano() {
    return blockNano + members.stream().mapToLong(m -> m.count() * m.piece().nano()).sum();
  }

  long errorNano() {
    return totalNano() - target;
  }

  /** Thickness, mm. */
  public double total() {
    return Nano.mm(totalNano());
  }

  /** Thickness less the target, mm. */
  public double error() {
    return Nano.mm(errorNano());
  }

  /** Height of the printed block, mm; 0 where there is none. */
  public double blockHeight() {
    return Nano.mm(blockNano);
  }

  /**
   * How far it may be off. Pieces of one kind are taken to come from one sheet or packet and to be off alike, so that
   * they count as one member; what a printed block is off is systematic.
   *
   * @param blockError how far a printed block may be off, mm
   */
  public Spread spread(double blockError) {
    List<Double> off = members.stream().map(m -> m.count() * m.piece().off()).toList();
    return Spread.of(off, blockLayers.isPresent() ? blockError : 0);
  }

  /** Its pieces, such as {@code 3.2 mm printed block of 16 layers + 40thou sheet}. */
  public String words() {
    List<String> parts = new ArrayList<>();
    blockLayers.ifPresent(after -> parts.add(Texts.number(blockHeight(), Unit.MM) + " printed block of "
        + (after == 0 ? "one layer" : after + 1 + " layers")));
    members.stream().map(m -> (m.count() == 1 ? "" : m.count() + " x ") + m.piece().name()).forEach(parts::add);
    return String.join(" + ", parts);
  }
}
