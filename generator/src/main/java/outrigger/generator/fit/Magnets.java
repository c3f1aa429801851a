package outrigger.generator.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import outrigger.generator.accessory.Words;
import outrigger.generator.joint.Articles;
import outrigger.generator.joint.Stock;
import outrigger.generator.magnet.Facing;
import outrigger.generator.magnet.Hold;
import outrigger.generator.magnet.HoldParams;
import outrigger.generator.magnet.Steel;
import outrigger.generator.param.BadDimension;
import outrigger.generator.param.Fault;
import outrigger.generator.param.InputException;
import outrigger.generator.param.ParamValues;
import outrigger.generator.param.Texts;
import outrigger.generator.truck.BodyParams;
import outrigger.generator.truck.MountParams;
import outrigger.generator.truck.Told;
import outrigger.generator.truck.Truck;
import outrigger.presets.DiscMagnet;
import outrigger.presets.Shelf;

/** Chooses magnets for the stations of a truck: the fewest that hold, of these the smallest; the search is complete. */
final class Magnets {
  /** Longest stack that is tried: more discs add little, see docs/hold.md. */
  private static final int LONGEST = 4;
  private static final double GRAVITY = 9.80665;
  private static final double LEAST_SHOCK = 0.1;
  private static final double MOST_SHOCK = 100;

  private final Truck truck;
  private final Stock stock;
  private final Shelf shelf;
  private final Map<List<Object>, Double> counted = new HashMap<>();

  Magnets(Truck truck, Stock stock, Shelf shelf) {
    this.truck = truck;
    this.stock = stock;
    this.shelf = shelf;
  }

  /** What a station may take, the fewest and smallest first, those that hold only. */
  List<Choice> candidates(Told<MountParams> mount, Need need) {
    // Where there are any number of each, nothing but the best is ever taken.
    return tried(mount, need, offered(mount)).stream().sorted(ORDER).filter(c -> holds(c, need))
        .limit(isFromDrawer() ? Long.MAX_VALUE : 1).toList();
  }

  private static final Comparator<Choice> ORDER = Comparator.comparingInt(Choice::discs)
      .thenComparingDouble(Choice::volume).thenComparing(c -> c.magnet().name());

  /** The best choice for all stations together that the drawer has enough for; empty where there is none. */
  Optional<List<Choice>> together(List<List<Choice>> candidates) {
    Search search = new Search(candidates);
    search.go(0, new ArrayList<>(), new HashMap<>());
    return Optional.ofNullable(search.best);
  }

  /** Whether the drawer is known to hold magnets, so that only they are chosen from. */
  boolean isFromDrawer() {
    return stock.counts().keySet().stream().anyMatch(article -> article.endsWith(" magnet"));
  }

  private boolean holds(Choice choice, Need need) {
    return counted(choice) >= need.most() && choice.hold().isSteelEnough();
  }

  /** What is counted on does not depend on the need; finding the weakest pull over the gap is what costs time. */
  private double counted(Choice choice) {
    HoldParams p = choice.hold().given();
    List<Object> alike = List.of(choice.magnet(), choice.stack(), p.facing(), p.recess(), p.glue(), p.steelThickness(),
        p.steelWidth());
    return counted.computeIfAbsent(alike, key -> choice.hold().counted());
  }

  private int onHand(DiscMagnet magnet) {
    return isFromDrawer() ? stock.count(Articles.of(magnet).article()) : Integer.MAX_VALUE;
  }

  private List<DiscMagnet> offered(Told<MountParams> mount) {
    return mount.record().magnet().named().map(List::of).orElseGet(() -> shelf.items(DiscMagnet.class).stream()
        .filter(m -> onHand(m) > 0).toList());
  }

  private List<Choice> tried(Told<MountParams> mount, Need need, List<DiscMagnet> magnets) {
    MountParams p = mount.record();
    List<Choice> all = new ArrayList<>();
    for (DiscMagnet magnet : magnets) {
      for (int n = p.stack() == 0 ? 1 : p.stack(); n <= (p.stack() == 0 ? LONGEST : p.stack()); n++) {
        int discs = n * p.side().each().size() * (p.facing() == Facing.STEEL ? 1 : 2);
        all.add(new Choice(magnet, n, discs, hold(p, magnet, n, need)));
      }
    }
    return all;
  }

