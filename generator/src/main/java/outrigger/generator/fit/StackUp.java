package outrigger.generator.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import outrigger.generator.accessory.Words;
import outrigger.generator.stack.Spread;

/**
 * A closed chain of lengths: signed members that add up to nothing, at most one of them free.
 *
 * @param members all of them, the dimension that closes the chain with its own sign among them
 */
public record StackUp(List<Member> members) {
  /** Sums of decimals differ in the last binary digits, mm. */
  private static final double EQUAL = 1e-9;

  public StackUp {
    members = List.copyOf(members);
  }

  /** The members that are left to be solved. */
  public List<Member> free() {
    return members.stream().filter(m -> m.size().isFree()).toList();
  }

  /** Signed sum of those that are known, mm; 0 where a chain without a free member closes. */
  public double sum() {
    double sum = members.stream().filter(m -> !m.size().isFree()).mapToDouble(m -> m.sign() * m.size().mm()).sum();
    return Math.abs(sum) < EQUAL ? 0 : Math.rint(sum * 1e9) / 1e9;
  }

  /** The chain with its one free member solved; the same where none is free. */
  public StackUp solved() {
    if (free().size() > 1) {
      throw new IllegalStateException("free: " + free());
    }
    double sum = sum();
    List<Member> all = new ArrayList<>();
    members.forEach(m -> all.add(m.size().isFree() ? m.solved(-m.sign() * sum + 0.0) : m));
    return new StackUp(all);
  }

  /**
   * How far one member may come out from its nominal length when all the others are off.
   *
   * @param name the member looked at; its own spread is left out
   */
  public Spread spread(String name) {
    List<Member> others = members.stream().filter(m -> !m.name().equals(name)).toList();
    return Spread.of(others.stream().filter(m -> !m.isSystematic()).map(Member::off).toList(),
        others.stream().filter(Member::isSystematic).mapToDouble(Member::off).sum());
  }

  /** A member by name. */
  public Member member(String name) {
    return members.stream().filter(m -> m.name().equals(name)).findFirst().orElseThrow();
  }

  /** What is known, such as {@code post 19.4 + pocket floor 1.6}, one sign's members. */
  public String words(int sign) {
    return members.stream().filter(m -> m.sign() == sign && !m.size().isFree())
        .map(m -> m.name() + " " + Words.number(m.size().mm())).collect(Collectors.joining(" + "));
  }
}
