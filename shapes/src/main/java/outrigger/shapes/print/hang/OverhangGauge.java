package outrigger.shapes.print.hang;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import outrigger.shapes.print.Concern;
import outrigger.shapes.print.FacetField;
import outrigger.shapes.print.Fact;
import outrigger.shapes.print.Gauge;
import outrigger.shapes.print.Limit;
import outrigger.shapes.print.Reading;
import outrigger.shapes.print.Specimen;
import outrigger.shapes.print.layer.Hang;
import outrigger.shapes.print.layer.LayerScan;
import outrigger.shapes.print.layer.Layering;
import outrigger.shapes.print.layer.Undersides;

/**
 * Finds what its layer below does not carry: slopes beyond the limit, flat ledges, bridges, what starts in the air, and
 * the roofs of round holes that lie on their side.
 *
 * <p>Slopes exactly at the limit pass; so does what stands out no further in all than the ledge limit. A bridge is an
 * area whose beads, laid in the direction that suits best, lie on the layer below with both ends.
 */
public final class OverhangGauge implements Gauge {
  @Override
  public String name() {
    return "overhang";
  }

  @Override
  public Reading read(Specimen specimen) {
    Undersides undersides = Undersides.of(specimen, specimen.limit(Limit.OVERHANG));
    Layering layering = Layering.of(specimen);
    List<Hang> hangs = new LayerScan(specimen, layering, undersides).hangs(specimen.workers());
    List<Concern> concerns = new ArrayList<>();
    List<RoundRoof> roofs = new ArrayList<>();
    List<Double> sagging = new ArrayList<>();
    double leaning = 0;
    double[] leans = undersides.leans(specimen.isMapped());
    HangingConcerns judge = new HangingConcerns(specimen, undersides);
    Optional<HangingMap> map = specimen.isMapped() ? Optional.of(new HangingMap(specimen, undersides, layering))
        : Optional.empty();
    for (Hanging hanging : Hangings.of(hangs, specimen)) {
      Optional<RoundRoof> roof = hanging.starts() || hanging.depth() <= specimen.limit(Limit.LEDGE) ? Optional.empty()
          : RoundRoof.of(hanging, undersides, specimen.mesh());
      List<Concern> found = judge.concerns(hanging, roof);
      roof.ifPresent(round -> {
        roofs.add(round);
        sagging.add(hanging.area());
      });
      map.ifPresent(all -> all.add(hanging, !found.isEmpty()));
      if (found.isEmpty()) {
        hanging.patches().forEach(patch -> leans[patch.facet()] = Double.NaN);
      }
      concerns.addAll(found);
      leaning += hanging.area();
    }
    concerns.sort((a, b) -> a.severity() != b.severity() ? a.severity().compareTo(b.severity())
        : Double.compare(-a.area(), -b.area()));
    List<Fact> facts = new ArrayList<>(judge.facts(roofs, sagging));
    facts.add(judge.support(concerns, leaning));
    return new Reading(concerns, facts, List.of(field(leans, undersides, layering, specimen)
        .withPlaces(map.map(HangingMap::places).orElse(Map.of()), Double.NaN)), List.of());
  }

  /** Leans of what hangs; what lies in the first layer rests on the bed. */
  private static FacetField field(double[] leans, Undersides undersides, Layering layering, Specimen specimen) {
    for (int f = 0; f < leans.length; f++) {
      if (undersides.highest(f) <= layering.middle(0)) {
        leans[f] = Double.NaN;
      }
    }
    return new FacetField("overhang", "degree", Undersides.beyond(specimen.limit(Limit.OVERHANG)), false, leans);
  }
}
