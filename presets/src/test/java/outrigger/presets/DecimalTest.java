package outrigger.presets;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class DecimalTest {
  private static final long SEED = 40_711;
  private static final Pattern NUMBER =
      Pattern.compile("[+-]?(?:[0-9]+(?:\\.[0-9]*)?|\\.[0-9]+)(?:[eE][+-]?[0-9]{1,9})?");

  @Test
  void end_anyText_isWhereThePatternEnds() {
    Random random = new Random(SEED);
    for (int i = 0; i < 200_000; i++) {
      StringBuilder text = new StringBuilder();
      for (int n = random.nextInt(16); n > 0; n--) {
        text.append("0123456789..+-eEmi ".charAt(random.nextInt(random.nextBoolean() ? 19 : 10)));
      }
      Matcher number = NUMBER.matcher(text);
      assertEquals(number.lookingAt() ? number.end() : 0, Decimal.end(text.toString()), "seed " + SEED + ", " + text);
    }
  }
}
