package outrigger.shapes.print.hang;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import outrigger.shapes.print.Concern;
import outrigger.shapes.print.Fact;
import outrigger.shapes.print.Limit;
import outrigger.shapes.print.Severity;
import outrigger.shapes.print.Specimen;
import outrigger.shapes.print.Words;
import outrigger.shapes.print.layer.Hang;
import outrigger.shapes.print.layer.LayerScan;
import outrigger.shapes.print.layer.Patch;
import outrigger.shapes.print.layer.Undersides;
import outrigger.shapes.print.slice.FlatBox;
import outrigger.shapes.print.slice.FlatHull;

/** Judges what hangs and puts it into words. */
final class HangingConcerns {
  /** Good cooling gets so much further than the limit, degrees: 50 to 60 instead of 45; common practice. */
  private static final double COOLED = 15;
  /** What an island grows to within so much of its lowest place is its bottom, as that of a round bar, mm: own choice. */
  private static final double BOTTOM = 1;

  private final Specimen specimen;
  private final Undersides undersides;

  HangingConcerns(Specimen specimen, Undersides undersides) {
    this.specimen = specimen;
    this.undersides = undersides;
  }

  private static boolean isBeyond(double length, double limit) {
    return length > limit + LayerScan.ROUNDING;
  }

  /** Whether it stands out further than a ledge may without being held at both ends. */
  private boolean isLoose(Hanging hanging) {
    return !hanging.starts() && isBeyond(hanging.depth(), specimen.limit(Limit.LEDGE)) && !isNarrowRoof(hanging)
        && !hanging.isNarrowButCorners();
  }

  /**
   * Whether it closes over a gap and stands out no further than the roof of the widest round hole allowed; where on a round
   * roof the first layer begins that stands out, half a layer is chance.
   */
  private boolean isNarrowRoof(Hanging hanging) {
    return closes(hanging) && !isBeyond(hanging.depthClosed(this::slopes), narrowest() + specimen.limit(Limit.LAYER) / 2);
  }

  private boolean closes(Hanging hanging) {
    return hanging.closes(specimen.limit(Limit.LEDGE) + LayerScan.ROUNDING);
  }

  /** How far the roof of the widest round hole allowed stands out where it leans beyond 45 degrees, mm. */
  private double narrowest() {
    return specimen.limit(Limit.ROOF_HOLE) / 2 * Math.sqrt(0.5);
  }

  private boolean slopes(int facet) {
    return !undersides.isLevel(facet);
  }

  List<Concern> concerns(Hanging hanging, Optional<RoundRoof> roof) {
    List<Concern> concerns = new ArrayList<>();
    if (hanging.starts()) {
      List<Hanging> ledges = ledgesOn(hanging);
      concerns.add(island(ledges.isEmpty() ? hanging : hanging.without(ledges)));
      ledges.forEach(ledge -> concerns.add(ledge(ledge)));
    } else if (roof.isPresent()) {
      if (isBeyond(roof.get().diameter(), specimen.limit(Limit.ROOF_HOLE))) {
        concerns.add(roundRoof(hanging, roof.get()));
      }
    } else if (isLoose(hanging)) {
      concerns.add(isFlat(hanging) ? ledge(hanging) : slope(hanging));
    }
    if (!hanging.starts() && isBeyond(hanging.widest().span(), specimen.limit(Limit.BRIDGE))) {
      concerns.add(bridge(hanging));
    }
    return concerns;
  }

  /** Flat pieces that stand out hopelessly far from what grew from an island: it may stand elsewhere. */
  private List<Hanging> ledgesOn(Hanging island) {
    double bottom = island.firstStart().z() + BOTTOM;
    double hopeless = LayerScan.HOPELESS * specimen.limit(Limit.LEDGE);
    return island.hangs().stream()
        .filter(hang -> !hang.starts() && hang.z() > bottom && isBeyond(hang.depth(), hopeless))
        .map(Hanging::of).filter(this::isFlat).toList();
  }

  private boolean isFlat(Hanging hanging) {
    return isMostly(hanging, undersides::isFlat);
  }

  private boolean isLevel(Hanging hanging) {
    return isMostly(hanging, undersides::isLevel);
  }

  private static boolean isMostly(Hanging hanging, IntPredicate wanted) {
    double all = 0;
    for (Patch patch : hanging.patches()) {
      all += wanted.test(patch.facet()) ? patch.area() : 0;
    }
    return all > hanging.area() / 2;
  }

