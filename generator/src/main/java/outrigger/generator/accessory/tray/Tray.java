package outrigger.generator.accessory.tray;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import outrigger.generator.accessory.Accessory;
import outrigger.generator.accessory.Part;
import outrigger.generator.accessory.Words;
import outrigger.generator.accessory.feature.HeadSeat;
import outrigger.generator.accessory.feature.LayerNote;
import outrigger.generator.accessory.feature.ScrewHole;
import outrigger.generator.accessory.feature.ScrewJoint;
import outrigger.generator.accessory.feature.SidewaysHole;
import outrigger.generator.joint.Block;
import outrigger.generator.joint.Fixings;
import outrigger.generator.joint.Joint;
import outrigger.generator.joint.Member;
import outrigger.generator.joint.ScrewPlace;
import outrigger.presets.Shelf;
import outrigger.shapes.num.Axis;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Solid;

/** A tray for battery, speed controller and receiver, between the rails or outboard of one. */
public final class Tray implements Accessory<TrayParams> {
  /** How deep a tab's upper part reaches into the wall below, so that they are one, mm. */
  private static final double OVERLAP = 0.2;

  @Override
  public String kind() {
    return "electronics-tray";
  }

  @Override
  public String summary() {
    return "A tray between the rails or outboard of one, with screw tabs, strap slots, cable notches and a lightened "
        + "floor, that lays out what it must carry.";
  }

  @Override
  public Class<TrayParams> parameters() {
    return TrayParams.class;
  }

  @Override
  public List<Part> build(TrayParams p, Shelf shelf) {
    TrayFrame frame = frame(p, shelf);
    FloorPattern pattern = FloorPattern.of(frame);
    Fixings fixings = fixings(frame, shelf);
    ClearFloor clear = ClearFloor.of(frame, inward(frame, fixings));
    Layout layout = Layout.of(p.items(), clear);
    return List.of(new Part("", solid(frame, pattern), "Floor down, as it hangs.", notes(frame, pattern, clear, layout, fixings),
        stated(frame, clear, layout), heights(frame), fixings.clearOf(layout.blocks(p.floor(), true))));
  }

  /** What a tray carries of its own, as it lies, in the tray's axes. */
  public static List<Block> items(TrayParams p, Shelf shelf) {
    TrayFrame frame = frame(p, shelf);
    return Layout.of(p.items(), ClearFloor.of(frame, inward(frame, fixings(frame, shelf)))).blocks(p.floor(), false);
  }

  private static TrayFrame frame(TrayParams p, Shelf shelf) {
    ScrewHole hole = ScrewHole.of(p.screw(), p.fit(), HeadSeat.NONE, p.printer(), shelf);
    return TrayFrame.of(p, new SidewaysHole(hole, p.printer().overhang()));
  }

  private static Fixings fixings(TrayFrame frame, Shelf shelf) {
    return frame.tabs().isEmpty() ? Fixings.NONE : new Fixings(List.of(joint(frame, shelf)), List.of());
  }

  /** How far screws stand inward out of the tabs at least: their heads, or the ends of the shortest that do. */
  private static double inward(TrayFrame frame, Fixings fixings) {
    TrayParams p = frame.params();
    double most = 0;
    for (Joint joint : fixings.joints()) {
      double head = p.screw().isCountersunk() ? 0 : p.screw().headHeight();
      most = Math.max(most, p.fit().isThrough() ? head : joint.shortestSold() - p.railWeb() - frame.tabDepth());
    }
    return most;
  }

  private static Solid solid(TrayFrame frame, FloorPattern pattern) {
    TrayParams p = frame.params();
    Solid box = Prism.of(frame.outside(), 0, p.wallHeight());
    if (frame.tabTop() > p.wallHeight()) {
      box = box.join(Prism.of(Profile.union(frame.tabs()), p.wallHeight() - OVERLAP, frame.tabTop()));
    }
    List<Solid> cutters = new ArrayList<>();
    cutters.add(Prism.of(frame.inside(), p.floor(), p.wallHeight() + ScrewHole.OVERSHOOT));
    Profile through = pattern.all();
    if (!through.isEmpty()) {
      cutters.add(Prism.of(through, -ScrewHole.OVERSHOOT, p.floor() + OVERLAP));
    }
    cutters.addAll(new EndWalls(frame).cutters());
    cutters.addAll(screwHoles(frame));
    return box.cut(cutters);
  }

