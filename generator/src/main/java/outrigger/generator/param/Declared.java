package outrigger.generator.param;

import java.util.List;

/**
 * What a record declares by {@link Param}, as code that the compiler made of it (module {@code declare}): reading
 * annotations at run time takes longer than reading the tables. A test holds the two to the same.
 *
 * @param <R> the record
 */
public interface Declared<R extends Record> {
  /** One for each component, in order. */
  List<Declaration> declarations();

  /** The record of these values, one for each component. */
  R make(List<Object> values);
}
