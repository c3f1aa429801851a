package outrigger.generator.plan;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.tomlj.Toml;
import org.tomlj.TomlArray;
import org.tomlj.TomlParseResult;
import org.tomlj.TomlTable;
import outrigger.generator.accessory.Kinds;
import outrigger.generator.fit.Solver;
import outrigger.generator.fit.TruckFit;
import outrigger.generator.joint.Stock;
import outrigger.generator.param.Fault;
import outrigger.generator.param.Given;
import outrigger.generator.param.InputException;
import outrigger.generator.param.NearMiss;
import outrigger.generator.param.Origin;
import outrigger.generator.param.Texts;
import outrigger.generator.stack.Drawer;
import outrigger.generator.truck.BetweenParams;
import outrigger.generator.truck.Tables;
import outrigger.generator.truck.Truck;
import outrigger.presets.Material;
import outrigger.presets.Nesting;
import outrigger.presets.Shelf;

/** Reads plan files. */
public final class PlanReader {
  /** Greatest number of parts one plan may make. */
  public static final int MOST_PARTS = 1000;

  private static final String PART = "part";
  private static final String DEFAULTS = "defaults";
  private static final String PRESETS = "presets";
  private static final String TITLE = "title";
  private static final String PRINTER = "printer";
  private static final String MATERIAL = "material";
  private static final String ON_HAND = "on-hand";
  private static final Set<String> TOP = new TreeSet<>(List.of(TITLE, PRINTER, MATERIAL, PRESETS, DEFAULTS, ON_HAND,
      PART));

  static {
    TOP.addAll(Tables.keys());
  }

  private final Kinds kinds;
  private final Optional<Path> ownPresets;
  private final Map<String, Given> options;

  /**
   * @param kinds the kinds of part a plan may ask for
   * @param ownPresets a table file to lay over the standard tables and those of the plan
   * @param options values that override the plan's in every part that has such a parameter
   */
  public PlanReader(Kinds kinds, Optional<Path> ownPresets, Map<String, Given> options) {
    this.kinds = kinds;
    this.ownPresets = ownPresets;
    this.options = Map.copyOf(options);
  }

  /**
   * Reads a plan. Faults of its content are left in it, to be told together with what making the parts shows.
   *
   * @throws InputException if the file cannot be read or is not TOML, with every fault found
   */
  public Plan read(Path path) {
    String file = PlanText.name(path);
    TomlParseResult toml = parsed(file, PlanText.read(path));
    List<Fault> faults = new ArrayList<>(SyntaxFaults.of(file, toml.errors()));
    if (!toml.errors().stream().allMatch(SyntaxFaults::leavesTheRest)) {
      throw new InputException(faults);
    }
    return new Reading(file, toml, faults).plan(path);
  }

  private static TomlParseResult parsed(String file, String text) {
    try {
      return Toml.parse(text);
    } catch (StackOverflowError tooDeep) {
      // The parser calls itself once for each level of brackets; no plan needs more than two.
      Origin where = Origin.plan(file, Nesting.deepestLine(text), 1);
      throw new InputException(Fault.of("", "the plan is not valid TOML (" + where.words()
          + "): lists or tables are nested too deeply", "Write each line as key = value, one list deep.", where));
    } catch (AssertionError brokenEscape) {
      // Where assertions are switched on, the parser trips over a backslash it has already listed as an error.
      throw unreadable(file, "a text in double quotes has a broken escape", "Write \\\\ for a backslash.");
    }
  }

  private static InputException unreadable(String file, String what, String advice) {
    return new InputException(Fault.of("", "the plan is not valid TOML (" + file + "): " + what, advice,
        Origin.file(file)));
  }

  /** One file being read. */
  private final class Reading {
    private final String file;
    private final TomlTable toml;
    private final List<Fault> faults;
    private final Defaults defaults;

    Reading(String file, TomlTable toml, List<Fault> faults) {
      this.file = file;
      this.toml = toml;
      this.faults = faults;
      this.defaults = new Defaults(file, faults);
    }

    Plan plan(Path path) {
      refuseUnknownKeys();
      Shelf shelf = PresetFiles.shelf(presetsOf(path), ownPresets, faults);
      defaults.top(toml, PRINTER);
      if (toml.get(List.of(DEFAULTS)) instanceof TomlTable table) {
        defaults.table(table, kinds);
      } else if (has(DEFAULTS)) {
        fault(DEFAULTS, DEFAULTS + " is no table", "Begin it with a line [defaults].");
      }
      Optional<Material> material = material(shelf);
      Optional<OnHandParams> onHand = onHand(shelf);
      Stock stock = onHand.map(OnHandParams::stock).orElse(Stock.NONE);
      Drawer drawer = onHand.map(told -> told.drawer(shelf)).orElse(Drawer.EMPTY);
      Optional<Truck> truck = truck(shelf);
      Optional<TruckFit> fit = truck.flatMap(t -> Solver.solve(t, stock, drawer, shelf, faults));
      truck.ifPresent(new TruckChecks(faults)::larger);
      Shelf whole = fit.map(solved -> TruckFill.shelf(shelf, solved)).orElse(shelf);
      boolean isUnsolved = truck.isEmpty() && Tables.keys().stream().anyMatch(this::has)
          || truck.isPresent() && fit.isEmpty();
      return new Plan(file, text(TITLE).orElse(""), whole, material, stock, truck, fit, mayLackRooms(truck),
          requests(truck, fit, isUnsolved, whole), faults);
    }