  /** What one mount holds at the printed gap: the body's share of it is put as one mount's jolt. */
  private Hold hold(MountParams p, DiscMagnet magnet, int stack, Need need) {
    BodyParams body = truck.body().record();
    double weight = body.mass() / 1000 * GRAVITY;
    double shock = Math.max(LEAST_SHOCK, Math.min(MOST_SHOCK, need.most() / weight));
    List<String> given = new ArrayList<>(List.of("magnet", magnet.name(), "stack", String.valueOf(stack), "facing",
        Texts.choice(p.facing()), "recess", half(p), "facing-recess", half(p), "glue", text(p.glue().size().orElse(0)),
        "plating", text(body.plating()), "printer", truck.printer().name(), "temperature", text(body.temperature()),
        "mass", text(body.mass()), "mounts", "1", "shock", Double.toString(shock), "derating", text(body.derating()),
        "friction", text(body.friction())));
    if (p.facing() == Facing.STEEL) {
      given.addAll(List.of("steel-thickness", text(p.steel().size().orElse(1)), "steel-width", text(p.steelWidth())));
    }
    return Hold.of(ParamValues.record(HoldParams.class, shelf, given.toArray(new String[0])), shelf);
  }

  private static String half(MountParams p) {
    return text(p.gap().size().orElse(0) / 2);
  }

  private static String text(double value) {
    return Double.toString(value);
  }

  /** Why no magnet holds a station, and the nearest that would. */
  Fault noneHolds(Told<MountParams> mount, Need need) {
    List<Choice> tried = tried(mount, need, offered(mount));
    Optional<Fault> steel = steelTooSmall(mount, need, tried);
    if (steel.isPresent()) {
      return steel.get();
    }
    String key = mount.record().magnet().named().isPresent() ? "magnet" : "name";
    Optional<Choice> best = tried.stream().max(Comparator.comparingDouble(this::counted));
    String what = best.map(c -> "no magnet " + (isFromDrawer() ? "on hand " : "") + "holds this mount: it needs "
        + newton(need.most()) + ", the best is " + c.stack() + " x " + c.magnet().name() + " with "
        + newton(c.hold().counted())
        + " counted on").orElse("there is no magnet on hand to choose from");
    Optional<Choice> nearest = tried(mount, need, shelf.items(DiscMagnet.class)).stream()
        .filter(c -> holds(c, need)).min(ORDER);
    String advice = nearest.map(c -> "The smallest that holds is " + c.stack() + " x " + c.magnet().name() + " ("
        + newton(c.hold().counted()) + "). Or add mounts, close the gap, or lower mass or shock.").orElse(
        "None of the table disc-magnets does: add mounts, close the gap, or lower mass or shock.");
    return mount.fault(key, what, advice);
  }

  /** Where magnets would hold but for the steel: what steel the least demanding of them takes. */
  private Optional<Fault> steelTooSmall(Told<MountParams> mount, Need need, List<Choice> tried) {
    MountParams p = mount.record();
    return tried.stream().filter(c -> c.hold().steel().isPresent() && counted(c) >= need.most())
        .min(Comparator.comparingDouble((Choice c) -> c.hold().steel().orElseThrow().thickness()).thenComparing(ORDER))
        .map(c -> {
          Steel least = c.hold().steel().orElseThrow();
          double thick = up(least.thickness());
          boolean isThin = p.steel().size().orElse(1) < least.thickness();
          boolean isNarrow = p.steelWidth() < least.width();
          String disc = c.stack() + " x " + c.magnet().name();
          String thin = "the steel is " + Words.mm(p.steel().size().orElse(1)) + " thick, which " + disc + " saturates";
          String narrow = "the steel is " + Words.mm(p.steelWidth()) + " wide, which does not catch the field of " + disc;
          String enough = "Steel " + Words.mm(thick) + " thick and " + Words.mm(up(least.width()))
              + " wide or more holds with " + disc + ": " + newton(counted(c)) + " counted on, " + newton(need.most())
              + " needed. Less than that pulls less by an amount that cannot be trusted.";
          return mount.fault(isThin ? "steel" : "steel-width", isThin && isNarrow ? thin + ", and "
              + Words.mm(p.steelWidth()) + " wide, which does not catch its field" : isThin ? thin : narrow, enough);
        });
  }

