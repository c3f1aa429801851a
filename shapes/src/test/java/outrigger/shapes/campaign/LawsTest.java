package outrigger.shapes.campaign;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Seeds whose volume or mesh once hung on the order, place or position of the operands. */
class LawsTest {
  @ParameterizedTest
  @ValueSource(longs = {3, 12, 26, 31, 41, 46, 53, 56, 59, 63, 69, 84, 110})
  void hold_seedsThatOnceBroke_keepAllLaws(long seed) {
    Laws laws = new Laws(RandomExpression.small(seed), seed);
    laws.hold();
    assertEquals(List.of(), laws.broken());
  }
}
