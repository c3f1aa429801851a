package outrigger.generator.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tomlj.TomlArray;
import org.tomlj.TomlTable;
import outrigger.generator.accessory.feature.Pole;
import outrigger.generator.fit.Choice;
import outrigger.generator.fit.Site;
import outrigger.generator.fit.StackUp;
import outrigger.generator.fit.TruckFit;
import outrigger.generator.magnet.Facing;
import outrigger.generator.param.BadDimension;
import outrigger.generator.param.Fault;
import outrigger.generator.param.Given;
import outrigger.generator.param.InputException;
import outrigger.generator.param.NearMiss;
import outrigger.generator.param.Origin;
import outrigger.generator.param.ParamValues;
import outrigger.generator.param.Texts;
import outrigger.generator.truck.MountParams;
import outrigger.generator.truck.Told;
import outrigger.generator.truck.Truck;
import outrigger.presets.Shelf;

/** Gives the parts of a plan what they leave out and the solved truck knows. */
final class TruckFill {
  /** Key of a part that names the mounts it is made for. */
  static final String MOUNT = "mount";
  private static final String TRAY = "electronics-tray";

  private final String file;
  private final TruckFit fit;
  private final List<Fault> faults;
  private final Shelf shelf;

  TruckFill(String file, TruckFit fit, Shelf shelf, List<Fault> faults) {
    this.file = file;
    this.shelf = shelf;
    this.fit = fit;
    this.faults = faults;
  }

  /** The shelf with the truck's rails at each mount laid over it. */
  static Shelf shelf(Shelf shelf, TruckFit fit) {
    StringBuilder rows = new StringBuilder("[source.measured]\nkind = \"user\"\ntext = \"The plan's table rail\"\n"
        + "[rails]\nsource = \"measured\"\nrow = [\n");
    fit.truck().mounts().forEach(mount -> {
      outrigger.presets.Rail rail = fit.truck().rails().section(fit.at(mount).get(0).seat().x());
      rows.append("{ name = \"").append(railName(mount)).append("\", form = \"").append(rail.form()).append("\", height = ")
          .append(rail.height()).append(", web = ").append(rail.web()).append(", flange = ").append(rail.flange())
          .append(", spacing = ").append(rail.spacing()).append(" },\n");
    });
    return fit.truck().mounts().isEmpty() ? shelf : shelf.withText("the plan's rails", rows.append("]\n").toString());
  }

  private static String railName(Told<MountParams> mount) {
    return "truck-" + mount.record().name();
  }

  /** Whether a part may carry a key that is none of its parameters. */
  static boolean isPlaceKey(String kind, String key) {
    return (kind.equals("body-mount") || kind.equals("body-pad")) && key.equals(MOUNT)
        || kind.equals(TRAY) && key.equals(TrayFill.X);
  }

  /** What a part's request makes of a truck that is not solved: nothing where it asks for what solving tells. */
  static <P extends Record> List<Request<?>> unsolved(Request<P> request, TomlTable table, String file,
      Optional<Truck> truck, Shelf shelf, List<Fault> faults) {
    return switch (request.accessory().kind()) {
      case "body-mount" -> isGiven(request, "height") && !table.contains(List.of(MOUNT)) ? List.of(request) : List.of();
      case "body-pad" -> List.of();
      case "bumper-spacer" -> isGiven(request, "thickness") || isGiven(request, "set") ? List.of(request) : List.of();
      case TRAY -> truck.map(t -> List.<Request<?>>of(new TrayFill(file, t, shelf, faults).tray(request, table)))
          .orElse(List.of());
      default -> List.of(request);
    };
  }

  /** The requests a part's request makes on this truck. */
  <P extends Record> List<Request<?>> fill(Request<P> request, TomlTable table, boolean isNamed) {
    return switch (request.accessory().kind()) {
      case "body-mount" -> mounts(request, table, isNamed);
      case "body-pad" -> pads(request, table, isNamed);
      case "bumper-spacer" -> List.of(spacer(request));
      case TRAY -> List.of(new TrayFill(file, fit.truck(), shelf, faults).tray(request, table));
      default -> List.of(request);
    };
  }

  private <P extends Record> List<Request<?>> mounts(Request<P> request, TomlTable table, boolean isNamed) {
    boolean isOwn = isGiven(request, "height") && !table.contains(List.of(MOUNT));
    if (fit.sites().isEmpty() && !table.contains(List.of(MOUNT)) || isOwn) {
      return List.of(request);
    }
    List<String> wanted = wanted(table);
    List<Request<?>> all = new ArrayList<>();
    for (Site site : fit.sites()) {
      String station = site.mount().record().name();
      if (wanted.isEmpty() || wanted.contains(station)) {
        String side = Texts.choice(site.side());
        String name = !isNamed ? site.name() : wanted.size() == 1 ? request.name() + "-" + side
            : request.name() + "-" + site.name();
        Choice choice = fit.choices().get(site);
        Map<String, String> solved = new LinkedHashMap<>();
        solved.put("side", side);
        solved.put("mounting", Texts.choice(site.mount().record().mounting()));
        solved.put("rail", railName(site.mount()));
        solved.put("height", Texts.number(fit.heights().get(site).head()));
        solved.put("reach", Texts.number(site.mount().record().reach()));
        solved.put("magnet", choice.magnet().name());
        solved.put("stack", String.valueOf(choice.stack()));
        solved.put("pole", Texts.choice(fit.pole(site)));
        Request<P> one = new Request<>(name, request.accessory(), request.values(), request.where(), request.limits());
        all.add(lettered(with(one, solved, site.mount().where()), site.mount().where()));
      }
    }
    return all;
  }

