package outrigger.generator.accessory;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import outrigger.generator.joint.Fixings;
import outrigger.shapes.solid.Solid;

/**
 * One printable part, in its build pose: Z up from the bed, lowest point at z = 0.
 *
 * @param suffix what tells it from its siblings in file names, empty for the only one
 * @param solid its shape
 * @param pose how it lies on the bed, one sentence
 * @param notes what the maker should know (layers, fits, cautions), one sentence each
 * @param stated dimensions it promises, by name, mm; tests measure the mesh against them
 * @param heights which heights above the bed it promises, by name, mm: those that layers may miss
 * @param fixings the joints and loose things it is assembled with
 */
public record Part(String suffix, Solid solid, String pose, List<String> notes, Map<String, Double> stated,
    Map<String, Double> heights, Fixings fixings) {
  public Part {
    notes = List.copyOf(notes);
    stated = ordered(stated);
    heights = ordered(heights);
  }

  /** A part that promises no height but that over all. */
  public Part(String suffix, Solid solid, String pose, List<String> notes, Map<String, Double> stated, Fixings fixings) {
    this(suffix, solid, pose, notes, stated, Map.of(), fixings);
  }

  private static Map<String, Double> ordered(Map<String, Double> map) {
    return Collections.unmodifiableMap(new LinkedHashMap<>(map));
  }

  /** What it is assembled with, such as "2 x M3-socket x 10", one entry each. */
  public List<String> hardware() {
    return fixings.lines();
  }
}
