package outrigger.shapes.print.layer;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.num.Grid;
import outrigger.shapes.num.Workers;
import outrigger.shapes.print.Limit;
import outrigger.shapes.print.Specimen;
import outrigger.shapes.print.slice.Blocks;
import outrigger.shapes.print.slice.Slicer;
import outrigger.shapes.profile.Section;

/**
 * Lays each layer on the one below and takes what stands out further than the overhang limit lets it.
 *
 * <p>Layers are sliced at their middles. Only layers are compared in which {@link Undersides} sees a cause.
 */
public final class LayerScan {
  /**
   * Published trials pass free ledges of 0.5 to 1.5 mm (Mazlan et al. 2020, J. Adv. Ind. Technol. Appl.): three times the
   * standard limit is past all of them.
   */
  public static final double HOPELESS = 3;
  /** What is exactly at a limit is within it, however the part is turned: lengths change by as much in rounding, mm. */
  public static final double ROUNDING = 5e-3;
  /** Pieces smaller than this are no bead, mm^2. */
  private static final double LEAST_AREA = 1e-4;
  /** Narrower ones are what rounding leaves of a wall, mm: it wanders by two grid steps. */
  private static final double LEAST_WIDTH = 1e-3;
  /** Corners nearer to their neighbours' line than this share of a layer are left out: a fifth of the play allowed. */
  private static final double SIMPLER = 0.002;
  /** Outlines nearer than this share of a layer are one: walls turned off the axes wander by two grid steps. */
  private static final double SNAP = 0.001;
  /** Beads are laid across a rim, and its free edges walked, with corners left out that lie nearer to their line, mm. */
  private static final double STRAIGHT = 0.004;
  /** Of so much of an area as this held at both ends, the rest is corners. */
  private static final double ALL = 0.95;
  /** Lines that leave more than this part of what stands out are no bridge. */
  private static final double HELPS = 0.9;
  /** With less of a flat area than this held at both ends, the lines held are chance. */
  private static final double SOME = 0.2;

  private final Mesh mesh;
  private final Slicer slicer;
  private final Layering layering;
  private final Undersides undersides;
  private final Causes causes;
  private final FreeEdges freeEdges;
  private final LayingLimits limits;
  private final double tangent;
  private final double hopeless;

  /** A scan of a part, its layers and causes known. */
  public LayerScan(Specimen specimen, Layering layering, Undersides undersides) {
    mesh = specimen.mesh();
    slicer = specimen.slicer();
    this.layering = layering;
    this.undersides = undersides;
    tangent = Undersides.tangent(specimen.limit(Limit.OVERHANG));
    hopeless = specimen.limit(Limit.BRIDGE_MOST);
    limits = new LayingLimits(specimen.limit(Limit.BRIDGE), specimen.limit(Limit.LEDGE),
        specimen.limit(Limit.EXTRUSION_WIDTH), SNAP * layering.layer());
    causes = new Causes(mesh, layering, undersides);
    freeEdges = new FreeEdges(mesh, undersides);
  }

  /** All pieces that stand out too far, from the bed up. */
  public List<Hang> hangs(Workers workers) {
    int[] layers = undersides.layers(layering).stream().toArray();
    return Blocks.each(workers, layers.length, (from, to) -> block(layers, from, to));
  }

  private List<Hang> block(int[] layers, int from, int to) {
    // what the layer below the first leaves out
    int first = from > 0 && layers[from - 1] == layers[from] - 1 ? from - 1 : from;
    BitSet needed = new BitSet();
    for (int i = first; i < to; i++) {
      needed.set(layers[i] - 1, layers[i] + 1);
    }
    int[] planes = needed.stream().toArray();
    Slicer.Crossings crossings = slicer.crossings(
        IntStream.of(planes).mapToDouble(layering::middle).toArray());
    int[] seen = new int[mesh.facetCount()];
    List<Hang> hangs = new ArrayList<>();
    Layer below = new Layer(Section.empty());
    for (int i = 0, next = first; i < planes.length; i++) {
      Layer layer = new Layer(crossings.slice(i, seen).section(SIMPLER * layering.layer()));
      if (next < to && planes[i] == layers[next]) {
        List<Section> out = out(layer, below);
        if (next >= from) {
          hangs.addAll(hangs(layers[next], out, below));
        }
        layer = layer.without(hairs(layers[next], out));
        next++;
      }
      below = layer;
    }
    return hangs;
  }

  /** A layer's area with its outlines in a grid. */
  private record Layer(Section area, OutlineGrid grid) {
    Layer(Section area) {
      this(area, new OutlineGrid(area.loops()));
    }

    Layer without(List<Section> parts) {
      Section left = area;
      for (Section part : parts) {
        left = left.minus(part);
      }
      return parts.isEmpty() ? this : new Layer(left);
    }
  }

  /** The pieces of a layer that do not lie on the one below. */
  private List<Section> out(Layer above, Layer below) {
    double snap = limits.snap();
    boolean skims = above.grid.skims(below.grid, snap) || below.grid.skims(above.grid, snap);
    return (skims ? above.area.minus(below.area, snap) : above.area.minus(below.area)).pieces(LEAST_AREA);
  }

