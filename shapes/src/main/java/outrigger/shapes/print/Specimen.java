package outrigger.shapes.print;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import outrigger.shapes.check.CheckedMesh;
import outrigger.shapes.check.Measures;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.Workers;
import outrigger.shapes.print.facet.Arrangement;
import outrigger.shapes.print.facet.DirectionSums;
import outrigger.shapes.print.facet.Facets;
import outrigger.shapes.print.slice.Slicer;
import outrigger.shapes.print.tree.FacetTree;

/**
 * A proven part as it stands on the bed, with all that gauges share.
 *
 * <p>Z is up. The bed lies at the part's least z, wherever that is.
 */
public final class Specimen {
  private final Arrangement arrangement;
  private final Measures measures;
  private final PrintLimits limits;
  private final Map<String, Double> heights;
  private final Workers workers;
  private final boolean mapped;
  private final Optional<Axis> load;
  private Facets facets;
  private FacetTree facetTree;
  private DirectionSums directions;
  private Slicer slicer;
  private Hollows hollows;
  private final Map<String, Once> readings = new ConcurrentHashMap<>();

  /**
   * A part to be measured for its concerns; its maps tell nothing beyond what these need.
   *
   * @param heights heights above the bed the part promises, by name, mm; empty for a file of unknown origin
   * @param workers who measures
   */
  public Specimen(CheckedMesh checked, PrintLimits limits, Map<String, Double> heights, Workers workers) {
    this(Arrangement.of(checked.mesh(), workers), checked.measures(), limits, heights, workers, false, Optional.empty());
  }

  private Specimen(Arrangement arrangement, Measures measures, PrintLimits limits, Map<String, Double> heights,
      Workers workers, boolean mapped, Optional<Axis> load) {
    this.load = load;
    this.mapped = mapped;
    this.arrangement = arrangement;
    this.measures = measures;
    this.limits = limits;
    this.heights = Collections.unmodifiableMap(new LinkedHashMap<>(heights));
    this.workers = workers;
  }

  /** The proven mesh, its facets in an order that hangs on their places alone. */
  public Mesh mesh() {
    return arrangement.mesh();
  }

  /** A field over the facets of that, as one over those of the mesh given. */
  FacetField asGiven(FacetField field) {
    return field.in(arrangement);
  }

  /** What it measures. */
  public Measures measures() {
    return measures;
  }

  /** What it is held against. */
  public PrintLimits limits() {
    return limits;
  }

  /** The value of a limit. */
  public double limit(Limit limit) {
    return limits.of(limit);
  }

  /** Heights above the bed that the part promises, by name, mm. */
  public Map<String, Double> heights() {
    return heights;
  }

  /** Threads to spread work over. */
  public Workers workers() {
    return workers;
  }

  /** The same, its maps to tell widths up to twice the limit, which takes longer. */
  public Specimen mapped() {
    return new Specimen(arrangement, measures, limits, heights, workers, true, load);
  }

  /** The same, each gauge to do all its work on the thread that asks it. */
  Specimen alone() {
    return new Specimen(arrangement, measures, limits, heights, Workers.of(1), mapped, load);
  }

  /** The same, pulled or bent along an axis, which its layers had better not lie across. */
  public Specimen loaded(Axis along) {
    return new Specimen(arrangement, measures, limits, heights, workers, mapped, Optional.of(along));
  }

  /** The axis it is loaded along; empty if nothing is known, and its length is taken. */
  public Optional<Axis> load() {
    return load;
  }

  /** Whether maps tell widths up to twice the limit. */
  public boolean isMapped() {
    return mapped;
  }

  /** Height of the bed, mm. */
  public double bed() {
    return measures.minZ();
  }

  /** Normals and areas of the facets; made once. */
  public synchronized Facets facets() {
    if (facets == null) {
      facets = new Facets(mesh());
    }
    return facets;
  }

  /** Facets by the way they face; made once. */
  public synchronized DirectionSums directions() {
    if (directions == null) {
      directions = new DirectionSums(mesh(), facets());
    }
    return directions;
  }

  /** Cuts the part by level planes; made once. */
  public synchronized Slicer slicer() {
    if (slicer == null) {
      slicer = Slicer.of(mesh());
    }
    return slicer;
  }

  /** Its closed hollows; sought once. */
  public synchronized Hollows hollows() {
    if (hollows == null) {
      hollows = Hollows.of(this);
    }
    return hollows;
  }

  /** What a gauge reads off it; read once, though another gauge asks too. */
  public Reading reading(Gauge gauge) {
    return readings.computeIfAbsent(gauge.name(), name -> new Once()).of(gauge, this);
  }

  /** A reading once it is taken; others wait for it, and for it alone. */
  private static final class Once {
    private Reading reading;

    private synchronized Reading of(Gauge gauge, Specimen specimen) {
      if (reading == null) {
        reading = gauge.read(specimen);
      }
      return reading;
    }
  }

  /** Facets in mm for asking what lies near a place; made once. */
  public synchronized FacetTree facetTree() {
    if (facetTree == null) {
      facetTree = FacetTree.of(arrangement, facets());
    }
    return facetTree;
  }
}