  private Concern island(Hanging hanging) {
    Hang first = hanging.firstStart();
    long others = hanging.hangs().stream().filter(Hang::starts).count() - 1;
    double[] at = Hanging.of(first).place(specimen.mesh());
    double size = FlatHull.around(first.piece().loops()).diameter();
    return new Concern("island", Severity.ERROR, at[0], at[1], at[2], size, 0, Limit.LEDGE, hanging.area(),
        "something starts in the air, " + Words.mm(at[2] - specimen.bed()) + " above the bed, with nothing under it"
            + (others == 0 ? "" : ", as it does at " + places(others) + " more that grow together with it") + ": "
            + extent(hanging),
        isShutIn(hanging) ? "It lies in a closed hollow, out of which nothing can take support: join it to the hollow's "
            + "floor, or leave it out." : "Join it to the part below, turn the part over, or print it with support.");
  }

  private Concern ledge(Hanging hanging) {
    double limit = specimen.limit(Limit.LEDGE);
    double lean = hanging.lean(limit + LayerScan.ROUNDING);
    if (lean > specimen.limit(Limit.OVERHANG) && isLevel(hanging)) {
      return slope(hanging, lean, "an underside in steps leans ", " from the vertical on the whole");
    }
    boolean bridged = hanging.widest().span() > 0;
    double[] at = bridged || hanging.isPeaked() ? hanging.farthest() : hanging.place(specimen.mesh());
    Severity severity = isBeyond(hanging.depth(), LayerScan.HOPELESS * limit) ? Severity.ERROR : Severity.CAUTION;
    return new Concern("ledge", severity, at[0], at[1], at[2], hanging.depth(), limit, Limit.LEDGE, hanging.freeArea(),
        "a flat underside stands out " + Words.mm(hanging.depth()) + " into the air"
            + (hanging.isPeaked() && !bridged ? " at its farthest corner, " : ", ")
            + (bridged ? "beside what is bridged" : held(hanging)) + ": "
            + extent(hanging.freeArea(), hanging.freeBounds()),
        isShutIn(hanging) ? shutIn() : carry(hanging) + " by a slope of " + Words.degrees(specimen.limit(Limit.OVERHANG))
            + " from the vertical, turn the part over, or print it with support.");
  }

  private String held(Hanging hanging) {
    if (hanging.hangs().stream().anyMatch(hang -> hang.rim().holds() > 1)) {
      return "with no straight way across from hold to hold";
    }
    return isRound(hanging) ? "held on its inner side only"
        : isRoundHole(hanging) ? "held on its outer side only" : "held on one side only";
  }

  private String carry(Hanging hanging) {
    return isRoundHole(hanging) ? "Close the hole in it with two layers and cut these out after, carry it" : "Carry it";
  }

  /** Whether it lies all round what holds it, as a cap round its stem. */
  private static boolean isRound(Hanging hanging) {
    return hanging.hangs().stream().filter(hang -> hang.depth() > 0).noneMatch(hang -> hang.rim().mayHold());
  }

  /** Whether it lies all round a hole that layers would bridge, as between the bores for a screw and for its head. */
  private boolean isRoundHole(Hanging hanging) {
    FlatBox box = hanging.bounds();
    return !isBeyond(Math.max(box.width(), box.depth()), specimen.limit(Limit.BRIDGE))
        && hanging.hangs().stream().filter(hang -> hang.depth() > 0).allMatch(hang -> hang.rim().isFreeAtHolesAlone());
  }

  private Concern slope(Hanging hanging) {
    return slope(hanging, hanging.steepest(undersides), "an underside leans up to ", " from the vertical");
  }

  private Concern slope(Hanging hanging, double lean, String leans, String from) {
    boolean closes = closes(hanging);
    double depth = closes ? hanging.depthClosed(this::slopes) : hanging.depth();
    boolean hopeless = lean > specimen.limit(Limit.OVERHANG) + COOLED + Undersides.PLAY
        && isBeyond(depth, LayerScan.HOPELESS * (closes ? narrowest() : specimen.limit(Limit.LEDGE)));
    double[] at = hanging.place(specimen.mesh());
    return new Concern("overhang", hopeless ? Severity.ERROR : Severity.CAUTION, at[0], at[1], at[2], lean,
        specimen.limit(Limit.OVERHANG), Limit.OVERHANG, hanging.area(),
        leans + Words.degrees(lean) + from + " and stands out " + Words.mm(depth) + ": " + extent(hanging),
        isShutIn(hanging) ? shutIn() : "Lean it no further than " + Words.degrees(specimen.limit(Limit.OVERHANG))
            + ", turn the part, or print it with support.");
  }

