package outrigger.generator.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import outrigger.generator.param.Measure;

/** Shigley's Mechanical Engineering Design, 9th edition, example 1-3: a block in a gap of three others, in inches. */
class StackUpTest {
  private static final double INCH = 25.4;

  private static Member member(String name, int sign, double inches, double off) {
    return new Member(name, sign, Measure.of(inches * INCH, off * INCH), off * INCH, false);
  }

  private static StackUp chain(Member d, Member w) {
    return new StackUp(List.of(member("a", 1, 1.750, 0.003), member("b", -1, 0.750, 0.001), member("c", -1, 0.120, 0.005), d, w));
  }

  @Test
  void solved_gapOfShigley_isItsClearance() {
    StackUp solved = chain(member("d", -1, 0.875, 0.001), new Member("w", -1, Measure.FREE, 0, false)).solved();
    assertEquals(0.005 * INCH, solved.member("w").size().mm(), 1e-9);
    assertEquals(0.010 * INCH, solved.spread("w").worst(), 1e-12);
    assertEquals(0.006 * INCH, solved.spread("w").rootSumSquare(), 1e-12);
  }

  /** For a gap of at least 0.003 the gap must be 0.013 in the middle: d = 0.867. */
  @Test
  void solved_blockOfShigley_leavesTheLeastGap() {
    StackUp solved = chain(new Member("d", -1, Measure.FREE, 0.001 * INCH, false), member("w", -1, 0.013, 0)).solved();
    assertEquals(0.867 * INCH, solved.member("d").size().mm(), 1e-9);
  }

  @Test
  void spread_oneWayMember_isAddedToBoth() {
    StackUp chain = new StackUp(List.of(new Member("p", 1, Measure.of(10, 0.1), 0.1, true),
        new Member("q", 1, Measure.of(5, 0.3), 0.3, false), new Member("r", 1, Measure.of(5, 0.4), 0.4, false)));
    assertEquals(0.8, chain.spread("").worst(), 1e-12);
    assertEquals(0.6, chain.spread("").rootSumSquare(), 1e-12);
  }
}