  private static boolean isHair(Section piece) {
    return piece.meanWidth() < LEAST_WIDTH;
  }

  /** Hairs over an underside, as where the middle of a layer just meets a round bar from below: they carry nothing. */
  private List<Section> hairs(int layer, List<Section> out) {
    return out.stream().filter(piece -> isHair(piece) && !under(layer, piece).isEmpty()).toList();
  }

  private SteepUnder under(int layer, Section piece) {
    return new SteepUnder(undersides, piece, layering.middle(layer - 1), layering.middle(layer),
        layering.step(layer) * tangent);
  }

  private List<Hang> hangs(int layer, List<Section> out, Layer below) {
    List<Hang> hangs = new ArrayList<>();
    for (Section piece : out) {
      if (!isHair(piece)) {
        examine(layer, piece, below.grid).ifPresent(hangs::add);
      }
    }
    return hangs;
  }

  /**
   * A piece that stands out over the layer below it.
   *
   * @param patches its undersides
   * @param plain its rim with fewer corners, over which beads are laid
   */
  private record Piece(int layer, Section section, OutlineGrid below, List<Patch> patches, Rim rim, Rim plain) {}

  private Optional<Hang> examine(int layer, Section section, OutlineGrid below) {
    double reach = layering.step(layer) * tangent;
    SteepUnder under = under(layer, section);
    List<Patch> patches = causes.patches(layer, section, under);
    if (patches.isEmpty() && !causes.holdPit(layer, section)) {
      return Optional.empty();
    }
    Rim rim = Rim.of(section, below);
    Piece piece = new Piece(layer, section, below, patches, rim, rim.simplified(STRAIGHT));
    if (rim.carriedLength() == 0 && nearest(rim, below) > layering.layer()) {
      return Optional.of(unmeasured(piece, true));
    }
    OutPoints edges = FreeEdges.asked(under, piece.plain, below, reach);
    freeEdges.askCorners(patches, rim, reach, edges, below);
    if (edges.most() <= reach
        && Math.hypot(section.maxX() - section.minX(), section.maxY() - section.minY()) <= limits.bridge()) {
      return Optional.of(unmeasured(piece, false));
    }
    Chords chords = Chords.best(piece.plain);
    double shallow = chords.span() > hopeless ? HOPELESS * limits.ledge() : limits.ledge();
    // a stroke or pocket cut into a wall is held all along it, not at its ends alone
    boolean isStroke = chords.span() > limits.bridge() && edges.most() <= shallow
        && RimReach.isWithin(piece.plain, below, shallow);
    Hang hang = isStroke ? ledge(piece, edges) : laid(piece, edges, chords, reach);
    if (isWithinButCorners(hang, piece, reach)) {
      return Optional.of(unmeasured(piece, false));
    }
    boolean isCorners = hang.isPeaked() && hang.depth() > limits.ledge()
        && isWithinButCorners(hang, piece, limits.ledge() + ROUNDING);
    return Optional.of(isCorners ? hang.narrowButCorners() : hang);
  }

  /**
   * Whether a level piece stands out no further than a length but at right-angled corners: as steps do on a smooth slope,
   * and ledges, which are reckoned by their edges.
   */
  private boolean isWithinButCorners(Hang hang, Piece piece, double most) {
    return hang.span() == 0 && hang.depth() > 0 && hang.depth() <= Math.sqrt(2) * most && causes.areFlat(piece.patches)
        && RimReach.isWithinButCorners(piece.plain, piece.below, most);
  }

  /** A piece with lines laid over it, and line on line where that is better; a ledge where lines are no bridge. */
  private Hang laid(Piece piece, OutPoints edges, Chords chords, double reach) {
    double ledge = limits.ledge();
    OutPoints out = beyond(piece, edges, chords);
    boolean isFlat = causes.areFlat(piece.patches);
    double span = chords.share() >= ALL || chords.share() >= SOME && isFlat ? chords.span() : 0;
    FreePart free = chords.share() >= ALL ? FreePart.NONE
        : span == 0 ? FreePart.all(piece.section) : FreePart.of(chords, piece.plain);
    Hang hang = new Hang(piece.layer, layering.bottom(piece.layer), piece.section, false, span, chords.x(), chords.y(),
        chords.middle().get(0), chords.middle().get(1), out, free, outmost(piece, out, Math.max(ledge, reach)), piece.rim,
        piece.patches);
    // what closes a round roof that winds is held on both its sides, if not by lines of one direction
    boolean closes = !isFlat && out.most() > reach && piece.rim.isMostlyCarried() && piece.rim.holds() > 1;
    Hang best = closes || isFlat && (span > limits.bridge() || out.most() > Math.max(ledge, reach))
        ? lay(hang, chords, piece.below, out).orElse(hang) : hang;
    if (isNoBridge(best, edges)) {
      edges.add(out);
      return ledge(piece, edges);
    }
    return best;
  }

