package outrigger.generator.truck;

import outrigger.generator.param.BadDimension;
import outrigger.generator.param.Fault;
import outrigger.generator.param.Given;
import outrigger.generator.param.Origin;
import outrigger.generator.param.ParamValues;
import outrigger.generator.param.Refused;

/**
 * One table of a plan as a record, with the place of every value for messages.
 *
 * @param name what messages call it, such as {@code mount cab-front}
 * @param record its values
 * @param values what was written for each key
 * @param where where the table begins
 */
public record Told<R extends Record>(String name, R record, ParamValues<R> values, Origin where) {

  /** Whether a key was written, and did not stay at its default. */
  public boolean isGiven(String key) {
    return values.given(key).origin().kind() != Origin.Kind.DEFAULT;
  }

  /** What was written for a key. */
  public Given given(String key) {
    return values.given(key);
  }

  /** Place of a key; of the table where the key stands at its default. */
  public Origin where(String key) {
    return isGiven(key) ? given(key).origin() : where;
  }

  /**
   * A fault of one of its keys.
   *
   * @param what what is wrong, with the values and the limit, no full stop
   * @param advice what to change, whole sentences
   */
  public Fault fault(String key, String what, String advice) {
    Origin place = where(key);
    String told = isGiven(key) ? key + ": " + place.words() : key + " is at its default; " + place.words();
    return new Fault(name, key, what + " (" + told + ")", given(key).text(), "", advice, place);
  }

  /** What is wrong with it according to a refusal of its own keys. */
  public Fault fault(BadDimension refusal) {
    Refused refused = Refused.by(refusal);
    return fault(refused.parameter(), refused.what(), refused.advice());
  }
}