  /** To the next tenth of a millimetre. */
  private static double up(double mm) {
    return Math.ceil(mm * 10 - 1e-9) / 10;
  }

  /** Why the drawer does not do for all stations together, and what to buy. */
  Fault notEnough(List<List<Choice>> candidates) {
    int least = candidates.stream().mapToInt(list -> list.get(0).discs()).sum();
    Map<String, Integer> wanted = new LinkedHashMap<>();
    Map<String, Integer> missing = new LinkedHashMap<>();
    for (List<Choice> list : candidates) {
      wanted.merge(list.get(0).magnet().name(), list.get(0).discs(), Integer::sum);
      missing.put(list.get(0).magnet().name(), onHand(list.get(0).magnet()));
    }
    missing.replaceAll((name, onHand) -> wanted.get(name) - onHand);
    missing.values().removeIf(count -> count <= 0);
    return truck.mounts().get(0).fault("name", "the magnets on hand do not go round: the mounts take at least " + least
        + " discs, best as " + counts(wanted), "Buy " + (missing.isEmpty() ? "what is missing" : counts(missing) + " more")
        + " and add to [on-hand], or use fewer mounts.");
  }

  private static String counts(Map<String, Integer> discs) {
    return String.join(" and ", discs.entrySet().stream().map(e -> e.getValue() + " x " + e.getKey()).toList());
  }

  static String newton(double n) {
    return String.format(java.util.Locale.ROOT, "%.2f N", n);
  }

  /** What is wrong with a station's own values, if anything. */
  Optional<Fault> refused(Told<MountParams> mount, Need need) {
    try {
      tried(mount, need, offered(mount).stream().limit(1).toList());
      return mount.record().gap().isFree() ? Optional.of(mount.fault("gap", "gap cannot be solved: the hold depends on it",
          "Give it as " + Words.number(0.4) + " or as you measure it.")) : shallow(mount);
    } catch (BadDimension e) {
      return Optional.of(mount.fault("magnet", e.what(), e.advice()));
    } catch (InputException e) {
      return Optional.of(mount.fault("magnet", e.faults().get(0).what(), e.faults().get(0).advice()));
    }
  }

  private static Optional<Fault> shallow(Told<MountParams> mount) {
    double gap = mount.record().gap().mm();
    return gap >= Heights.BELOW_HEAD ? Optional.empty() : Optional.of(mount.fault("gap", "a gap of " + Words.mm(gap)
        + " is less than the " + Words.mm(Heights.BELOW_HEAD) + " by which the mount's magnet lies below its head",
        "Use " + Words.mm(Heights.BELOW_HEAD) + " or more."));
  }

  /** Depth first over stations, cut off where what is left cannot do better. */
  private final class Search {
    private final List<List<Choice>> candidates;
    private List<Choice> best;
    private int discs = Integer.MAX_VALUE;
    private double volume = Double.MAX_VALUE;

    Search(List<List<Choice>> candidates) {
      this.candidates = candidates;
    }

    void go(int station, List<Choice> taken, Map<String, Integer> used) {
      int count = taken.stream().mapToInt(Choice::discs).sum() + candidates.subList(station, candidates.size()).stream()
          .mapToInt(list -> list.get(0).discs()).sum();
      double size = taken.stream().mapToDouble(Choice::volume).sum();
      if (count > discs || station == candidates.size() && count == discs && size >= volume) {
        return;
      }
      if (station == candidates.size()) {
        best = List.copyOf(taken);
        discs = count;
        volume = size;
        return;
      }
      for (Choice choice : candidates.get(station)) {
        String name = choice.magnet().name();
        int more = used.getOrDefault(name, 0) + choice.discs();
        if (more <= onHand(choice.magnet())) {
          taken.add(choice);
          used.put(name, more);
          go(station + 1, taken, used);
          used.put(name, more - choice.discs());
          taken.remove(taken.size() - 1);
        }
      }
    }
  }
}
