package outrigger.generator.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import outrigger.generator.accessory.Words;
import outrigger.generator.magnet.Aside;
import outrigger.generator.magnet.Cautions;
import outrigger.generator.magnet.Facing;
import outrigger.generator.magnet.Hold;
import outrigger.generator.truck.MountParams;
import outrigger.generator.truck.Told;
import outrigger.generator.stack.Found;

/** The working of a solved truck, in words. */
public final class FitText {
  /** Stations told beside each other. */
  private static final int BESIDE = 4;
  /** Wrong places told one by one. */
  private static final int TOLD = 4;
  /** Members that come after what magnets face, which differs between stations. */
  private static final List<String> LAST = List.of("pad", Heights.FLOOR);

  private FitText() {}

  /** Each station's chain, up to a few beside each other, how level the body sits, and the shims; none without mounts. */
  public static List<String> heights(TruckFit fit) {
    List<String> lines = new ArrayList<>();
    List<Told<MountParams>> mounts = fit.truck().mounts();
    for (int from = 0; from < mounts.size() && !fit.sites().isEmpty(); from += BESIDE) {
      chains(fit, mounts.subList(from, Math.min(mounts.size(), from + BESIDE)), lines);
    }
    if (!fit.sites().isEmpty()) {
      lines.add("* one way: the same on every print, so it is added, never taken under the root.");
      mounts.forEach(mount -> misfit(fit, mount).ifPresent(lines::add));
      lines.add(level(fit));
      shims(fit).forEach(lines::add);
    }
    return lines;
  }

  private static void chains(TruckFit fit, List<Told<MountParams>> mounts, List<String> lines) {
    List<Height> heights = mounts.stream().map(mount -> fit.heights().get(fit.at(mount).get(0))).toList();
    Set<String> names = new LinkedHashSet<>();
    heights.forEach(height -> height.members().stream().map(Member::name).filter(name -> !LAST.contains(name))
        .forEach(names::add));
    names.addAll(LAST);
    lines.add(row("mm", mounts.stream().map(mount -> mount.record().name())));
    for (String name : names) {
      lines.add(row((name.equals(Heights.FLOOR) ? "= " : "+ ") + name, heights.stream().map(h -> cell(h, name))));
    }
    lines.add(row("worst case", heights.stream().map(h -> "+-" + Words.number(h.spread().worst()))));
    lines.add(row("root-sum-square", heights.stream().map(h -> "+-" + Words.number(h.spread().rootSumSquare()))));
    lines.add(row("head over rails", heights.stream().map(h -> Words.number(h.head()))));
    lines.add(row("whole layers", heights.stream().map(h -> h.layers() == 0 ? "exact" : signed(h.layers()))));
  }

  private static String row(String name, Stream<String> cells) {
    return String.format(Locale.ROOT, "%-17s", name) + cells.map(cell -> String.format(Locale.ROOT, "  %-22s", cell))
        .collect(Collectors.joining()).stripTrailing();
  }

  private static String cell(Height height, String name) {
    return height.members().stream().filter(m -> m.name().equals(name)).findFirst().map(m -> Words.number(m.size().mm())
        + (m.off() == 0 ? "" : " +-" + Words.number(m.off()) + (m.isSystematic() ? "*" : ""))
        + (height.solvedFor().filter(name::equals).isPresent() ? " (solved)" : "")).orElse("-");
  }

  private static Optional<String> misfit(TruckFit fit, Told<MountParams> mount) {
    double misfit = fit.heights().get(fit.at(mount).get(0)).misfit();
    return misfit == 0 ? Optional.empty() : Optional.of(mount.record().name() + ": nothing was free; what was given misses "
        + "the floor by " + signed(misfit) + ", which its tolerances allow.");
  }

  /** What holds each station, stations alike told together, and what the body asks; none without mounts. */
  public static List<String> hold(TruckFit fit) {
    List<String> lines = new ArrayList<>();
    if (fit.sites().isEmpty()) {
      return lines;
    }
    lines.addAll(needs(fit));
    Map<List<String>, List<String>> alike = new LinkedHashMap<>();
    fit.truck().mounts().forEach(mount -> alike.computeIfAbsent(magnets(fit, mount), key -> new ArrayList<>())
        .add(mount.record().name()));
    alike.forEach((told, names) -> {
      lines.add(String.join(" and ", names) + ":");
      lines.addAll(told);
      names.forEach(name -> lines.add(need(fit, name)));
    });
    return lines;
  }

