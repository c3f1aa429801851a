package outrigger.shapes.print;

import java.util.List;

/**
 * What one gauge reads off a part.
 *
 * @param concerns in the order they are told among those of one severity; several facets of one place are one concern
 * @param facts numbers worth telling
 * @param fields numbers a facet, for maps, in the order of the specimen's mesh
 * @param notExamined what was left out and why, one sentence each
 */
public record Reading(List<Concern> concerns, List<Fact> facts, List<FacetField> fields, List<String> notExamined) {
  public Reading {
    concerns = List.copyOf(concerns);
    facts = List.copyOf(facts);
    fields = List.copyOf(fields);
    notExamined = List.copyOf(notExamined);
  }

  /** Concerns and facts alone. */
  public static Reading of(List<Concern> concerns, List<Fact> facts) {
    return new Reading(concerns, facts, List.of(), List.of());
  }
}
