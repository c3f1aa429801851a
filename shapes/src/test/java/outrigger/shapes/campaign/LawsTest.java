package outrigger.shapes.campaign;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Seeds that once broke a law or were refused for rounding's sake. */
class LawsTest {
  @ParameterizedTest
  @ValueSource(longs = {3, 12, 26, 31, 41, 46, 53, 56, 59, 63, 69, 84, 110, 2915, 11549, 16555, 18555, 21631, 26439,
      61703, 94998, 97849, 105748})
  void hold_seedsThatOnceBroke_keepAllLaws(long seed) {
    Laws laws = new Laws(RandomExpression.small(seed), seed);
    laws.hold();
    assertEquals(List.of(), laws.broken());
  }

  /** Half a grid step in the axes of a turned operand, but for a last bit that hung on where all lay. */
  @ParameterizedTest
  @ValueSource(longs = {48320, 49538})
  void hold_seedsThatWereOtherwiseWhenMoved_keepAllLaws(long seed) {
    Laws laws = new Laws(RandomExpression.small(seed), seed);
    laws.hold();
    assertEquals(List.of(), laws.broken());
  }

  /** Surfaces inclined by a few millionths, or a grid step apart: they came to rest in no number of passes, or touching. */
  @ParameterizedTest
  @ValueSource(longs = {592, 1450, 2933, 3490, 3927, 5633, 6434, 7721, 8051, 8280, 8497, 9616, 11128, 11276, 11449, 11581,
      16166, 111369, 114229, 114412})
  void hold_seedsThatOnceDidNotSettle_areRefusedForTouchesOnly(long seed) {
    Laws laws = new Laws(RandomExpression.small(seed), seed);
    laws.hold();
    for (int i = 0; i < laws.refusals().size(); i++) {
      assertTrue(FinerGrid.touches(laws.refused().get(i)), seed + ": " + laws.refusals().get(i).words());
    }
  }

  /** Apart as given and shut by rounding; in the axes of a turned operand parts touch at a corner. */
  @Test
  void hold_oddSeedThatTouchesInOtherAxes_isRefusedForTouchesOnly() {
    Laws laws = new Laws(RandomExpression.odd(363), 363);
    laws.hold();
    for (int i = 0; i < laws.refusals().size(); i++) {
      assertTrue(FinerGrid.touches(laws.refused().get(i)), laws.refusals().get(i).words());
    }
  }

  /** Copies turned alike are spread on the way: where they lie makes no difference. */
  @ParameterizedTest
  @ValueSource(longs = {64, 122, 145})
  void hold_closeSeedsThatOnceBroke_keepAllLaws(long seed) {
    Laws laws = new Laws(RandomExpression.close(seed), seed);
    laws.hold();
    assertEquals(List.of(), laws.broken());
  }
}
