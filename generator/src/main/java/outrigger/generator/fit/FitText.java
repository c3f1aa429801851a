package outrigger.generator.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
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
  private FitText() {}

  /** Every line; none where the plan describes a truck without mounts and bumper. */
  public static List<String> lines(TruckFit fit) {
    List<String> lines = new ArrayList<>();
    if (!fit.sites().isEmpty()) {
      fit.truck().mounts().forEach(mount -> station(fit, mount, lines));
      lines.add(level(fit));
      shims(fit).forEach(lines::add);
      lines.addAll(needs(fit));
      lines.addAll(poles(fit));
    }
    fit.bumper().ifPresent(bumper -> lines.addAll(bumper(bumper, fit)));
    if (!fit.sites().isEmpty()) {
      Cautions.of(fit.choices().get(fit.sites().get(0)).hold()).forEach(caution -> lines.add("caution: " + caution));
    }
    return lines;
  }

  private static void station(TruckFit fit, Told<MountParams> mount, List<String> lines) {
    Site site = fit.at(mount).get(0);
    Height height = fit.heights().get(site);
    lines.add(mount.name() + ": height");
    for (Member member : height.members()) {
      String solved = height.solvedFor().filter(member.name()::equals).isPresent() ? "  <- solved" : "";
      String sign = member.sign() < 0 ? "=" : "+";
      lines.add(String.format(Locale.ROOT, "  %s %-14s %8s mm  +- %s%s%s", sign, member.name(),
          Words.number(member.size().mm()), Words.number(member.off()), member.isSystematic() ? " (one way)" : "", solved));
    }
    lines.add("  worst case +- " + Words.number(height.spread().worst()) + ", root-sum-square +- "
        + Words.mm(height.spread().rootSumSquare()) + "; what is off one way is added to both.");
    if (height.misfit() != 0) {
      lines.add("  Nothing was free: what was given misses the floor by " + signed(height.misfit())
          + ", which its tolerances allow.");
    }
    lines.add("  Head " + Words.mm(height.head()) + " over the rails' tops; whole layers make it "
        + (height.layers() == 0 ? "exactly that." : signed(height.layers()) + "."));
    hold(fit, mount, lines);
  }

  private static void hold(TruckFit fit, Told<MountParams> mount, List<String> lines) {
    Site worst = fit.at(mount).stream().max(java.util.Comparator.comparingDouble(s -> fit.needs().get(s).most()))
        .orElseThrow();
    Need need = fit.needs().get(worst);
    Choice choice = fit.choices().get(worst);
    Hold hold = choice.hold();
    String facing = hold.given().facing() == Facing.STEEL ? "steel" : "the same in the body";
    String chosen = mount.record().magnet().named().isPresent() ? "given" : "fewest and smallest that hold";
    lines.add(mount.name() + ": hold");
    lines.add("  " + choice.stack() + " x " + choice.magnet().name() + " against " + facing + " (" + chosen + "; "
        + choice.discs() + " discs in all), printed gap " + Words.number(hold.gap().nominal()) + ", "
        + Words.number(hold.gap().least()) + " to " + Words.mm(hold.gap().greatest()) + " as layers round.");
    lines.add("  Pull " + n(hold.force().middle()) + ", " + n(hold.reach().least()) + " to " + n(hold.reach().greatest())
        + " by grade and layers; counted on " + n(hold.counted()) + ".");
    lines.add("  Needed at most " + n(need.most()) + ": jolt up " + n(need.up()) + ", to a side " + n(need.side())
        + ", fore or aft " + n(need.fore()) + ". Margin " + margin(hold) + ".");
    double now = hold.force().middle();
    double then = hold.pull().at(hold.gap().nominal() + 0.2).middle();
    lines.add(String.format(Locale.ROOT, "  0.2 mm more gap leaves %s (%+.0f %%).", n(then), (then / now - 1) * 100));
    aside(hold, need, lines);
  }

  private static void aside(Hold hold, Need need, List<String> lines) {
    Aside aside = hold.aside();
    boolean isSteel = hold.given().facing() == Facing.STEEL;
    boolean isEnough = aside.friction() + aside.centring() >= need.sideways();
    lines.add("  Sideways: friction " + n(aside.friction()) + (isSteel ? ", steel pulls nothing back" : ", the pair pulls "
        + "back with " + n(aside.centring()) + " at " + Words.mm(hold.given().offset())) + "; a jolt asks "
        + n(need.sideways()) + ": " + (isEnough ? "enough." : "add a locating pin."));
  }

  private static List<String> needs(TruckFit fit) {
    double lift = fit.sites().stream().mapToDouble(s -> fit.choices().get(s).hold().reach().middle()).sum()
        + fit.truck().body().record().mass() / 1000 * 9.80665;
    String from = fit.truck().body().record().centre().isPresent() ? "as given" : "assumed: give cg in [body]";
    return List.of("body: " + Words.number(fit.truck().body().record().mass()) + " g, "
        + Words.number(fit.truck().body().record().shock()) + " times its weight, centre of gravity " + fit.centre().words()
        + " (" + from + "). A stiff body on mounts that give alike; its weight is not counted as help.",
        "By hand, straight off all mounts at once: about " + n(lift) + "; tilted off, less.");
  }

  static String level(TruckFit fit) {
    Level level = fit.level();
    double limit = fit.truck().body().record().level();
    String is = level.isWithin(limit) ? "level within " : "NOT LEVEL within ";
    return "body: pitch " + degrees(level.pitch()) + " (nose up), roll " + degrees(level.roll())
        + " (left side up); worst case +- " + angle(level.pitchSpread().worst()) + " and "
        + angle(level.rollSpread().worst()) + ", root-sum-square +- " + angle(level.pitchSpread().rootSumSquare())
        + " and " + angle(level.rollSpread().rootSumSquare()) + " degrees. By what is known it sits " + is
        + Words.number(limit) + " degrees.";
  }

  /** Shims under the pads that bring every mount to the highest, or to its height where all are low. */
  public static List<String> shims(TruckFit fit) {
    double highest = Shim.highest(fit);
    List<Shim> shims = fit.shims();
    List<String> lines = new ArrayList<>(shims.stream().map(Shim::words).toList());
    if (!shims.isEmpty() && highest > 1e-3) {
      lines.add("body: it then lies " + Words.mm(highest) + " high all over.");
    }
    return lines;
  }

  private static List<String> poles(TruckFit fit) {
    Poles poles = fit.poles();
    List<String> lines = new ArrayList<>();
    lines.add("poles up, in mount and body alike: " + poles.up().entrySet().stream()
        .map(e -> e.getKey().name() + " " + e.getValue().name()).collect(Collectors.joining(", ")) + ".");
    lines.add("  So the faces that meet are one N and one S. Marks tell the pole you see: a mount's is the pole that is up, a "
        + "pad's the other, so that the letters of a pair differ. Pads are numbered: "
        + fit.sites().stream().map(site -> fit.mark(site) + " " + site.name()).collect(Collectors.joining(", ")) + ".");
    if (poles.wrong() == 0) {
      lines.add("  There is no other place where two or more of its magnets meet mounts.");
    } else if (poles.open().isEmpty()) {
      lines.add("  In " + (poles.wrong() == 1 ? "the one wrong place" : "all " + poles.wrong() + " wrong places")
          + " more pairs push than pull: the body fits only the right way round.");
    } else {
      String all = fit.sites().size() + " of " + fit.sites().size();
      if (poles.open().stream().noneMatch(words -> words.contains(all))) {
        lines.add("  Set down on all its mounts it fits only the right way round: any other way more pairs push than pull.");
      }
      lines.add("  Poles cannot shut out " + poles.open().size() + " of " + poles.wrong() + " wrong places ("
          + String.join("; ", poles.open()) + "): add a locating pin off the middle.");
    }
    return lines;
  }

  private static List<String> bumper(Bumper bumper, TruckFit fit) {
    Optional<Found> found = fit.drawer().stack(bumper.spacer(), fit.truck().printer());
    return List.of("bumper: " + bumper.chain().words(1) + " = " + bumper.chain().words(-1) + " mm along x; spacer "
        + Words.mm(bumper.spacer()) + "; the face may come out +- " + Words.number(bumper.spread().worst())
        + " at worst, +- " + Words.mm(bumper.spread().rootSumSquare()) + " by root-sum-square." + found.map(f -> " Instead of a printed spacer"
        + Shim.from(bumper.spacer(), found, Optional.empty()) + ".").orElse(""));
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
