package outrigger.presets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LengthTextTest {
  // 25.4 mm to the inch is exact by the international yard agreement of 1959.
  @ParameterizedTest
  @CsvSource({"6, 6", "6mm, 6", "6 mm, 6", "' 6mm ', 6", "0.25in, 6.35", "40thou, 1.016", "1in, 25.4", ".5, 0.5", 
      "5., 5", "+3, 3", "-3mm, -3", "-0, 0", "1e1, 10", "1E-1in, 2.54", "0.1in, 2.54", "3.4, 3.4", "0.125in, 3.175"})
  void parse_lengths_givesMillimetres(String text, double expected) {
    assertEquals(expected, LengthText.parse(text).value().orElseThrow());
  }

  @ParameterizedTest
  @CsvSource({"NaN, not a number", "Infinity, not a number", "-Infinity, not a number", "inf, not a number",
      "0x1p3, unknown unit \"x1p3\"", "3d, unknown unit \"d\"", "3f, unknown unit \"f\"",
      "1e400, too large", "1e99999in, too large", "1e999999999, too large", "6cm, unknown unit", "6MM, unknown unit",
      "6mil, unknown unit", "'0,25in', decimal comma", "1e, unknown unit",
      "1..2, unknown unit", "--1, not a number", "mm, not a number", "'', empty", "'  ', empty",
      "6 mm mm, unknown unit", "1/8in, fraction", "1 1/2in, fraction", "1-1/2 in, fraction", "3 / 16, fraction",
      "١, not a number"})
  void parse_others_refusesWithReason(String text, String reason) {
    LengthText.Result result = LengthText.parse(text);
    assertFalse(result.isNumber(), text);
    assertTrue(result.reason().contains(reason), result.reason());
  }

  @Test
  void parse_veryLong_refuses() {
    assertTrue(LengthText.parse("1".repeat(100_000)).reason().startsWith("longer than 64 characters"));
  }

  @Test
  void parse_trailingControlCharacter_refuses() {
    assertEquals("unknown unit \"mm?\"; use mm, in or thou", LengthText.parse("6mm\u0000").reason());
  }

  @Test
  void parse_otherDefaultUnit_countsOnlyWhereTextHasNone() {
    assertEquals(25.4, LengthText.parse("1", "in").value().orElseThrow());
    assertEquals(1, LengthText.parse("1mm", "in").value().orElseThrow());
    assertThrows(IllegalArgumentException.class, () -> LengthText.parse("1", "ft"));
    assertThrows(IllegalArgumentException.class, () -> LengthText.parse("1", ""));
  }

  @Test
  void parse_localeWithCommas_readsPoints() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.GERMANY);
      assertEquals(6.35, LengthText.parse("0.25in").value().orElseThrow());
    } finally {
      Locale.setDefault(before);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"3mm", "3d", "NaN", "", "1 2"})
  void parseNumber_noPlainNumber_refuses(String text) {
    assertFalse(LengthText.parseNumber(text).isNumber());
  }

  @Test
  void parseNumber_plain_reads() {
    assertEquals(45, LengthText.parseNumber(" 45 ").value().orElseThrow());
  }
}
