package outrigger.presets;

import static outrigger.presets.Column.choice;
import static outrigger.presets.Column.length;
import static outrigger.presets.Column.lengthOrZero;
import static outrigger.presets.Column.lengths;
import static outrigger.presets.Column.naming;
import static outrigger.presets.Column.number;
import static outrigger.presets.Column.text;

import java.util.ArrayList;
import java.util.List;

/**
 * The tables there are. Columns and makers are written out rather than found by reflection: nothing has to be looked up
 * at start, the compiler checks the makers, and a test holds the columns to the record components.
 */
final class Tables {
  /** Largest bed edge let through, mm; beds are larger than the parts laid on them. */
  private static final double LARGEST_BED = 10_000;

  private static final TableSpec<Screw> SCREWS = new TableSpec<>("screws", "Screws", Screw.class,
      List.of(naming(), text("size"), choice("head", "socket", "button", "pan", "countersunk"), text("standard"),
          length("diameter"), length("pitch"), length("head-diameter"), length("head-height"),
          choice("drive", "hexagon", "cross", "hexalobular"), number("drive-size", "", 100).orZero()),
      row -> new Screw(row.text("name"), row.text("size"), row.text("head"), row.text("standard"),
          row.number("diameter"), row.number("pitch"), row.number("head-diameter"), row.number("head-height"),
          row.text("drive"), row.number("drive-size")));

  private static final TableSpec<Nut> NUTS = new TableSpec<>("nuts", "Nuts", Nut.class,
      List.of(naming(), text("standard"), length("across-flats"), length("height"), length("across-corners")),
      row -> new Nut(row.text("name"), row.text("standard"), row.number("across-flats"), row.number("height"),
          row.number("across-corners")));

  private static final TableSpec<Washer> WASHERS = new TableSpec<>("washers", "Washers", Washer.class,
      List.of(naming(), text("size"), text("standard"), length("hole"), length("outside"), length("thickness"),
          lengthOrZero("thickness-tolerance")),
      row -> new Washer(row.text("name"), row.text("size"), row.text("standard"), row.number("hole"),
          row.number("outside"), row.number("thickness"), row.number("thickness-tolerance")));

  private static final TableSpec<ClearanceHole> CLEARANCE_HOLES = new TableSpec<>("clearance-holes",
      "Clearance holes", ClearanceHole.class,
      List.of(naming(), length("fine"), length("medium"), length("coarse")),
      row -> new ClearanceHole(row.text("name"), row.number("fine"), row.number("medium"), row.number("coarse")));

  private static final TableSpec<PilotHole> PILOT_HOLES = new TableSpec<>("pilot-holes", "Pilot holes",
      PilotHole.class,
      List.of(naming(), text("size"), choice("method", "machine", "forming"), length("hole"), length("boss-diameter"),
          length("engagement"), length("depth")),
      row -> new PilotHole(row.text("name"), row.text("size"), row.text("method"), row.number("hole"),
          row.number("boss-diameter"), row.number("engagement"), row.number("depth")));

  private static final TableSpec<HeatSetInsert> HEAT_SET_INSERTS = new TableSpec<>("heat-set-inserts",
      "Heat-set inserts", HeatSetInsert.class,
      List.of(naming(), text("size"), length("outside-diameter"), length("length"), length("hole"), length("depth"),
          length("wall")),
      row -> new HeatSetInsert(row.text("name"), row.text("size"), row.number("outside-diameter"),
          row.number("length"), row.number("hole"), row.number("depth"), row.number("wall")));

  private static final TableSpec<StockLengths> STOCK_LENGTHS = new TableSpec<>("stock-lengths", "Stock lengths",
      StockLengths.class,
      List.of(naming(), text("size"), choice("head", "socket", "button", "pan", "countersunk"), lengths("lengths")),
      row -> new StockLengths(row.text("name"), row.text("size"), row.text("head"), row.numbers("lengths")));

  private static final TableSpec<DiscMagnet> DISC_MAGNETS = new TableSpec<>("disc-magnets", "Disc magnets",
      DiscMagnet.class,
      List.of(naming(), length("diameter"), length("thickness"), text("grade")),
      row -> new DiscMagnet(row.text("name"), row.number("diameter"), row.number("thickness"), row.text("grade")));

