package outrigger.shapes.exact;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigInteger;
import java.util.Random;
import org.junit.jupiter.api.Test;

class TotalTest {
  @Test
  void add_randomProducts_exactSum() {
    Random random = new Random(3);
    for (int run = 0; run < 200; run++) {
      Total total = new Total();
      BigInteger expected = BigInteger.ZERO;
      for (int i = 0; i < 50; i++) {
        long a = random.nextLong() >> random.nextInt(60) + 2;
        long b = random.nextLong() >> random.nextInt(60) + 2;
        total.add(a, b);
        expected = expected.add(BigInteger.valueOf(a).multiply(BigInteger.valueOf(b)));
        assertEquals(expected, total.toBigInteger(), "run " + run + ", seed 3");
        assertEquals(expected.signum(), total.signum());
      }
      assertEquals(expected.doubleValue(), total.toDouble());
    }
  }

  @Test
  void add_sameProductTakenBack_zero() {
    Total total = new Total();
    total.add(Long.MAX_VALUE, 12345);
    Total back = new Total();
    back.add(Long.MAX_VALUE, -12345);
    total.add(back);
    assertEquals(0, total.signum());
    assertEquals(0.0, total.toDouble());
  }
}
