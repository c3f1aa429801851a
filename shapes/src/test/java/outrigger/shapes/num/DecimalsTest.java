package outrigger.shapes.num;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;

class DecimalsTest {
  private static final long SEED = 20_240_917;

  @Test
  void fixed_anyNumber_isWrittenAsJavaFormatsIt() {
    Random random = new Random(SEED);
    for (int i = 0; i < 100_000; i++) {
      int places = random.nextInt(5);
      double value = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(12) - 4);
      if (random.nextInt(3) == 0) {
        value = Math.rint(value * 1000) / 1000;
      }
      assertEquals(String.format(Locale.ROOT, "%." + places + "f", value), Decimals.fixed(value, places),
          "seed " + SEED + ", " + value);
    }
  }

  @Test
  void fixed_halves_areRoundedAwayFromZero() {
    assertEquals("0.13", Decimals.fixed(0.125, 2));
    assertEquals("-0.13", Decimals.fixed(-0.125, 2));
    assertEquals("1", Decimals.fixed(0.5, 0));
    assertEquals("-0.00", Decimals.fixed(-0.001, 2));
    assertEquals("-0.0", Decimals.fixed(-0.0, 1));
    assertEquals("100000000000", Decimals.fixed(1e11, 0));
  }
}