    /** Whether a table could not be read that may stand for a place where items go. */
    private boolean mayLackRooms(Optional<Truck> truck) {
      boolean isBetweenUnread = has(BetweenParams.KEY) && truck.isPresent() && truck.get().between().isEmpty();
      return isBetweenUnread || toml.get(List.of(PART)) instanceof TomlArray parts && parts.toList().stream()
          .anyMatch(part -> !(part instanceof TomlTable table && table.get(List.of("kind")) instanceof String kind
              && kinds.find(kind).isPresent()));
    }

    private Optional<Truck> truck(Shelf shelf) {
      Given option = options.get(PRINTER);
      Optional<Given> printer = option != null ? Optional.of(option)
          : toml.get(List.of(PRINTER)) instanceof String name ? Optional.of(Given.of(name, place(PRINTER)))
          : Optional.empty();
      return new TruckReader(file, toml, shelf, faults).read(printer);
    }

    private Optional<Material> material(Shelf shelf) {
      Given option = options.get(MATERIAL);
      Optional<String> name = option == null ? text(MATERIAL) : Optional.of(option.text());
      Optional<Material> material = name.flatMap(n -> shelf.find(Material.class, n));
      if (name.isPresent() && material.isEmpty()) {
        Origin where = option == null ? place(MATERIAL) : option.origin();
        faults.add(Materials.unknown(shelf, name.get(), where));
      }
      return material;
    }

    private Optional<OnHandParams> onHand(Shelf shelf) {
      if (toml.get(List.of(ON_HAND)) instanceof TomlTable table) {
        return new TableReader(file, shelf, faults).read(table, OnHandParams.class, ON_HAND);
      }
      if (has(ON_HAND)) {
        fault(ON_HAND, ON_HAND + " is no table", "Begin it with a line [on-hand].");
      }
      return Optional.empty();
    }

    private void refuseUnknownKeys() {
      for (String key : toml.keySet()) {
        if (!TOP.contains(key)) {
          fault(key, "there is no top key " + Texts.quoted(key), NearMiss.advice(key, TOP));
        }
      }
    }

    private Optional<Path> presetsOf(Path plan) {
      return text(PRESETS).map(name -> plan.resolveSibling(name));
    }

    private List<Request<?>> requests(Optional<Truck> truck, Optional<TruckFit> fit, boolean isUnsolved, Shelf shelf) {
      List<Request<?>> requests = new ArrayList<>();
      if (!(toml.get(List.of(PART)) instanceof TomlArray parts) || parts.isEmpty()) {
        Origin where = has(PART) ? place(PART) : Origin.file(file);
        faults.add(Fault.of("", "the plan asks for no part (" + where.words() + ")",
            "Begin each part with a line [[part]], then kind = \"...\".", where));
        return requests;
      }
      PartReader reader = new PartReader(file, kinds, defaults, options, faults, truck, fit, isUnsolved,
          shelf);
      for (int i = 0; i < parts.size() && requests.size() <= MOST_PARTS; i++) {
        Origin where = TomlText.place(file, parts, i);
        if (parts.get(i) instanceof TomlTable table) {
          requests.addAll(reader.read(table, where));
        } else {
          faults.add(Fault.of("", "a part is " + TomlText.noun(parts.get(i)) + " (" + where.words() + ")",
              "Begin each part with a line [[part]].", where));
        }
      }
      if (requests.size() > MOST_PARTS) {
        fault(PART, "the plan makes more than " + MOST_PARTS + " parts", "Shorten its lists or split it.");
      }
      return requests;
    }

    private Optional<String> text(String key) {
      Object value = toml.get(List.of(key));
      if (value != null && !(value instanceof String)) {
        fault(key, key + " is " + TomlText.noun(value) + ", not a text", "Write it in quotes.");
      }
      return value instanceof String s ? Optional.of(s) : Optional.empty();
    }

    private boolean has(String key) {
      return toml.contains(List.of(key));
    }

    private Origin place(String key) {
      return TomlText.place(file, toml, key);
    }

    private void fault(String key, String what, String advice) {
      Origin where = place(key);
      faults.add(new Fault("", key, what + " (" + where.words() + ")", "", "", advice, where));
    }
  }
}
