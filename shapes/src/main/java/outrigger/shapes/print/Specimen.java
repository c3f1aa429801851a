package outrigger.shapes.print;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import outrigger.shapes.check.CheckedMesh;
import outrigger.shapes.check.Measures;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.Workers;
import outrigger.shapes.print.facet.Arrangement;
import outrigger.shapes.print.facet.DirectionSums;
import outrigger.shapes.print.facet.Facets;
import outrigger.shapes.print.facet.Seams;
import outrigger.shapes.print.slice.Slicer;
import outrigger.shapes.print.tree.FacetTree;

/**
 * A proven part as it stands on the bed, with all that gauges share: what is made of it is made once, when it is first asked
 * for.
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
  private final Once<Facets> facets = new Once<>(() -> new Facets(mesh()));
  private final Once<FacetTree> facetTree;
  private final Once<DirectionSums> directions = new Once<>(() -> new DirectionSums(mesh(), facets()));
  private final Once<Slicer> slicer = new Once<>(() -> Slicer.of(mesh()));
  private final Once<Hollows> hollows = new Once<>(() -> Hollows.of(this));
  private final Map<String, Once<Reading>> readings = new ConcurrentHashMap<>();

  /** Something made when it is first asked for; who asks meanwhile waits for it, and for it alone. */
  private static final class Once<T> {
    private final Supplier<T> maker;
    private T made;

    private Once(Supplier<T> maker) {
      this.maker = maker;
    }

    private synchronized T get() {
      if (made == null) {
        made = maker.get();
      }
      return made;
    }
  }

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
    facetTree = new Once<>(() -> FacetTree.of(arrangement, facets()));
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

  /** Normals and areas of the facets. */
  public Facets facets() {
    return facets.get();
  }

  /** Facets in mm for asking what lies near a place. */
  public FacetTree facetTree() {
    return facetTree.get();
  }

  /** Facets by the way they face. */
  public DirectionSums directions() {
    return directions.get();
  }

  /** Cuts the part by level planes. */
  public Slicer slicer() {
    return slicer.get();
  }

  /** Which facet lies across each edge. */
  public Seams seams() {
    return slicer().seams();
  }

  /** Its closed hollows. */
  public Hollows hollows() {
    return hollows.get();
  }

  /** What a gauge reads off it; read once, though another gauge asks too. */
  public Reading reading(Gauge gauge) {
    return readings.computeIfAbsent(gauge.name(), name -> new Once<>(() -> gauge.read(this))).get();
  }
}