  /** Cautions of the strongest of its magnets; none without mounts. */
  public static List<String> cautions(TruckFit fit) {
    return fit.choices().values().stream().map(Choice::hold).max(java.util.Comparator.comparingDouble(Hold::fluxIndex))
        .map(Cautions::of).orElse(List.of());
  }

  private static Site worst(TruckFit fit, Told<MountParams> mount) {
    return fit.at(mount).stream().max(java.util.Comparator.comparingDouble(s -> fit.needs().get(s).most())).orElseThrow();
  }

  private static List<String> magnets(TruckFit fit, Told<MountParams> mount) {
    Choice choice = fit.choices().get(worst(fit, mount));
    Hold hold = choice.hold();
    String facing = hold.given().facing() == Facing.STEEL ? "steel" : "the same in the body";
    String chosen = mount.record().magnet().named().isPresent() ? "given" : "fewest and smallest that hold";
    double now = hold.force().middle();
    double then = hold.pull().at(hold.gap().nominal() + 0.2).middle();
    return List.of("  " + choice.stack() + " x " + choice.magnet().name() + " a mount, against " + facing + " (" + chosen
        + "; " + choice.discs() + " discs a station).",
        "  Printed gap " + Words.number(hold.gap().nominal()) + ", " + Words.number(hold.gap().least()) + " to "
        + Words.mm(hold.gap().greatest()) + " as layers round. Pull " + n(hold.force().middle()) + ", "
        + n(hold.reach().least()) + " to " + n(hold.reach().greatest()) + " by grade and layers; counted on "
        + n(hold.counted()) + String.format(Locale.ROOT, ". 0.2 mm more gap leaves %s (%+.0f %%).", n(then),
        (then / now - 1) * 100), aside(hold, fit.needs().get(worst(fit, mount))));
  }

  private static String need(TruckFit fit, String name) {
    Told<MountParams> mount = fit.truck().mounts().stream().filter(m -> m.record().name().equals(name)).findFirst()
        .orElseThrow();
    Need need = fit.needs().get(worst(fit, mount));
    return "  " + name + " needs at most " + n(need.most()) + ": jolt up " + n(need.up()) + ", to a side " + n(need.side())
        + ", fore or aft " + n(need.fore()) + ". Margin " + margin(fit.choices().get(worst(fit, mount)).hold()) + ".";
  }

  private static String aside(Hold hold, Need need) {
    Aside aside = hold.aside();
    boolean isSteel = hold.given().facing() == Facing.STEEL;
    boolean isEnough = aside.friction() + aside.centring() >= need.sideways();
    return "  Sideways: friction " + n(aside.friction()) + (isSteel ? ", steel pulls nothing back" : ", the pair pulls "
        + "back with " + n(aside.centring()) + " at " + Words.mm(hold.given().offset())) + "; a jolt asks "
        + n(need.sideways()) + ": " + (isEnough ? "enough." : "add a locating pin.");
  }

  private static List<String> needs(TruckFit fit) {
    double lift = fit.sites().stream().mapToDouble(s -> fit.choices().get(s).hold().reach().middle()).sum()
        + fit.truck().body().record().mass() / 1000 * 9.80665;
    String from = fit.truck().body().record().centre().isPresent() ? "as given" : "assumed: give cg in [body]";
    return List.of("Body: " + Words.number(Math.rint(fit.truck().body().record().mass() * 10) / 10) + " g, "
        + Words.number(fit.truck().body().record().shock()) + " times its weight, centre of gravity " + fit.centre().words()
        + " (" + from + "). A stiff body on mounts that give alike; its weight is not counted as help.",
        "By hand, straight off all mounts at once: about " + n(lift) + "; tilted off, less.");
  }

  static String level(TruckFit fit) {
    Level level = fit.level();
    double limit = fit.truck().body().record().level();
    String is = level.isWithin(limit) ? "level within " : "NOT LEVEL within ";
    return "Body: pitch " + degrees(level.pitch()) + " (nose up), roll " + degrees(level.roll())
        + " (left side up); were each mount off by itself, worst case +- " + angle(level.pitchSpread().worst()) + " and "
        + angle(level.rollSpread().worst()) + ", root-sum-square +- " + angle(level.pitchSpread().rootSumSquare())
        + " and " + angle(level.rollSpread().rootSumSquare()) + " degrees. By what is known it sits " + is
        + Words.number(limit) + " degrees.";
  }

