package outrigger.generator.param;

import java.util.Collection;
import java.util.List;
import outrigger.presets.NearNames;

/** Words a user may have meant. */
public final class NearMiss {
  private NearMiss() {}

  /** The known words close to a mistyped one, closest first, at most three; an underscore counts as a dash. */
  public static List<String> of(String word, Collection<String> known) {
    return NearNames.of(word.replace('_', '-'), known);
  }

  /** Advice for a mistyped word: what was meant if anything is near, else everything known. */
  public static String advice(String word, Collection<String> known) {
    List<String> near = of(word, known);
    if (near.isEmpty()) {
      return known.isEmpty() ? "Leave it out." : "Known are: " + String.join(", ", known) + ".";
    }
    return "Did you mean " + String.join(" or ", near) + "?";
  }
}
