package outrigger.generator.magnet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import outrigger.generator.param.BadDimension;
import outrigger.generator.param.Texts;
import outrigger.generator.param.Unit;
import outrigger.presets.DiscMagnet;
import outrigger.presets.MagnetGrade;
import outrigger.presets.Shelf;

/** What a mount holds, worked out: the printed gap, the pull with its spread, and what the body asks of it. */
public final class Hold {
  private static final double MILLITESLA = 1e-3;
  private static final double ALIKE = 1e-6;

  private final HoldParams p;
  private final MagnetGrade grade;
  private final MagnetGrade bodyGrade;
  private final Disc disc;
  private final Strength strength;
  private final Coupling coupling;
  private final Pull pull;
  private final Gap gap;

  private Hold(HoldParams p, MagnetGrade grade, MagnetGrade bodyGrade) {
    this.p = p;
    this.grade = grade;
    this.bodyGrade = bodyGrade;
    this.disc = new Disc(p.magnet().diameter(), p.stack() * p.magnet().thickness());
    this.strength = Strength.of(grade, p.temperature());
    this.coupling = p.facing() == Facing.STEEL ? Coupling.steel(disc)
        : Coupling.pair(disc, new Disc(p.bodyMagnet().diameter(), p.bodyStack() * p.bodyMagnet().thickness()));
    this.pull = new Pull(coupling, strength, Strength.of(bodyGrade, p.temperature()));
    this.gap = Gap.of(p);
  }

  /**
   * Works a hold out.
   *
   * @param shelf where grades are looked up
   * @throws BadDimension if a grade is not on the shelf, or too hot
   */
  public static Hold of(HoldParams p, Shelf shelf) {
    MagnetGrade grade = grade(p.grade(), p.magnet(), "grade", shelf);
    boolean alike = p.facing() == Facing.STEEL
        || p.facingMagnet().named().isEmpty() && p.facingGrade().named().isEmpty();
    MagnetGrade bodyGrade = alike ? grade : grade(p.facingGrade(), p.bodyMagnet(), "facing-grade", shelf);
    refuseHeat(p, grade);
    refuseHeat(p, bodyGrade);
    return new Hold(p, grade, bodyGrade);
  }

  private static MagnetGrade grade(Grade given, DiscMagnet magnet, String key, Shelf shelf) {
    return given.named().or(() -> shelf.find(MagnetGrade.class, magnet.grade())).orElseThrow(() ->
        new BadDimension(key, "the magnet " + magnet.name() + " is of grade " + Texts.quoted(magnet.grade())
            + ", which the table magnet-grades has no row for",
            "Give " + key + ", or add that grade to a table file of your own."));
  }

  private static void refuseHeat(HoldParams p, MagnetGrade grade) {
    if (p.temperature() > grade.maximumTemperature()) {
      throw new BadDimension("temperature", "temperature is " + celsius(p.temperature()) + ", but magnets of grade "
          + grade.name() + " lose strength for good above " + celsius(grade.maximumTemperature()),
          "Keep them cooler, or take a grade that stands it.");
    }
  }

  private static String celsius(double value) {
    return Texts.number(value, Unit.CELSIUS);
  }

  /** What was given. */
  public HoldParams given() {
    return p;
  }

  /** Grade of the magnet in the mount. */
  public MagnetGrade grade() {
    return grade;
  }

  /** Grade of the magnet in the body; that in the mount where it faces steel. */
  public MagnetGrade bodyGrade() {
    return bodyGrade;
  }

  /** What lies between the faces. */
  public Gap gap() {
    return gap;
  }

  /** The pull at any gap. */
  public Pull pull() {
    return pull;
  }

  /** The pull at the printed gap, N. */
  public Force force() {
    return pull.at(gap.nominal());
  }

  /** The pull over what grade and layers can do to it, N. */
  public Force reach() {
    return pull.over(gap);
  }

  /** What is counted on, N: the weakest pull, derated. */
  public double counted() {
    return p.derating() * reach().least();
  }

  /** What the body asks. */
  public Load load() {
    return Load.of(p);
  }

  /** How many times what is needed can be counted on. */
  public double margin() {
    return counted() / load().each();
  }

  /** Whether the body stays on; steel too thin or too narrow for the sum is never trusted. */
  public boolean holds() {
    return margin() >= 1 && isSteelEnough();
  }

  /** Mounts of this kind that would do. */
  public long mountsThatDo() {
    return load().mountsFor(counted());
  }

  /** What the steel must be; empty where it faces a magnet. */
  public Optional<Steel> steel() {
    return p.facing() == Facing.STEEL ? Optional.of(Steel.needed(disc, strength.middle(), gap.least()))
        : Optional.empty();
  }

  /** Whether the steel given is thick and wide enough for the pull to be what is told. */
  public boolean isSteelEnough() {
    return steel().map(s -> s.isMetBy(p.steelThickness(), p.steelWidth())).orElse(true);
  }

  /** Sideways hold of a mount. The weakest gap for friction is that of the pull; centring is taken at the widest. */
  public Aside aside() {
    return new Aside(p.friction() * counted(),
        Math.max(0, p.derating() * pull.centring(gap.greatest(), p.offset()).least()),
        pull.aside(gap.nominal(), p.offset()).middle(), load().each());
  }

  /** What a hand feels that lifts the body straight off all mounts at once, N: ordinary, and at the most. */
  public Force hand() {
    Force reach = reach();
    double weight = load().weight();
    return new Force(weight + p.mounts() * reach.least(), weight + p.mounts() * reach.middle(),
        weight + p.mounts() * reach.greatest());
  }

  /** Whether force rises somewhere as the gap opens up to the end of the table. */
  public boolean risesSomewhere() {
    List<Double> gaps = tableGaps();
    for (int i = 1; i < gaps.size(); i++) {
      if (coupling.pull(gaps.get(i)) > coupling.pull(gaps.get(i - 1))) {
        return true;
      }
    }
    return false;
  }

  /** Gaps of the table, rising: even steps from contact, and the printed gap among them where it lies in reach. */
  public List<Double> tableGaps() {
    TreeSet<Double> gaps = new TreeSet<>();
    for (int i = 0; i <= p.steps(); i++) {
      gaps.add(p.to() * i / p.steps());
    }
    // A step that differs from the printed gap by rounding alone gives way to it.
    if (gap.nominal() <= p.to() + ALIKE) {
      gaps.removeIf(step -> Math.abs(step - gap.nominal()) < ALIKE);
      gaps.add(gap.nominal());
    }
    return new ArrayList<>(gaps);
  }

  /** Distance on the axis at which the strongest magnet in the mount still has 1 mT, mm from its face. */
  public double oneMillitesla() {
    return new AxisField(disc).reach(MILLITESLA / strength.greatest());
  }

  /** Flux index of one disc of the mount, as it may come loose, for the strongest of its grade; kG^2 mm^2. */
  public double fluxIndex() {
    return new AxisField(new Disc(p.magnet().diameter(), p.magnet().thickness())).fluxIndex(strength.greatest());
  }
}
