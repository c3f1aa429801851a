package outrigger.generator.param;

/** What an exception offers that refuses a parameter in the user's words, wherever it is thrown. */
public interface Refusal {
  /** Key of the parameter to look at first, such as {@code post-diameter}. */
  String parameter();

  /** What is wrong, with the values and the limit, no full stop. */
  String what();

  /** What to change. */
  String advice();
}
