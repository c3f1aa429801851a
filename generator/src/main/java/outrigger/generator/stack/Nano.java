package outrigger.generator.stack;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Lengths as whole nanometres: sums of decimals and of thousandths of an inch come out exactly. */
final class Nano {
  private static final int DECIMALS_OF_MM = 6;

  private Nano() {}

  /** A length in mm as the nearest nanometre. */
  static long of(double mm) {
    return BigDecimal.valueOf(mm).movePointRight(DECIMALS_OF_MM).setScale(0, RoundingMode.HALF_UP).longValueExact();
  }

  /** Nanometres as mm. */
  static double mm(long nano) {
    return BigDecimal.valueOf(nano, DECIMALS_OF_MM).doubleValue();
  }
}
