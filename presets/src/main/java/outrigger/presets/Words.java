package outrigger.presets;

import java.util.List;

/** Lists in running text. */
final class Words {
  private Words() {}

  /** "a", "a or b", "a, b or c". */
  static String or(List<String> words) {
    return joined(words, " or ");
  }

  /** "a", "a and b", "a, b and c". */
  static String and(List<String> words) {
    return joined(words, " and ");
  }

  private static String joined(List<String> words, String last) {
    int end = words.size() - 1;
    return end < 1 ? String.join("", words) : String.join(", ", words.subList(0, end)) + last + words.get(end);
  }
}
