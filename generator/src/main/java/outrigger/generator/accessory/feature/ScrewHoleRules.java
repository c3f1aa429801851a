package outrigger.generator.accessory.feature;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import outrigger.generator.accessory.Words;
import outrigger.generator.joint.Articles;
import outrigger.generator.joint.Head;
import outrigger.generator.joint.Piece;
import outrigger.generator.param.BadDimension;
import outrigger.presets.ClearanceHole;
import outrigger.presets.HeatSetInsert;
import outrigger.presets.Item;
import outrigger.presets.Nut;
import outrigger.presets.PilotHole;
import outrigger.presets.Printer;
import outrigger.presets.Screw;
import outrigger.presets.Shelf;
import outrigger.presets.Washer;

/** Turns screw, fit and seat into the dimensions of a hole. */
record ScrewHoleRules(Screw screw, Printer printer, Shelf shelf) {
  /** Layers of plain bore behind a countersink, so that the cone does not end in a knife edge; common practice. */
  private static final int LAYERS_BEHIND_CONE = 2;
  /** A recess is one layer deeper than what lies in it, so that nothing stands proud; common practice. */
  private static final int LAYERS_BELOW_FLUSH = 1;

  ScrewHole hole(Fit fit, HeadSeat seat) {
    requireSeat(fit, seat);
    return switch (fit) {
      case PILOT -> pilot();
      case INSERT -> insert();
      case NUT -> nut();
      default -> clearance(fit, seat);
    };
  }

  private void requireSeat(Fit fit, HeadSeat seat) {
    if (seat != HeadSeat.NONE && (fit == Fit.PILOT || fit == Fit.INSERT || fit == Fit.NUT)) {
      throw new BadDimension("head-seat", "a " + word(seat) + " holds the head, but with fit " + word(fit)
          + " this hole takes the other end of the screw", "Choose head-seat none, or fit fine, medium or coarse.");
    }
    if (seat == HeadSeat.COUNTERSINK && !screw.isCountersunk()) {
      throw new BadDimension("head-seat", "a countersink does not fit the " + screw.head() + " head of "
          + screw.name(), "Choose head-seat counterbore, or a countersunk screw.");
    }
    if (seat.isFlat() && screw.isCountersunk()) {
      throw new BadDimension("head-seat", "a " + word(seat) + " seat is flat, but " + screw.name() + " has a conical head",
          "Choose head-seat countersink, or a screw with a flat seat.");
    }
  }

  private ScrewHole clearance(Fit fit, HeadSeat seat) {
    double table = clearanceDiameter(fit);
    double bore = table + printer.holeAllowance();
    String why = "ISO 273 " + word(fit) + " for " + screw.size() + ": " + sum(table);
    double wall = printer.minimumWall();
    return switch (seat) {
      case NONE -> new ScrewHole(screw, fit, seat, bore, bore, 0, 0, 0, wall, onFace(), 0, List.of(), why);
      case COUNTERBORE -> counterbore(fit, seat, bore, screw.headDiameter(), 0, List.of(), why);
      case WASHER -> washer(fit, bore, why);
      case COUNTERSINK -> countersink(fit, bore, why);
    };
  }

  private ScrewHole washer(Fit fit, double bore, String why) {
    Washer washer = smallest(shelf.items(Washer.class).stream().filter(w -> w.name().endsWith("-normal")).toList(),
        Washer::size, Washer::thickness, "plain washer");
    return counterbore(fit, HeadSeat.WASHER, bore, Math.max(washer.outside(), screw.headDiameter()),
        washer.thickness(), List.of(Articles.of(washer)), why);
  }

  /**
   * A flat-bottomed recess.
   *
   * @param widest diameter of what lies in it
   * @param under thickness of what lies under the head
   */
  private ScrewHole counterbore(Fit fit, HeadSeat seat, double bore, double widest, double under, List<Piece> extras,
      String why) {
    // The head floats with the shank: the same play, so that the shank meets its wall first.
    double play = bore - printer.holeAllowance() - screw.diameter();
    double mouth = widest + play + printer.holeAllowance();
    double depth = screw.headHeight() + under + LAYERS_BELOW_FLUSH * printer.layer();
    return new ScrewHole(screw, fit, seat, bore, mouth, depth, printer.minimumWall(),
        depth + printer.minimumWall(), printer.minimumWall(),
        new Head(-LAYERS_BELOW_FLUSH * printer.layer(), (widest + play - screw.headDiameter()) / 2), 0, extras, why);
  }