  private static final TableSpec<MagnetGrade> MAGNET_GRADES = new TableSpec<>("magnet-grades", "Magnet grades",
      MagnetGrade.class,
      List.of(naming(), number("remanence-min", "T", 3), number("remanence-max", "T", 3),
          number("loss", "%/K", 1).orZero(), number("maximum-temperature", "degree-C", 1000)),
      row -> new MagnetGrade(row.text("name"), row.number("remanence-min"), row.number("remanence-max"),
          row.number("loss"), row.number("maximum-temperature")));

  private static final TableSpec<Rail> RAILS = new TableSpec<>("rails", "Rails", Rail.class,
      List.of(naming(), choice("form", "plate", "channel", "box"), length("height"), length("web"),
          lengthOrZero("flange"), length("spacing")),
      row -> new Rail(row.text("name"), row.text("form"), row.number("height"), row.number("web"),
          row.number("flange"), row.number("spacing")));

  private static final TableSpec<Printer> PRINTERS = new TableSpec<>("printers", "Printers", Printer.class,
      List.of(naming(), length("nozzle"), length("extrusion-width"), length("layer"), length("first-layer"),
          length("bed-x").upTo(LARGEST_BED), length("bed-y").upTo(LARGEST_BED), length("bed-z").upTo(LARGEST_BED),
          length("minimum-wall"), number("overhang", "degree", 89), length("bridge"), lengthOrZero("hole-allowance"),
          lengthOrZero("outer-allowance")),
      row -> new Printer(row.text("name"), row.number("nozzle"), row.number("extrusion-width"), row.number("layer"),
          row.number("first-layer"), row.number("bed-x"), row.number("bed-y"), row.number("bed-z"),
          row.number("minimum-wall"), row.number("overhang"), row.number("bridge"), row.number("hole-allowance"),
          row.number("outer-allowance")));

  private static final TableSpec<Material> MATERIALS = new TableSpec<>("materials", "Materials", Material.class,
      List.of(naming(), number("density", "g/cm3", 30), number("softening", "degree-C", 1000), text("note")),
      row -> new Material(row.text("name"), row.number("density"), row.number("softening"), row.text("note")));

  private static final TableSpec<ElectronicsItem> ELECTRONICS = new TableSpec<>("electronics", "Electronics",
      ElectronicsItem.class,
      List.of(naming(), length("length"), length("width"), length("height"), lengthOrZero("clearance")),
      row -> new ElectronicsItem(row.text("name"), row.number("length"), row.number("width"), row.number("height"),
          row.number("clearance")));

  private static final TableSpec<SheetStock> SHEET_STOCK = new TableSpec<>("sheet-stock", "Sheet stock",
      SheetStock.class,
      List.of(naming(), length("thickness"), length("label"), number("tolerance", "%", 50).orZero()),
      row -> new SheetStock(row.text("name"), row.number("thickness"), row.number("label"), row.number("tolerance")));

  /** Every table, in the order they are listed. */
  static final List<TableSpec<?>> ALL = List.of(SCREWS, NUTS, WASHERS, CLEARANCE_HOLES, PILOT_HOLES,
      HEAT_SET_INSERTS, STOCK_LENGTHS, DISC_MAGNETS, MAGNET_GRADES, RAILS, PRINTERS, MATERIALS, ELECTRONICS,
      SHEET_STOCK);

  private Tables() {}

  static List<String> keys() {
    List<String> keys = new ArrayList<>();
    for (TableSpec<?> spec : ALL) {
      keys.add(spec.key());
    }
    return keys;
  }

  /** The table of a record class, which must be one of ALL. */
  @SuppressWarnings("unchecked")
  static <T extends Item> TableSpec<T> of(Class<T> type) {
    for (TableSpec<?> spec : ALL) {
      if (spec.type() == type) {
        return (TableSpec<T>) spec;
      }
    }
    throw new IllegalArgumentException("There is no table of " + type.getName() + ".");
  }
}