  /** Bored from the rail's side; what the screw runs into sits inside the tray, where it cannot be pulled through. */
  private static List<Solid> screwHoles(TrayFrame frame) {
    List<Solid> holes = new ArrayList<>();
    double from = -frame.reach();
    for (int side : frame.heldSides()) {
      for (double x : frame.tabPlaces()) {
        Solid right = frame.hole().cutter(from, from + frame.tabDepth(), "tab-thickness").move(x, 0, frame.holeZ());
        holes.add(side < 0 ? right : right.mirror(Axis.Y));
      }
    }
    return holes;
  }

  /** Tabs to rail; play on both sides of the tray may all come together on one. */
  private static Joint joint(TrayFrame frame, Shelf shelf) {
    TrayParams p = frame.params();
    double play = p.place() == TrayPlace.BETWEEN ? p.clearance() : 0;
    List<Member> others = play > 0 ? List.of(new Member("gap", 0, 2 * play), Member.of("web", p.railWeb()))
        : List.of(Member.of("web", p.railWeb()));
    List<ScrewPlace> contacts = new ArrayList<>();
    for (int side : frame.heldSides()) {
      for (double x : frame.tabPlaces()) {
        contacts.add(new ScrewPlace(x, side * frame.reach(), frame.holeZ(), 0, side, 0));
      }
    }
    return new ScrewJoint("tab to rail", frame.hole().hole(), "tab", frame.tabDepth(), others).at(contacts, shelf);
  }

  private static List<String> notes(TrayFrame frame, FloorPattern pattern, ClearFloor clear, Layout layout,
      Fixings fixings) {
    TrayParams p = frame.params();
    List<String> notes = new ArrayList<>();
    notes.add("Hangs " + frame.describe() + ", underside " + Words.mm(p.drop()) + " below the plane of the rails' tops"
        + (p.drop() > p.railHeight() ? " and " + Words.mm(p.drop() - p.railHeight()) + " below the rails" : "") + ".");
    notes.add("Inside " + Words.number(2 * frame.insideX()) + " x " + Words.mm(2 * frame.insideY())
        + "; clear of tabs, screws, slots and corners " + clear.words() + ", " + Words.mm(clear.height()) + " high.");
    notes.add("Floor " + LayerNote.of(p.floor(), p.printer()).text());
    if (p.tabs() > 0) {
      notes.add("Tab holes: " + frame.hole().hole().why() + ".");
    }
    double inward = Math.rint(inward(frame, fixings) * 1e3) / 1e3;
    if (inward > 0) {
      notes.add("Screws stand " + Words.mm(inward) + " inward out of the tabs at least; the clear floor keeps off that, and no "
          + "screw is chosen that reaches into an item.");
    }
    if (p.hexagon() > 0) {
      notes.add(pattern.hexagons().size() + " hexagons lighten the floor.");
    }
    notes.addAll(layout.notes());
    return notes;
  }

  private static Map<String, Double> heights(TrayFrame frame) {
    Map<String, Double> heights = new LinkedHashMap<>();
    heights.put("floor", frame.params().floor());
    heights.put("wall-height", frame.params().wallHeight());
    heights.put("height", Math.max(frame.params().wallHeight(), frame.tabTop()));
    return heights;
  }

  private static Map<String, Double> stated(TrayFrame frame, ClearFloor clear, Layout layout) {
    TrayParams p = frame.params();
    Map<String, Double> stated = new LinkedHashMap<>();
    stated.put("length", p.length());
    stated.put("outside-width", overallWidth(frame));
    stated.put("wall-height", p.wallHeight());
    stated.put("height", Math.max(p.wallHeight(), frame.tabTop()));
    stated.put("floor", p.floor());
    stated.put("inside-length", 2 * frame.insideX());
    stated.put("inside-width", 2 * frame.insideY());
    stated.put("clear-length", clear.length());
    stated.put("clear-width", clear.width());
    stated.put("clear-height", clear.height());
    stated.put("clear-y", clear.y());
    if (p.tabs() > 0) {
      stated.putAll(frame.hole().hole().stated(frame.tabDepth()));
      stated.put("hole-height", frame.holeZ());
    }
    for (Layout.Place place : layout.places()) {
      String name = place.item().name().replace(' ', '-');
      stated.put(name + "-x", place.x());
      stated.put(name + "-y", place.y());
    }
    // Sums of decimals carry noise that would show in files.
    stated.replaceAll((name, value) -> Math.rint(value * 1e6) / 1e6);
    return stated;
  }

  /** Over the tabs where there are any, else over the box. */
  private static double overallWidth(TrayFrame frame) {
    return frame.params().tabs() > 0 && frame.params().place() == TrayPlace.BETWEEN ? 2 * frame.reach()
        : 2 * frame.halfWidth();
  }
}