  /** One for each site: the disc, what lies over it, and the pole that shows as the other half of the mount's. */
  private <P extends Record> List<Request<?>> pads(Request<P> request, TomlTable table, boolean isNamed) {
    if (fit.sites().isEmpty() && !table.contains(List.of(MOUNT))) {
      return List.of(request);
    }
    List<String> wanted = wanted(table);
    List<Request<?>> all = new ArrayList<>();
    for (Site site : fit.sites()) {
      if (wanted.isEmpty() || wanted.contains(site.mount().record().name())) {
        String name = isNamed ? request.name() + "-" + site.name() : site.name() + "-pad";
        Request<P> one = new Request<>(name, request.accessory(), request.values(), request.where(), request.limits());
        all.add(with(one, pad(site), site.mount().where()).over(site.name()));
      }
    }
    return all;
  }

  private Map<String, String> pad(Site site) {
    MountParams mount = site.mount().record();
    Choice choice = fit.choices().get(site);
    StackUp chain = fit.heights().get(site).chain();
    boolean isSteel = mount.facing() == Facing.STEEL;
    Map<String, String> solved = new LinkedHashMap<>();
    solved.put("facing", Texts.choice(mount.facing()));
    solved.put("magnet", choice.magnet().name());
    solved.put("stack", String.valueOf(choice.stack()));
    if (isSteel) {
      solved.put("steel", Texts.number(chain.member("steel").size().mm()));
      solved.put("steel-width", Texts.number(mount.steelWidth()));
    }
    solved.put("pad", Texts.number(chain.member("pad").size().mm()));
    solved.put("recess", Texts.number(fit.heights().get(site).padRecess()));
    solved.put("pole", Texts.choice(isSteel ? Pole.NONE : fit.pole(site) == Pole.N ? Pole.S : Pole.N));
    solved.put("label", fit.mark(site));
    return solved;
  }

  /** The same without the height engraved where pole and height find no room together: the pole is what must be told. */
  private <P extends Record> Request<P> lettered(Request<P> request, Origin source) {
    try {
      request.accessory().build(request.values().resolve(request.name(), shelf).record(), shelf);
      return request;
    } catch (BadDimension e) {
      return e.parameter().equals("label") ? with(request, Map.of("label", "no"), source) : request;
    } catch (InputException e) {
      // Told when the part is made.
      return request;
    }
  }

  private List<String> wanted(TomlTable table) {
    List<String> names = new ArrayList<>();
    Object value = table.get(List.of(MOUNT));
    if (value instanceof String name) {
      names.add(name);
    } else if (value instanceof TomlArray array) {
      array.toList().forEach(one -> names.add(String.valueOf(one)));
    } else if (value != null) {
      Origin where = TomlText.place(file, table, MOUNT);
      faults.add(new Fault("", MOUNT, MOUNT + " is " + TomlText.noun(value) + " (" + where.words() + ")", "", "",
          "Give the name of a mount, or a list of them.", where));
    }
    List<String> known = fit.truck().mounts().stream().map(m -> m.record().name()).toList();
    for (String name : names) {
      if (!known.contains(name)) {
        Origin where = TomlText.place(file, table, MOUNT);
        faults.add(new Fault("", MOUNT, "there is no mount " + Texts.quoted(name) + " (" + where.words() + ")", name, "",
            NearMiss.advice(name, known), where));
      }
    }
    return names;
  }

  private <P extends Record> Request<P> spacer(Request<P> request) {
    if (fit.bumper().isEmpty() || isGiven(request, "thickness") || isGiven(request, "set")) {
      return request;
    }
    return with(request, Map.of("thickness", Texts.number(fit.bumper().get().spacer())),
        fit.truck().bumper().orElseThrow().where());
  }

  private static boolean isGiven(Request<?> request, String key) {
    return request.values().given(key).origin().kind() != Origin.Kind.DEFAULT;
  }

  static <P extends Record> Request<P> with(Request<P> request, Map<String, String> solved, Origin source) {
    Origin origin = new Origin(Origin.Kind.SOLVED, source.name(), source.line(), source.column());
    ParamValues<P> values = request.values();
    for (Map.Entry<String, String> one : solved.entrySet()) {
      values = values.with(one.getKey(), Given.of(one.getValue(), origin));
    }
    return new Request<>(request.name(), request.accessory(), values, request.where(), request.limits());
  }
}