  private ScrewHole countersink(Fit fit, double bore, String why) {
    double mouth = screw.headDiameter() + printer.holeAllowance();
    double depth = (mouth - bore) / 2;
    if (depth <= 0) {
      throw new BadDimension("fit", "a bore of " + Words.mm(bore) + " swallows the " + Words.mm(screw.headDiameter())
          + " head of " + screw.name(), "Choose a finer fit.");
    }
    double land = LAYERS_BEHIND_CONE * printer.layer();
    return new ScrewHole(screw, fit, HeadSeat.COUNTERSINK, bore, mouth, depth, land, depth + land,
        printer.minimumWall(), new Head(0, 0), 0, List.of(), why);
  }

  /** A head on a flat face, or flush in whatever is sunk for it. */
  private Head onFace() {
    return new Head(screw.isCountersunk() ? 0 : screw.headHeight(), 0);
  }

  private ScrewHole pilot() {
    PilotHole pilot = smallest(
        shelf.items(PilotHole.class).stream().filter(p -> p.name().endsWith("-machine")).toList(), PilotHole::size,
        PilotHole::hole, "pilot hole");
    double bore = pilot.hole() + printer.holeAllowance();
    // The boss is measured over the screw's hole as finished; a wall as thick stands round the hole as modelled.
    double wall = Math.max(printer.minimumWall(), (pilot.bossDiameter() - pilot.hole()) / 2);
    return new ScrewHole(screw, Fit.PILOT, HeadSeat.NONE, bore, bore, 0, 0, 0, wall, onFace(), 0, List.of(),
        "pilot for " + screw.size() + " to cut its own thread: " + sum(pilot.hole()));
  }

  private ScrewHole insert() {
    HeatSetInsert insert = smallest(shelf.items(HeatSetInsert.class), HeatSetInsert::size,
        HeatSetInsert::length, "heat-set insert");
    double mouth = insert.hole() + printer.holeAllowance();
    double bore = Math.min(mouth, clearanceDiameter(Fit.MEDIUM) + printer.holeAllowance());
    return new ScrewHole(screw, Fit.INSERT, HeadSeat.NONE, bore, mouth, insert.depth(),
        printer.minimumWall(), insert.length(), Math.max(insert.wall(), printer.minimumWall()),
        onFace(), insert.length(), List.of(Articles.of(insert)),
        "insert " + insert.name() + ": " + sum(insert.hole()));
  }

  private ScrewHole nut() {
    Nut nut = smallest(shelf.items(Nut.class), Nut::name, Nut::height, "nut");
    double across = nut.acrossFlats() + printer.holeAllowance();
    double table = clearanceDiameter(Fit.MEDIUM);
    double depth = nut.height() + LAYERS_BELOW_FLUSH * printer.layer();
    return new ScrewHole(screw, Fit.NUT, HeadSeat.NONE, table + printer.holeAllowance(),
        across / StrictMath.cos(StrictMath.PI / 6), depth, printer.minimumWall(), depth + printer.minimumWall(),
        printer.minimumWall(), onFace(), nut.height(), List.of(Articles.of(nut)), "ISO 273 medium for "
            + screw.size() + ": " + sum(table) + ", nut pocket " + Words.mm(across) + " across flats");
  }

  private double clearanceDiameter(Fit fit) {
    ClearanceHole hole = smallest(shelf.items(ClearanceHole.class), ClearanceHole::name,
        ClearanceHole::medium, "clearance hole");
    return switch (fit) {
      case FINE -> hole.fine();
      case COARSE -> hole.coarse();
      default -> hole.medium();
    };
  }

  private <T extends Item> T smallest(List<T> items, Function<T, String> size, ToDoubleFunction<T> by,
      String what) {
    Optional<T> smallest = Optional.empty();
    for (T item : items) {
      double own = by.applyAsDouble(item);
      if (size.apply(item).equals(screw.size()) && own > 0
          && (smallest.isEmpty() || own < by.applyAsDouble(smallest.get()))) {
        smallest = Optional.of(item);
      }
    }
    return smallest.orElseThrow(() -> new BadDimension("screw", "there is no " + what + " for " + screw.size()
        + " in the tables, only for " + String.join(", ", items.stream().map(size).distinct().toList()),
        "Choose a screw of one of those sizes or another fit."));
  }

  private String sum(double table) {
    return Words.mm(table) + " + " + Words.mm(printer.holeAllowance()) + " hole allowance = "
        + Words.mm(table + printer.holeAllowance());
  }

  private static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT);
  }
}
