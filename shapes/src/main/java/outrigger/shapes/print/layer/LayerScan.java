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
  /** Distance between the points asked on a free edge, mm. */
  private static final double APART = 0.5;
  /** Undersides are level but for rounding, degrees from the vertical. */
  private static final double LEVEL = 89;
  /** Of so much of an area as this held at both ends, the rest is corners. */
  private static final double ALL = 0.95;
  /** Lines that leave more than this part of what stands out are no bridge. */
  private static final double HELPS = 0.9;
  /** Smaller patches belong to the piece that holds their middle; of larger ones the part within it counts. */
  private static final double LARGE = 0.05;
  /** With less of a flat area than this held at both ends, the lines held are chance. */
  private static final double SOME = 0.2;

  private final Mesh mesh;
  private final Slicer slicer;
  private final Layering layering;
  private final Undersides undersides;
  private final double tangent;
  private final double bridge;
  private final double hopeless;
  private final double ledge;
  private final double line;

  /** A scan of a part, its layers and causes known. */
  public LayerScan(Specimen specimen, Layering layering, Undersides undersides) {
    mesh = specimen.mesh();
    slicer = specimen.slicer();
    this.layering = layering;
    this.undersides = undersides;
    tangent = StrictMath.tan(StrictMath.toRadians(Math.min(89.9, specimen.limit(Limit.OVERHANG) + Undersides.PLAY)));
    bridge = specimen.limit(Limit.BRIDGE);
    hopeless = specimen.limit(Limit.BRIDGE_MOST);
    ledge = specimen.limit(Limit.LEDGE);
    line = specimen.limit(Limit.EXTRUSION_WIDTH);
  }

  /** All pieces that stand out too far, from the bed up. */
  public List<Hang> hangs(Workers workers) {
    int[] layers = undersides.layers(layering).stream().toArray();
    return Blocks.each(workers, layers.length, (from, to) -> block(layers, from, to));
  }

  private List<Hang> block(int[] layers, int from, int to) {
    BitSet needed = new BitSet();
    for (int i = from; i < to; i++) {
      needed.set(layers[i] - 1, layers[i] + 1);
    }
    int[] planes = needed.stream().toArray();
    Slicer.Crossings crossings = slicer.crossings(
        IntStream.of(planes).mapToDouble(layering::middle).toArray());
    int[] seen = new int[mesh.facetCount()];
    List<Hang> hangs = new ArrayList<>();
    Layer below = new Layer(Section.empty());
    for (int i = 0, next = from; i < planes.length; i++) {
      Layer layer = new Layer(crossings.slice(i, seen).section(SIMPLER * layering.layer()));
      if (next < to && planes[i] == layers[next]) {
        hangs.addAll(compare(layers[next], layer, below));
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
  }

  private List<Hang> compare(int layer, Layer above, Layer below) {
    double snap = SNAP * layering.layer();
    boolean skims = above.grid.skims(below.grid, snap) || below.grid.skims(above.grid, snap);
    Section over = skims ? above.area.minus(below.area, snap) : above.area.minus(below.area);
    List<Hang> hangs = new ArrayList<>();
    for (Section piece : over.pieces(LEAST_AREA)) {
      if (piece.meanWidth() < LEAST_WIDTH) {
        continue;
      }
      examine(layer, piece, below.grid).map(hang -> isCorners(hang)
          ? hang.withFree(FreePart.of(piece.beyond(below.area, ledge), piece)) : hang).ifPresent(hangs::add);
    }
    return hangs;
  }

  /** Whether it is too far out at corners alone: those of a rim as wide as the limit are 1.41 times as far out. */
  private boolean isCorners(Hang hang) {
    return hang.isPeaked() && hang.span() == 0 && hang.depth() > ledge && hang.depth() <= Math.sqrt(2) * ledge;
  }

  private Optional<Hang> examine(int layer, Section piece, OutlineGrid below) {
    List<Patch> patches = patches(layer, piece);
    if (patches.isEmpty() && !holdsPit(layer, piece)) {
      return Optional.empty();
    }
    Rim rim = Rim.of(piece, below);
    if (rim.carriedLength() == 0 && nearest(rim, below) > layering.layer()) {
      return Optional.of(plain(layer, piece, true, rim, patches));
    }
    double reach = layering.step(layer) * tangent;
    Rim plain = rim.simplified(STRAIGHT);
    OutPoints edges = freeReach(layer, plain, below, reach);
    askCorners(patches, rim, edges, below);
    if (edges.most() <= reach && Math.hypot(piece.maxX() - piece.minX(), piece.maxY() - piece.minY()) <= bridge) {
      return Optional.of(plain(layer, piece, false, rim, patches));
    }
    Chords chords = Chords.best(plain);
    double shallow = chords.span() > hopeless ? HOPELESS * ledge : ledge;
    if (chords.span() > bridge && edges.most() <= shallow && RimReach.isWithin(plain, below, shallow)) {
      // a stroke or pocket cut into a wall: held all along it, not at its ends alone
      return Optional.of(ledge(layer, piece, edges, plain, below, rim, patches));
    }
    OutPoints out = out(layer, reach);
    if (chords.share() < ALL) {
      // ends on free edges are asked already where nothing is held
      List<Double> ends = chords.held() == 0 ? chords.looseMiddles() : chords.looseEnds();
      for (int i = 0; i < ends.size(); i += 2) {
        out.ask(ends.get(i), ends.get(i + 1), 0, below);
      }
      if (chords.held() == 0) {
        out.add(edges);
      } else {
        askCorners(plain, chords, out, below);
      }
    }
    double span = chords.share() >= ALL || chords.share() >= SOME && isFlat(patches) ? chords.span() : 0;
    FreePart free = chords.share() >= ALL ? FreePart.NONE : span == 0 ? FreePart.all(piece) : FreePart.of(chords, plain);
    Hang hang = new Hang(layer, layering.bottom(layer), piece, false, out.most(),
        span, chords.x(), chords.y(), chords.middle().get(0), chords.middle().get(1), out.points(), free,
        out.most() > Math.max(ledge, reach) && RimReach.isPeaked(plain, below, out.most()), rim, patches);
    Hang best = (span > bridge || out.most() > Math.max(ledge, reach)) && isFlat(patches)
        ? lay(hang, chords, below, reach, out.most()).orElse(hang) : hang;
    if (isNoBridge(best, edges)) {
      edges.add(out);
      return Optional.of(ledge(layer, piece, edges, plain, below, rim, patches));
    }
    return Optional.of(best);
  }

  /** Whether lines held in one place leave nearly all that stands out: as along the inside of a ring. */
  private boolean isNoBridge(Hang hang, OutPoints edges) {
    return hang.span() > 0 && hang.depth() > ledge && hang.rim().holds() == 1 && hang.depth() > HELPS * edges.most();
  }

  /** Corners of level undersides beside the rim of the layer's middle: where something narrows from its ledge upward. */
  private void askCorners(List<Patch> patches, Rim rim, OutPoints out, OutlineGrid below) {
    double beside = tangent * layering.layer() / 2;
    for (Patch patch : patches) {
      for (int k = 0; k < 3 && undersides.lean(patch.facet()) > LEVEL; k++) {
        int v = mesh.corner(patch.facet(), k);
        double x = Grid.toMm(mesh.x(v));
        double y = Grid.toMm(mesh.y(v));
        if (below.distance(x, y) > out.most() && rim.isFreeWithin(beside, x, y)) {
          out.ask(x, y, 0, below);
        }
      }
    }
  }

  /** Lines are samples: where what they leave ends in a corner, that stands out farthest. */
  private static void askCorners(Rim rim, Chords chords, OutPoints out, OutlineGrid below) {
    for (int e = 0; e < rim.size(); e++) {
      if (chords.endAt(rim, e)) {
        out.ask(rim.x0(e), rim.y0(e), 0, below);
        out.ask(rim.x1(e), rim.y1(e), 0, below);
      }
    }
  }

  /** Laid line on line, if it stands out less far then, or with shorter lines. */
  private Optional<Hang> lay(Hang hang, Chords chords, OutlineGrid below, double reach, double depth) {
    Rim rim = hang.rim();
    int layer = hang.layer();
    double snap = SNAP * layering.layer();
    Optional<Laying> several = Spans.shortest(hang.piece(), rim, below, hang.span(), bridge, ledge, line, snap,
        laid -> left(layer, rim, laid, reach).most());
    boolean isOne = several.isEmpty() && depth > ledge && hang.span() > 0 && rim.holds() == 1;
    Optional<Laying> laying = isOne ? Spans.along(hang.piece(), rim, below, chords, line, snap) : several;
    if (laying.isEmpty()) {
      return Optional.empty();
    }
    Laying laid = laying.get();
    OutPoints out = left(layer, rim, laid, reach);
    double span = isOne ? hang.span() : laid.span();
    boolean better = out.most() < depth - Grid.STEP
        || (span < hang.span() - Grid.STEP || hang.span() == 0 && span > 0) && out.most() <= Math.max(depth, ledge);
    double[] along = isOne ? new double[] {hang.alongX(), hang.alongY()} : laid.along();
    double[] middle = isOne ? new double[] {hang.midX(), hang.midY()} : laid.middle();
    return !better ? Optional.empty() : Optional.of(new Hang(layer, hang.z(), hang.piece(), false,
        out.most(), span, along[0], along[1], middle[0], middle[1], out.points(),
        free(hang, laid, reach, out.most()), true, rim, hang.patches()));
  }

  /** The pieces lines leave that stand out too far; round a hole whose lines lie in the air, what lines left at first. */
  private FreePart free(Hang hang, Laying laid, double reach, double most) {
    FreePart part = FreePart.NONE;
    double left = 0;
    for (Rim rest : laid.left()) {
      OutPoints out = out(hang.layer(), reach);
      laid.forEachLeft(rest, out::askOut);
      left = Math.max(left, out.most());
      part = out.most() > ledge ? part.with(rest.area() / hang.piece().area(), rest) : part;
    }
    return left < most ? hang.free() : part;
  }

  /** What lines leave, as far as it stands out from them and from the layer below. */
  private OutPoints left(int layer, Rim rim, Laying laid, double reach) {
    OutPoints out = out(layer, reach);
    laid.left().forEach(rest -> laid.forEachLeft(rest, out::askOut));
    laid.forEachOnFreeHoles(rim, out::askOut);
    return out;
  }

  /** For points of a layer that stand out further than so far. */
  private OutPoints out(int layer, double reach) {
    return new OutPoints(reach, new BesideSteep(undersides, layering.middle(layer - 1), layering.middle(layer),
        tangent * layering.layer() / 2));
  }

  private boolean isFlat(List<Patch> patches) {
    double all = patches.stream().mapToDouble(Patch::area).sum();
    return patches.stream().filter(patch -> undersides.isFlat(patch.facet())).mapToDouble(Patch::area)
        .sum() > all / 2;
  }

  private Hang ledge(int layer, Section piece, OutPoints edges, Rim plain, OutlineGrid below, Rim rim,
      List<Patch> patches) {
    return new Hang(layer, layering.bottom(layer), piece, false, edges.most(), 0, 0, 0, 0, 0,
        edges.points(), FreePart.all(piece), edges.most() > ledge && RimReach.isPeaked(plain, below, edges.most()), rim,
        patches);
  }

  private Hang plain(int layer, Section piece, boolean starts, Rim rim, List<Patch> patches) {
    return new Hang(layer, layering.bottom(layer), piece, starts, 0, 0, 0, 0, 0, 0, List.of(), FreePart.NONE, false, rim,
        patches);
  }

  /** Whether the surface has a lowest corner within this layer under the piece. */
  private boolean holdsPit(int layer, Section piece) {
    double near = 2 * layering.layer();
    boolean[] found = new boolean[1];
    undersides.forEachPit(piece.minX() - near, piece.minY() - near, layering.middle(layer - 1), piece.maxX() + near,
        piece.maxY() + near, layering.middle(layer), v -> {
          double x = Grid.toMm(mesh.x(v));
          double y = Grid.toMm(mesh.y(v));
          found[0] |= piece.holds(x, y) || piece.fromOutline(x, y) <= near;
        });
    return found[0];
  }

  private static double nearest(Rim rim, OutlineGrid below) {
    double nearest = Double.POSITIVE_INFINITY;
    for (int e = 0; e < rim.size(); e++) {
      nearest = Math.min(nearest, below.distance(rim.x0(e), rim.y0(e)));
    }
    return nearest;
  }

  /** Free edges above steep facets, as far as they stand out from the layer below. */
  private OutPoints freeReach(int layer, Rim rim, OutlineGrid below, double reach) {
    OutPoints out = out(layer, reach);
    for (int e = 0; e < rim.size(); e++) {
      if (rim.isCarried(e)) {
        continue;
      }
      int steps = (int) Math.min(64, Math.max(1, Math.ceil(rim.length(e) / APART)));
      for (int i = 0; i < steps; i++) {
        double t = (double) i / steps;
        out.ask(rim.x0(e) + t * (rim.x1(e) - rim.x0(e)), rim.y0(e) + t * (rim.y1(e) - rim.y0(e)), rim.length(e) / steps,
            below);
      }
    }
    return out;
  }

  private List<Patch> patches(int layer, Section piece) {
    List<Patch> patches = new ArrayList<>();
    double low = layering.middle(layer - 1);
    double high = layering.middle(layer);
    LoopArea area = new LoopArea(piece.loops());
    undersides.forEachSteep(piece.minX(), piece.minY(), low, piece.maxX(), piece.maxY(), high, slot -> {
      Patch patch = Patch.between(mesh, undersides.facet(slot), low, high);
      if (patch.area() > LARGE * piece.area()) {
        Patch.within(piece, mesh, undersides.facet(slot), low, high).ifPresent(patches::add);
      } else if (patch.area() > 0 && area.holds(patch.x(), patch.y())) {
        patches.add(patch);
      }
    });
    return patches;
  }
}