  /** Shims under the pads that bring every mount to the highest, or to its height where all are low. */
  public static List<String> shims(TruckFit fit) {
    double highest = Shim.highest(fit);
    List<Shim> shims = fit.shims();
    List<String> lines = new ArrayList<>(shims.stream().map(Shim::words).toList());
    if (highest > 1e-3) {
      lines.add("Body: it " + (shims.isEmpty() ? "" : "then ") + "lies " + Words.mm(highest) + " high all over"
          + (highest > Shim.WORTH ? "; pads that much thinner bring it down." : "."));
    }
    return lines;
  }

  /** Which pole looks up where, and what that shuts out; none without mounts. */
  public static List<String> poles(TruckFit fit) {
    Poles poles = fit.poles();
    List<String> lines = new ArrayList<>();
    if (fit.sites().isEmpty()) {
      return lines;
    }
    boolean isPaired = fit.sites().stream().anyMatch(site -> site.mount().record().facing() == Facing.MAGNET);
    lines.add("Poles up" + (isPaired ? ", in mount and body alike: " : ": ") + poles.up().entrySet().stream()
        .map(e -> e.getKey().name() + " " + e.getValue().name()).collect(Collectors.joining(", ")) + ".");
    lines.add((isPaired ? "So the faces that meet are one N and one S. Marks tell the pole you see: a mount's is the pole "
        + "that is up, a pad's the other, so that the letters of a pair differ. "
        : "Steel has no poles: it is pulled whichever pole looks at it. ") + "Pads are numbered: "
        + fit.sites().stream().map(site -> fit.mark(site) + " " + site.name()).collect(Collectors.joining(", ")) + ".");
    lines.add(wrongPlaces(poles, fit.sites().size()));
    return lines;
  }

  private static String wrongPlaces(Poles poles, int sites) {
    if (poles.wrong() == 0) {
      return "There is no other place where two or more of its magnets meet mounts.";
    }
    if (poles.open().isEmpty()) {
      return "In " + (poles.wrong() == 1 ? "the one wrong place" : "all " + poles.wrong() + " wrong places")
          + " more pairs push than pull: the body fits only the right way round.";
    }
    String all = sites + " of " + sites;
    String whole = poles.full() == 0 ? "Nowhere else do all its magnets meet mounts. "
        : poles.open().stream().noneMatch(words -> words.contains(all)) ? "Set down on all its mounts it fits only the "
        + "right way round: any other way more pairs push than pull. " : "";
    List<String> told = poles.open().subList(0, Math.min(TOLD, poles.open().size()));
    int more = poles.open().size() - told.size();
    return whole + "Poles cannot shut out " + poles.open().size() + " of " + poles.wrong() + " wrong places ("
        + String.join("; ", told) + (more == 0 ? "" : "; and " + more + " more, listed in the manifest")
        + "): add a locating pin off the middle.";
  }

  /** The bumper's chain; none without one. */
  public static List<String> bumper(TruckFit fit) {
    return fit.bumper().map(bumper -> bumper(bumper, fit)).orElse(List.of());
  }

  private static List<String> bumper(Bumper bumper, TruckFit fit) {
    Optional<Found> found = fit.drawer().stack(bumper.spacer(), fit.truck().printer());
    double misfit = bumper.chain().sum();
    double face = bumper.chain().member("face").size().mm();
    String reach = misfit == 0 ? bumper.chain().words(-1) + " mm along x"
        : Words.mm(face + misfit) + " along x: nothing was free; that is " + Words.mm(Math.abs(misfit))
            + (misfit > 0 ? " past" : " short of") + " the face at " + Words.mm(face) + ", which its tolerances allow";
    return List.of(bumper.chain().words(1) + " = " + reach + "; spacer "
        + Words.mm(bumper.spacer()) + "; the face may come out +- " + Words.number(bumper.spread().worst())
        + " at worst, +- " + Words.mm(bumper.spread().rootSumSquare()) + " by root-sum-square."
        + found.map(f -> " Instead of a printed spacer: " + Shim.from(bumper.spacer(), found, Optional.empty()) + ".")
            .orElse(""));
  }

  /** Rounded down, so that what does not hold never reads as 1. */
  private static String margin(Hold hold) {
    return String.format(Locale.ROOT, "%.2f", Math.floor(100 * hold.margin()) / 100);
  }

  private static String n(double newton) {
    return Magnets.newton(newton);
  }

  private static String signed(double mm) {
    return (mm > 0 ? "+" : "-") + Words.mm(Math.abs(mm));
  }

  private static String degrees(double value) {
    return String.format(Locale.ROOT, "%+.2f", value + 0.0);
  }

  private static String angle(double value) {
    return String.format(Locale.ROOT, "%.2f", value);
  }
}
