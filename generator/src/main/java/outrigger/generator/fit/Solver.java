package outrigger.generator.fit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import outrigger.generator.accessory.Words;
import outrigger.generator.accessory.body.BodyMount;
import outrigger.generator.accessory.body.Side;
import outrigger.generator.accessory.feature.LayerNote;
import outrigger.generator.joint.Stock;
import outrigger.generator.param.Fault;
import outrigger.generator.stack.Drawer;
import outrigger.generator.truck.BodyParams;
import outrigger.generator.truck.MountParams;
import outrigger.generator.truck.Point;
import outrigger.generator.truck.Seat;
import outrigger.generator.truck.Told;
import outrigger.generator.truck.Truck;
import outrigger.presets.DiscMagnet;
import outrigger.presets.Shelf;

/** Solves a truck, or gathers every reason why it cannot be. */
public final class Solver {
  /** Steps to a millimetre of the heights that mounts are drawn and marked with. */
  private static final double ENGRAVED = 100;
  /** Stands where only the free members of a stack are looked at. */
  private static final DiscMagnet NO_MAGNET = new DiscMagnet("none", 1, 1, "none");
  private static final double GRAVITY = 9.80665;
  /** Centre of gravity of a body over its floor where none is given, mm; an assumption that is told. */
  private static final double ASSUMED_ABOVE_FLOOR = 20;

  private final Truck truck;
  private final Magnets magnets;
  private final List<Fault> faults;
  private final List<Site> sites = new ArrayList<>();

  private final Drawer drawer;

  private Solver(Truck truck, Stock stock, Drawer drawer, Shelf shelf, List<Fault> faults) {
    this.truck = truck;
    this.drawer = drawer;
    this.magnets = new Magnets(truck, stock, shelf);
    this.faults = faults;
  }

  /**
   * The truck solved; empty where faults are added.
   *
   * @param stock what is on hand; magnets are chosen from it where it names any
   * @param drawer sheet on hand, for shims
   */
  public static Optional<TruckFit> solve(Truck truck, Stock stock, Drawer drawer, Shelf shelf, List<Fault> faults) {
    int before = faults.size();
    Optional<TruckFit> fit = new Solver(truck, stock, drawer, shelf, faults).solve();
    return faults.size() > before ? Optional.empty() : fit;
  }

  private Optional<TruckFit> solve() {
    for (Told<MountParams> mount : truck.mounts()) {
      for (Side side : mount.record().side().each()) {
        sites.add(Site.of(mount, side, truck.rails()));
      }
    }
    Optional<Bumper> bumper = bumper();
    if (sites.isEmpty()) {
      return faults.isEmpty() ? Optional.of(new TruckFit(truck, sites, new Point(0, 0, 0), Map.of(), Map.of(), Map.of(),
          new Level(0, 0, 0, none(), none()), new Poles(Map.of(), 0, 0, List.of()), bumper, drawer)) : Optional.empty();
    }
    Share share = new Share(sites);
    double floor = truck.mounts().stream().mapToDouble(m -> m.record().floor().size().orElse(0)).average().orElse(0);
    Point centre = truck.body().record().centre().orElse(share.middle(floor + ASSUMED_ABOVE_FLOOR));
    refuseTipping(share, centre);
    Map<Site, Need> needs = needs(share, centre, floor);
    Optional<List<Choice>> chosen = chosen(needs);
    if (chosen.isEmpty()) {
      return Optional.empty();
    }
    return fit(chosen.get(), centre, needs, bumper);
  }

  private static outrigger.generator.stack.Spread none() {
    return new outrigger.generator.stack.Spread(0, 0);
  }

  private void refuseTipping(Share share, Point centre) {
    if (share.isLine() && Math.abs(centre.x() - share.middle(0).x()) > 1e-6 && sites.size() < 3) {
      faults.add(truck.body().fault("cg", "the mounts stand in one line, and the body's centre of gravity lies "
          + Words.mm(Math.abs(centre.x() - share.middle(0).x())) + " beside it, so that nothing keeps it from tipping over",
          "Add a mount at another x."));
    }
  }

  private Map<Site, Need> needs(Share share, Point centre, double floor) {
    BodyParams body = truck.body().record();
    double jolt = body.mass() / 1000 * GRAVITY * body.shock();
    double arm = Math.max(0, centre.z() - floor);
    Point middle = share.middle(0);
    Map<Site, Need> needs = new LinkedHashMap<>();
    for (Site site : sites) {
      double up = share.at(site, jolt, jolt * (centre.x() - middle.x()), jolt * (centre.y() - middle.y()));
      double side = Math.abs(share.at(site, 0, 0, jolt * arm));
      double fore = Math.abs(share.at(site, 0, jolt * arm, 0));
      needs.put(site, new Need(Math.max(0, up), side, fore, jolt / sites.size()));
    }
    return needs;
  }

