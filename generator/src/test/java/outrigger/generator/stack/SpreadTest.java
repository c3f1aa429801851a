package outrigger.generator.stack;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class SpreadTest {
  private static final double INCH = 25.4;

  /**
   * Shigley's Mechanical Engineering Design, 9th edition, Example 1-3: 1.750 +-0.003 less 0.750 +-0.001, 0.120 +-0.005
   * and 0.875 +-0.001 in leaves 0.005 +-0.010 in. The root-sum-square is not in the book: 9 + 1 + 25 + 1 = 36.
   */
  @Test
  void of_publishedExample_asPublished() {
    Spread inches = Spread.of(List.of(0.003, 0.001, 0.005, 0.001), 0);
    assertEquals(0.010, inches.worst(), 1e-15);
    assertEquals(0.006, inches.rootSumSquare(), 1e-15);
    Spread mm = Spread.of(List.of(0.003 * INCH, 0.001 * INCH, 0.005 * INCH, 0.001 * INCH), 0);
    assertEquals(0.254, mm.worst(), 1e-12);
    assertEquals(0.1524, mm.rootSumSquare(), 1e-12);
  }

  @Test
  void of_systematic_isAddedToBothAndNotUnderTheRoot() {
    Spread spread = Spread.of(List.of(0.3, 0.4), 0.1);
    assertEquals(0.8, spread.worst(), 1e-15);
    assertEquals(0.6, spread.rootSumSquare(), 1e-15);
  }

  @Test
  void of_nothing_isNothing() {
    assertEquals(new Spread(0, 0), Spread.of(List.of(), 0));
  }
}
