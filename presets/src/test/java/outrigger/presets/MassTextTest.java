package outrigger.presets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MassTextTest {
  // 1 lb = 0.453 592 37 kg exactly by the international yard and pound agreement of 1959; 16 oz to the pound.
  @ParameterizedTest
  @CsvSource({"150, 150", "150g, 150", "150 g, 150", "0.4kg, 400", "6oz, 170.09713875", "1lb, 453.59237", "16 oz, 453.59237",
      "1e-1kg, 100", "-2g, -2"})
  void parse_masses_givesGrams(String text, double expected) {
    assertEquals(expected, MassText.parse(text).value().orElseThrow());
  }

  @ParameterizedTest
  @CsvSource({"6mg, use g; kg; oz or lb", "6 G, use g; kg; oz or lb", "'0,4kg', decimal comma", "1/2lb, fraction",
      "NaN, not a number", "'', empty", "kg, not a number", "1mm, use g; kg; oz or lb"})
  void parse_others_refusesWithReason(String text, String reason) {
    LengthText.Result result = MassText.parse(text);
    assertFalse(result.isNumber(), text);
    assertTrue(result.reason().contains(reason.replace("; kg; ", ", kg, ")), result.reason());
  }
}
