package outrigger.generator.layout;

import outrigger.generator.param.Texts;
import outrigger.generator.param.Unit;

/** Millimetres as whole micrometres, rounded to the safe side; decimals' noise aside. */
final class Micro {
  static final double PER_MM = 1000;
  private static final double NOISE = 1e-6;

  private Micro() {}

  static long up(double mm) {
    return (long) Math.ceil(mm * PER_MM - NOISE);
  }

  static long down(double mm) {
    return (long) Math.floor(mm * PER_MM + NOISE);
  }

  static double mm(long micrometres) {
    return micrometres / PER_MM;
  }

  /** A length in words, to the nearest micrometre. */
  static String words(double mm) {
    double rounded = Math.rint(mm * PER_MM) / PER_MM;
    return Texts.number(rounded == 0 ? 0 : rounded, Unit.MM);
  }
}
