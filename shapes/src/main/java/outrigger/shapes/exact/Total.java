package outrigger.shapes.exact;

import java.math.BigInteger;

/**
 * A running sum of products of longs, exact in 128 bits whatever their order.
 *
 * <p>Intermediate sums may wrap; the result is right whenever the sum itself lies within +-2^127.
 */
public final class Total {
  private long high;
  private long low;

  /** Adds a x b. */
  public void add(long a, long b) {
    addWide(Math.multiplyHigh(a, b), a * b);
  }

  /** Adds a number. */
  public void add(long a) {
    addWide(a >> 63, a);
  }

  /** Adds another total. */
  public void add(Total other) {
    addWide(other.high, other.low);
  }

  private void addWide(long h, long l) {
    low += l;
    high += h + (Long.compareUnsigned(low, l) < 0 ? 1 : 0);
  }

  /** Sign of the sum: -1, 0 or 1. */
  public int signum() {
    return high < 0 ? -1 : (high | low) == 0 ? 0 : 1;
  }

  /** The sum rounded once to the nearest double. */
  public double toDouble() {
    return toBigInteger().doubleValue();
  }

  /** The sum, exact. */
  public BigInteger toBigInteger() {
    return BigInteger.valueOf(high).shiftLeft(64).add(new BigInteger(Long.toUnsignedString(low)));
  }
}