  /** What lines leave of a piece, as far as it stands out. */
  private OutPoints beyond(Piece piece, OutPoints edges, Chords chords) {
    OutPoints out = edges.others();
    if (chords.share() < ALL) {
      // ends on free edges are asked already where nothing is held
      List<Double> ends = chords.held() == 0 ? chords.looseMiddles() : chords.looseEnds();
      for (int i = 0; i < ends.size(); i += 2) {
        out.ask(ends.get(i), ends.get(i + 1), piece.below);
      }
      if (chords.held() == 0) {
        out.add(edges);
      } else {
        FreeEdges.askCorners(piece.plain, chords, out, piece.below);
      }
    }
    return out;
  }

  /** Whether lines held in one place leave nearly all that stands out: as along the inside of a ring. */
  private boolean isNoBridge(Hang hang, OutPoints edges) {
    return hang.span() > 0 && hang.depth() > limits.ledge() && hang.rim().holds() == 1
        && hang.depth() > HELPS * edges.most();
  }

  /** Laid line on line, if it stands out less far then, or with shorter lines. */
  private Optional<Hang> lay(Hang hang, Chords chords, OutlineGrid below, OutPoints plain) {
    Rim rim = hang.rim();
    double depth = plain.most();
    Optional<Laying> several = Spans.shortest(hang.piece(), rim, below, hang.span(), limits,
        laid -> left(plain, rim, laid).most());
    boolean isOne = several.isEmpty() && depth > limits.ledge() && hang.span() > 0 && rim.holds() == 1;
    Optional<Laying> laying = isOne ? Spans.along(hang.piece(), rim, below, chords, limits) : several;
    if (laying.isEmpty()) {
      return Optional.empty();
    }
    Laying laid = laying.get();
    OutPoints out = left(plain, rim, laid);
    double span = isOne ? hang.span() : laid.span();
    boolean shorter = span < hang.span() - Grid.STEP || hang.span() == 0 && span > 0;
    boolean better = out.most() < depth - Grid.STEP || shorter && out.most() <= Math.max(depth, limits.ledge());
    double[] along = isOne ? new double[] {hang.alongX(), hang.alongY()} : laid.along();
    double[] middle = isOne ? new double[] {hang.midX(), hang.midY()} : laid.middle();
    return !better ? Optional.empty() : Optional.of(new Hang(hang.layer(), hang.z(), hang.piece(), false,
        span, along[0], along[1], middle[0], middle[1], out, free(hang, laid, out),
        Hang.Outmost.CORNER, rim, hang.patches()));
  }

  /** The pieces lines leave that stand out too far; round a hole whose lines lie in the air, what lines left at first. */
  private FreePart free(Hang hang, Laying laid, OutPoints all) {
    FreePart part = FreePart.NONE;
    double left = 0;
    for (Rim rest : laid.left()) {
      OutPoints out = all.others();
      laid.forEachLeft(rest, out::askOut);
      left = Math.max(left, out.most());
      part = out.most() > limits.ledge() ? part.with(rest.area() / hang.piece().area(), rest) : part;
    }
    return left < all.most() ? hang.free() : part;
  }

  /** What lines leave, as far as it stands out from them and from the layer below. */
  private static OutPoints left(OutPoints plain, Rim rim, Laying laid) {
    OutPoints out = plain.others();
    laid.left().forEach(rest -> laid.forEachLeft(rest, out::askOut));
    laid.forEachOnFreeHoles(rim, out::askOut);
    return out;
  }

  /** A piece held along its rim, on which no lines are laid. */
  private Hang ledge(Piece piece, OutPoints edges) {
    return new Hang(piece.layer, layering.bottom(piece.layer), piece.section, false, 0, 0, 0, 0, 0, edges,
        FreePart.all(piece.section), outmost(piece, edges, limits.ledge()), piece.rim, piece.patches);
  }

  /** A piece of which it is not asked how far it stands out: it starts in the air, or no point of it is too far. */
  private Hang unmeasured(Piece piece, boolean starts) {
    return new Hang(piece.layer, layering.bottom(piece.layer), piece.section, starts, 0, 0, 0, 0, 0,
        OutPoints.NONE, FreePart.NONE, Hang.Outmost.EDGE, piece.rim, piece.patches);
  }

  /** What stands out farthest, if that is further than a limit. */
  private static Hang.Outmost outmost(Piece piece, OutPoints out, double limit) {
    return out.most() > limit && RimReach.isPeaked(piece.plain, piece.below, out.most()) ? Hang.Outmost.CORNER
        : Hang.Outmost.EDGE;
  }

  /** How far the nearest corner of a rim lies from what is below. */
  private static double nearest(Rim rim, OutlineGrid below) {
    double nearest = Double.POSITIVE_INFINITY;
    for (int e = 0; e < rim.size(); e++) {
      nearest = Math.min(nearest, below.distance(rim.x0(e), rim.y0(e)));
    }
    return nearest;
  }
}