  /** What is most asked of any mount of a station: both its sides get the same magnets. */
  private Need most(Told<MountParams> mount, Map<Site, Need> needs) {
    return needs.entrySet().stream().filter(e -> e.getKey().mount().equals(mount)).map(Map.Entry::getValue)
        .max(java.util.Comparator.comparingDouble(Need::most)).orElseThrow();
  }

  private Optional<List<Choice>> chosen(Map<Site, Need> needs) {
    List<List<Choice>> candidates = new ArrayList<>();
    int before = faults.size();
    for (Told<MountParams> mount : truck.mounts()) {
      Need need = most(mount, needs);
      Optional<Fault> refused = magnets.refused(mount, need);
      List<Choice> holding = refused.isPresent() ? List.of() : magnets.candidates(mount, need);
      if (holding.isEmpty()) {
        faults.add(refused.orElseGet(() -> magnets.noneHolds(mount, need)));
      }
      candidates.add(holding);
    }
    if (faults.size() > before) {
      heightsWithoutHold(candidates);
      return Optional.empty();
    }
    Optional<List<Choice>> together = magnets.together(candidates);
    if (together.isEmpty()) {
      faults.add(magnets.notEnough(candidates));
    }
    return together;
  }

  /** What is wrong with heights though some mount finds no magnet: what hangs on none, or on one that is sure. */
  private void heightsWithoutHold(List<List<Choice>> candidates) {
    for (int i = 0; i < candidates.size(); i++) {
      Told<MountParams> mount = truck.mounts().get(i);
      MountParams p = mount.record();
      Heights solver = new Heights(mount, truck.printer());
      Optional<StackUp> sure = candidates.get(i).size() == 1
          ? Optional.of(solver.chain(candidates.get(i).get(0).magnet(), candidates.get(i).get(0).stack()))
          : p.magnet().named().filter(magnet -> p.stack() > 0).map(magnet -> solver.chain(magnet, p.stack()));
      sure.or(() -> Optional.of(solver.chain(NO_MAGNET, 1)).filter(chain -> chain.free().size() > 1))
          .flatMap(solver::fault).ifPresent(faults::add);
    }
  }

  private Optional<TruckFit> fit(List<Choice> chosen, Point centre, Map<Site, Need> needs, Optional<Bumper> bumper) {
    Map<Site, Choice> choices = new LinkedHashMap<>();
    Map<Site, Height> heights = new LinkedHashMap<>();
    int before = faults.size();
    for (int i = 0; i < chosen.size(); i++) {
      Told<MountParams> mount = truck.mounts().get(i);
      Choice choice = chosen.get(i);
      Heights solver = new Heights(mount, truck.printer());
      StackUp chain = solver.chain(choice.magnet(), choice.stack());
      Optional<Fault> fault = solver.fault(chain);
      fault.ifPresent(faults::add);
      if (fault.isEmpty()) {
        Height height = height(mount, chain);
        sites.stream().filter(s -> s.mount().equals(mount)).forEach(s -> {
          choices.put(s, choice);
          heights.put(s, height);
        });
      }
    }
    return faults.size() > before ? Optional.empty() : Optional.of(new TruckFit(truck, sites, centre, needs, choices,
        heights, Level.of(sites, heights), Poles.of(sites), bumper, drawer));
  }

  private Height height(Told<MountParams> mount, StackUp chain) {
    Optional<String> free = chain.free().stream().map(Member::name).findFirst();
    StackUp solved = chain.solved();
    double wanted = solved.member(Heights.POST).size().mm() + solved.member("pocket-floor").size().mm()
        + solved.member("magnet").size().mm() + Heights.BELOW_HEAD;
    // Drawn as it is engraved: mounts that bear one mark are alike.
    double head = Math.rint(ENGRAVED * wanted) / ENGRAVED;
    double under = BodyMount.railTop(truck.rails().section(seat(mount).x()), mount.record().mounting());
    double layers = LayerNote.of(under + head, truck.printer()).layers().error() + head - wanted;
    return new Height(solved, free, head, Math.rint(layers * 1e6) / 1e6 + 0.0, free.isPresent() ? 0 : chain.sum(),
        solved.spread(free.filter(Heights.FLOOR::equals).orElse("")));
  }

  private Seat seat(Told<MountParams> mount) {
    return sites.stream().filter(site -> site.mount().equals(mount)).findFirst().orElseThrow().seat();
  }

  private Optional<Bumper> bumper() {
    if (truck.bumper().isEmpty()) {
      return Optional.empty();
    }
    StackUp chain = Bumper.chain(truck.bumper().get().record(), truck.printer());
    Optional<Fault> fault = Bumper.fault(truck.bumper().get(), chain);
    fault.ifPresent(faults::add);
    return fault.isPresent() ? Optional.empty() : Optional.of(new Bumper(chain.solved(), chain.solved().spread("")));
  }
}
