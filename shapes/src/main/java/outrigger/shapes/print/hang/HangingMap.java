package outrigger.shapes.print.hang;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import outrigger.shapes.print.FacetField;
import outrigger.shapes.print.Specimen;
import outrigger.shapes.print.layer.Hang;
import outrigger.shapes.print.layer.Layering;
import outrigger.shapes.print.layer.Patch;
import outrigger.shapes.print.layer.Undersides;
import outrigger.shapes.print.sample.FacetSamples;
import outrigger.shapes.print.sample.SampleList;
import outrigger.shapes.print.tree.FacetTree;

/** Where on large undersides what hangs is a concern: a roof that is partly carried is painted where it is not. */
final class HangingMap {
  /** Distance of samples, mm, and how many there may be: own choice. */
  private static final double SPACING = 0.8;
  private static final double MOST = 1e5;

  private final Undersides undersides;
  private final Layering layering;
  private final FacetSamples samples;
  private final double spacing;
  private final Map<Integer, Integer> slots = new HashMap<>();
  private final Map<Integer, SampleList> lists = new HashMap<>();
  private final Map<Integer, List<FacetField.Place>> places = new LinkedHashMap<>();

  HangingMap(Specimen specimen, Undersides undersides, Layering layering) {
    this.undersides = undersides;
    this.layering = layering;
    FacetTree tree = specimen.facetTree();
    spacing = Math.max(SPACING, Math.sqrt(specimen.measures().area() / MOST));
    samples = new FacetSamples(tree, spacing);
    for (int slot = 0; slot < tree.size(); slot++) {
      slots.put(tree.facet(slot), slot);
    }
  }

  /** Adds what hangs; large facets under it are then painted by places. */
  void add(Hanging hanging, boolean isConcern) {
    for (Hang hang : hanging.hangs()) {
      double low = layering.middle(hang.layer() - 1);
      double high = layering.middle(hang.layer());
      for (Patch patch : hang.patches()) {
        int slot = slots.get(patch.facet());
        if (samples.isLarge(slot)) {
          List<FacetField.Place> found = places.computeIfAbsent(patch.facet(), f -> new ArrayList<>());
          if (isConcern) {
            add(list(slot), hang, low, high, undersides.lean(patch.facet()), found);
          }
        }
      }
    }
  }

  private SampleList list(int slot) {
    return lists.computeIfAbsent(slot, s -> {
      SampleList list = new SampleList();
      samples.addTo(list, s);
      return list;
    });
  }

  private void add(SampleList list, Hang hang, double low, double high, double lean, List<FacetField.Place> found) {
    for (int i = 0; i < list.size(); i++) {
      if (list.z(i) >= low && list.z(i) < high && hang.piece().holds(list.x(i), list.y(i))) {
        found.add(new FacetField.Place(list.x(i), list.y(i), list.z(i), FacetSamples.CELL * spacing, lean));
      }
    }
  }

  /** The places, by facet; an empty list for a large facet under which nothing is a concern. */
  Map<Integer, List<FacetField.Place>> places() {
    return places;
  }
}