  private Concern roundRoof(Hanging hanging, RoundRoof roof) {
    return new Concern("round-roof", Severity.CAUTION, roof.x(), roof.y(), roof.z() + roof.diameter() / 2,
        roof.diameter(), specimen.limit(Limit.ROOF_HOLE), Limit.ROOF_HOLE, hanging.area(),
        (roof.isWhole() ? "the roof of a round hole of " + Words.mm(roof.diameter()) + " that lies on its side sags: "
            : "the round roof of an arch, curved like a hole of " + Words.mm(roof.diameter()) + " on its side, sags: ")
            + extent(hanging),
        roof.isWhole() ? "Give it a pointed or flat-topped roof, drill it afterwards, or let it run upright."
            : "Give it a pointed roof, put a rib or post under it, or print it with support.");
  }

  private Concern bridge(Hanging hanging) {
    Hang widest = hanging.widest();
    double angle = StrictMath.toDegrees(StrictMath.atan2(widest.alongY(), widest.alongX()));
    double turned = Math.rint(((angle % 180) + 180) % 180) % 180;
    double[] middle = Hanging.of(widest).middle();
    double area = hanging.area() - (isLoose(hanging) ? hanging.freeArea() : 0);
    boolean hopeless = isBeyond(widest.span(), specimen.limit(Limit.BRIDGE_MOST));
    Limit limit = hopeless ? Limit.BRIDGE_MOST : Limit.BRIDGE;
    return new Concern("bridge", hopeless ? Severity.ERROR : Severity.CAUTION, widest.midX(), widest.midY(), middle[2],
        widest.span(), specimen.limit(limit), limit, area,
        "a bridge of " + Words.mm(widest.span()) + " between what holds both its ends, running at " + Words.number(turned, 0)
            + " degrees from X towards Y: " + extent(area, hanging.bounds()),
        isShutIn(hanging) ? shutIn()
            : "Put a rib or post under it, arch or slope its underside, or print it with support.");
  }

  private boolean isShutIn(Hanging hanging) {
    return specimen.hollows().holds(hanging.box());
  }

  /** What helps a roof under which no support can be taken out. */
  private String shutIn() {
    return "It roofs a closed hollow, out of which nothing can take support: slope the roof to "
        + Words.degrees(specimen.limit(Limit.OVERHANG)) + " from the vertical, open the hollow from below, or fill it.";
  }

  /** What all round roofs measure together, told whether or not they are a concern. */
  List<Fact> facts(List<RoundRoof> roofs, List<Double> areas) {
    if (roofs.isEmpty()) {
      return List.of();
    }
    double area = areas.stream().mapToDouble(a -> a).sum();
    double widest = roofs.stream().mapToDouble(RoundRoof::diameter).max().orElse(0);
    String holes = roofs.size() == 1 ? "round hole of " + Words.mm(widest) + " on its side: "
        : roofs.size() + " roofs of round holes on their side, the widest of " + Words.mm(widest) + ": ";
    return List.of(new Fact("round-roof", area, "mm2", holes + Words.number(area, 1) + " mm2 lean beyond "
        + Words.degrees(specimen.limit(Limit.OVERHANG))));
  }

  /**
   * Where it needs support as it stands.
   *
   * @param leaning area of all that leans beyond the limit, concern or not, mm^2
   */
  Fact support(List<Concern> concerns, double leaning) {
    long must = concerns.stream().filter(concern -> concern.severity() == Severity.ERROR).count();
    long may = concerns.size() - must;
    String limit = Words.degrees(specimen.limit(Limit.OVERHANG));
    String words;
    if (concerns.isEmpty()) {
      words = "no support needed: " + (leaning < Words.LEAST_AREA ? "nothing leans beyond " + limit
          : "the " + Words.number(leaning, 1) + " mm2 that lean beyond " + limit
              + " are short bridges, ledges and roofs that hold by themselves");
    } else {
      words = (must > 0 ? "support, or a change named above, is needed at " + places(must) : "")
          + (must > 0 && may > 0 ? " and " : "")
          + (may > 0 ? (must > 0 ? "" : "support, or a change named above, ") + "may be needed at " + places(may) : "");
    }
    return new Fact("support-places", concerns.size(), "places", words);
  }

  private static String places(long count) {
    return count + (count == 1 ? " place" : " places");
  }

  private static String extent(Hanging hanging) {
    return extent(hanging.area(), hanging.bounds());
  }

  private static String extent(double area, FlatBox box) {
    String within = "within " + Words.number(box.width(), 1) + " x " + Words.number(box.depth(), 1) + " mm";
    return area < Words.LEAST_AREA ? within : Words.number(area, 1) + " mm2 seen from below, " + within;
  }
}
