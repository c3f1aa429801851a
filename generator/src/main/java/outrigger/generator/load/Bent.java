package outrigger.generator.load;

import java.util.Locale;

/**
 * A root under a jolt.
 *
 * @param part name of the part
 * @param root what bends, such as {@code post}
 * @param height of the worst layer over the part's bed, mm
 * @param jolt what the jolt does, such as {@code to the side}
 * @param force it pushes or pulls with, N
 * @param stress greatest tension between layers, MPa, above 0
 * @param strength of the plastic
 */
public record Bent(String part, String root, double height, String jolt, double force, double stress, Strength strength) {

  /** Safety factor, an estimate: strength between layers over stress. */
  public double factor() {
    return strength.across() / stress;
  }

  /** The working, one sentence. */
  public String words() {
    return String.format(Locale.ROOT, "%s: %s bears %.1f times the jolt %s of %.2f N; worst layer %.1f mm over the bed, "
        + "%.2f of %.1f MPa.", part, root, factor(), jolt, force, height, stress, strength.across());
  }
}
