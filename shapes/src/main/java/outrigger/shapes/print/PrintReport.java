package outrigger.shapes.print;

import java.util.List;
import java.util.Optional;
import outrigger.shapes.num.Axis;

/**
 * What all gauges read off a part.
 *
 * @param limits what it was held against
 * @param concerns errors first, else in the order of the gauges
 * @param facts numbers worth telling
 * @param fields numbers a facet, for maps
 * @param notExamined what was left out and why
 * @param load the axis the part was said to be loaded along; empty if nothing was said and its length was taken
 */
public record PrintReport(PrintLimits limits, List<Concern> concerns, List<Fact> facts, List<FacetField> fields,
    List<String> notExamined, Optional<Axis> load) {
  public PrintReport {
    concerns = List.copyOf(concerns);
    facts = List.copyOf(facts);
    fields = List.copyOf(fields);
    notExamined = List.copyOf(notExamined);
  }

  /** Whether any concern is an error. */
  public boolean hasErrors() {
    return concerns.stream().anyMatch(concern -> concern.severity() == Severity.ERROR);
  }
}
