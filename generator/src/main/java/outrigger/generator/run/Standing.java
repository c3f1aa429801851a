package outrigger.generator.run;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import outrigger.generator.clash.Clash;
import outrigger.generator.clash.ClashReport;
import outrigger.generator.clash.Near;
import outrigger.generator.clash.Overlap;
import outrigger.generator.clash.Reach;
import outrigger.generator.clash.Spot;
import outrigger.generator.drive.Drive;
import outrigger.generator.load.Balance;
import outrigger.generator.load.Bent;
import outrigger.generator.scene.FootGap;
import outrigger.generator.scene.RailHole;
import outrigger.generator.scene.RailHoles;

/**
 * How the finished truck stands: what clashes, what it weighs, what its roots bear, how it drives.
 *
 * @param clashes of everything with a place
 * @param balance masses and axle loads
 * @param weightless names of items whose mass nobody told
 * @param bent the roots of posts and tabs under the body's jolt
 * @param drive where the plan tells of motor and steering
 * @param drilling holes that the rails need
 * @param bridges parts that stand off a rail which bends under them
 * @param unplaced names of parts whose place the plan does not say: neither clashes nor weighed
 * @param scale of the truck, 24 for 1:24
 */
public record Standing(ClashReport clashes, Balance balance, List<String> weightless, List<Bent> bent, Optional<Drive> drive,
    List<RailHole> drilling, List<FootGap> bridges, List<String> unplaced,
    double scale) {
  private static final double SAFE = 2;

  /** What is assumed when roots are bent, and how far to trust it. */
  static final String CAUTION = "Safety factors are estimates: one jolt at a time, shared evenly by the mounts and tabs, "
      + "solid prints, half of the least yield strength between layers; no notches, age, heat or fatigue. Test before you "
      + "trust them.";

  public Standing {
    weightless = List.copyOf(weightless);
    bent = List.copyOf(bent);
    drilling = List.copyOf(drilling);
    bridges = List.copyOf(bridges);
    unplaced = List.copyOf(unplaced);
  }

  /** What clashes and what tools reach, one sentence a line. */
  public List<String> places() {
    List<String> lines = new ArrayList<>(clashes.lines());
    if (!unplaced.isEmpty()) {
      lines.add("Without a place on the truck, so not looked at: " + String.join(", ", unplaced) + ".");
    }
    return lines;
  }

  /** Which holes of the rails the screws take, where to drill, and what stands off a bend, one sentence a part. */
  public List<String> rails() {
    List<String> lines = new ArrayList<>(RailHoles.lines(drilling));
    bridges.forEach(gap -> lines.add(gap.words()));
    return lines;
  }

  /** What it weighs and where it tips, then what posts and tabs bear, one sentence a line. */
  public List<String> loads() {
    List<String> lines = new ArrayList<>(balance.lines());
    if (!weightless.isEmpty()) {
      lines.add("Not weighed, as no mass is told: " + String.join(", ", weightless) + ". Give it in [[item]], or count it "
          + "into chassis-mass, as screws and magnets are.");
    }
    bent.forEach(one -> lines.add((one.factor() < SAFE ? "Weak: " : "") + one.words()));
    return lines;
  }

  /** How it drives and turns, one sentence a line; none where the plan does not tell. */
  public List<String> driving() {
    return drive.map(one -> one.lines(scale)).orElse(List.of());
  }

  /** How far to trust what it bears. */
  public List<String> cautions() {
    return bent.isEmpty() ? List.of() : List.of(CAUTION);
  }

  /** All of it, as members of an object; mm, g, N, MPa, degrees. */
  void write(Json json) throws IOException {
    json.object("clashes", this::clashes);
    json.objects("rail-holes", drilling, Standing::hole);
    json.objects("off-rail", bridges, (one, gap) -> one.put("part", gap.part()).put("mm", gap.off().mm())
        .put("x-mm", gap.off().x()));
    json.texts("unplaced", unplaced);
    json.object("balance", this::balance);
    json.texts("not-weighed", weightless);
    json.objects("roots", bent, Standing::bent);
    if (!bent.isEmpty()) {
      json.put("roots-caution", CAUTION);
    }
    if (drive.isPresent()) {
      json.object("drive", one -> drive(one, drive.get()));
    }
  }

  private static void hole(Json json, RailHole hole) throws IOException {
    json.put("part", hole.part()).put("rail", hole.left() ? "left" : "right").put("screw", hole.screw())
        .put("diameter-mm", hole.diameter()).put("x-mm", hole.x()).put("drop-mm", hole.drop()).put("drill", !hole.isThere());
    if (hole.nearest().exists()) {
      json.put("nearest-row", hole.nearest().row()).put("nearest-number", (long) hole.nearest().number())
          .put("ahead-mm", hole.nearest().ahead()).put("below-mm", hole.nearest().below());
    }
  }

  private void clashes(Json json) throws IOException {
    json.put("clear", clashes.isClear()).put("things", (long) clashes.elements()).put("pairs", (long) clashes.pairs());
    json.objects("common", clashes.clashes(), Standing::clash);
    json.put("near-within-mm", clashes.within()).objects("near", clashes.near(), Standing::near);
    json.objects("tools", clashes.reaches(), Standing::reach);
  }

  private static void clash(Json json, Clash clash) throws IOException {
    json.put("first", clash.first().name()).put("second", clash.second().name()).put("volume-mm3", clash.volume());
    json.objects("places", clash.overlaps(), Standing::overlap);
  }

  private static void overlap(Json json, Overlap overlap) throws IOException {
    json.put("volume-mm3", overlap.volume());
    spot(json, "centre-mm", overlap.centre());
    spot(json, "size-mm", overlap.size());
  }

  private static void spot(Json json, String name, Spot spot) throws IOException {
    json.numbers(name, spot.x(), spot.y(), spot.z());
  }

  private static void near(Json json, Near near) throws IOException {
    json.put("first", near.first().name()).put("second", near.second().name()).put("distance-mm", near.distance())
        .put("seat", near.isSeat());
    spot(json, "at-mm", near.at());
  }

  private static void reach(Json json, Reach reach) throws IOException {
    json.put("screw", reach.way().screw()).put("free-mm", reach.free()).put("straight-mm", reach.way().length())
        .put("bent-key-mm", reach.way().bent()).put("open", reach.isOpen()).texts("in-the-way", reach.blockers());
  }

  private void balance(Json json) throws IOException {
    json.put("mass-g", balance.total());
    json.numbers("centre-mm", balance.centre().x(), balance.centre().y(), balance.centre().z());
    json.put("front-g", balance.front()).put("rear-g", balance.rear()).put("tips-sideways-degrees", balance.sideTip())
        .put("tips-nose-up-degrees", balance.rearTip()).put("tips-nose-down-degrees", balance.frontTip());
    json.objects("masses", balance.masses(), (one, mass) -> one.put("name", mass.name()).put("g", mass.grams())
        .numbers("at-mm", mass.at().x(), mass.at().y(), mass.at().z()));
  }

  private static void bent(Json json, Bent bent) throws IOException {
    json.put("part", bent.part()).put("root", bent.root()).put("jolt", bent.jolt()).put("force-n", bent.force())
        .put("height-mm", bent.height()).put("stress-mpa", bent.stress())
        .put("strength-between-layers-mpa", bent.strength().across()).put("safety-factor", bent.factor());
  }

  private static void drive(Json json, Drive drive) throws IOException {
    json.put("free-speed-m-s", drive.freeSpeed()).put("level-speed-m-s", drive.levelSpeed())
        .put("slope-speed-m-s", drive.slopeSpeed()).put("stall-push-n", drive.pull()).put("grip-n", drive.grip())
        .put("motor-stalls-degrees", drive.motorSlope()).put("tyres-slip-degrees", drive.tyreSlope())
        .put("motor-trailer-g", drive.motorTrailer()).put("tyre-trailer-g", drive.tyreTrailer())
        .put("gives-up-first", drive.motorGivesUpFirst() ? "motor" : "tyres")
        .put("turning-circle-mm", drive.turning().circle()).put("outer-wheel-degrees", drive.turning().outerAngle());
  }
}
