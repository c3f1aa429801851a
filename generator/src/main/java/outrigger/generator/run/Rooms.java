package outrigger.generator.run;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import outrigger.generator.accessory.Part;
import outrigger.generator.joint.Block;
import outrigger.generator.layout.Arrangement;
import outrigger.generator.layout.Arranger;
import outrigger.generator.layout.Laid;
import outrigger.generator.layout.LayoutText;
import outrigger.generator.layout.LeftOut;
import outrigger.generator.layout.Room;
import outrigger.generator.param.BadDimension;
import outrigger.generator.param.Fault;
import outrigger.generator.param.InputException;
import outrigger.generator.param.NearMiss;
import outrigger.generator.param.Texts;
import outrigger.generator.plan.Plan;
import outrigger.generator.scene.ScrewRoom;
import outrigger.generator.truck.BetweenParams;
import outrigger.generator.truck.ItemParams;
import outrigger.generator.truck.Placed;
import outrigger.generator.truck.Told;
import outrigger.generator.truck.Truck;
import outrigger.presets.Shelf;
import outrigger.shapes.num.Placement;

/** The rooms of a truck: trays that carry nothing of their own yet, and the space between the rails. */
final class Rooms {
  private static final int MOST = 12;
  /** Largest piece of an item that a turned part is told of, mm. */
  private static final double PIECE = 2;
  private static final double SQUARE = 1e-9;
  private static final String ITEMS = "items";
  private static final String ROOMS = "rooms";
  private static final String NAME = "name";

  private final List<Told<ItemParams>> items;
  private final List<Room> rooms = new ArrayList<>();
  private final boolean mayLackRooms;

  /** @throws InputException where the space between the rails cannot be */
  Rooms(Plan plan, List<Draft> drafts) {
    this.mayLackRooms = plan.mayLackRooms();
    this.items = plan.truck().map(Truck::items).orElse(List.of());
    for (Draft draft : drafts) {
      draft.parts().stream().filter(part -> isEmptyTray(draft, part))
          .forEach(part -> rooms.add(tray(draft.name(part), part.stated())));
    }
    plan.truck().ifPresent(truck -> truck.between().ifPresent(between -> rooms.add(room(between, truck, placed(plan, drafts),
        plan.shelf()))));
  }

  private static List<Placed> placed(Plan plan, List<Draft> drafts) {
    return plan.fit().map(fit -> new Placing(plan, fit, drafts).placed()).orElse(List.of());
  }

  /** The space between the rails, kept clear of the screws that stand into it. */
  private static Room room(Told<BetweenParams> between, Truck truck, List<Placed> parts, Shelf shelf) {
    try {
      BetweenParams p = between.record();
      Room room = p.room(truck.rails());
      for (Placed part : parts) {
        for (ScrewRoom screw : ScrewRoom.of(part, shelf)) {
          if (screw.high() > p.level() && screw.low() < p.level() + p.height()) {
            room = room.clearOf(screw.rear() - p.clearance(), screw.front() + p.clearance(), screw.right() - p.clearance(),
                screw.left() + p.clearance());
          }
        }
      }
      return room;
    } catch (BadDimension e) {
      throw new InputException(between.fault(e));
    }
  }

  private static boolean isEmptyTray(Draft draft, Part part) {
    return part.stated().containsKey("clear-length") && draft.values().stream()
        .anyMatch(value -> value.parameter().key().equals(ITEMS) && value.text().isEmpty());
  }

  /** In the tray's own axes. */
  private static Room tray(String name, Map<String, Double> stated) {
    return Room.rectangle(name, 0, stated.get("clear-y"), stated.get("clear-length"), stated.get("clear-width"),
        stated.get("clear-height"));
  }

  /** What was laid into a tray, with the room it asks for, in the tray's axes. */
  static List<Block> blocks(Arrangement layout, String name, Part part) {
    return layout.laid().stream().filter(laid -> laid.room().name().equals(name)).map(laid -> Block.on(laid.item().name(),
        new Block.Corner(laid.x(), laid.y(), part.stated().get("floor")), laid.length(), laid.width(),
        laid.item().height()).larger(laid.item().clearance())).toList();
  }

  /** What was laid between the rails, by the name of each part with a place, in its axes; none where nothing was. */
  static Map<String, List<Block>> between(Arrangement layout, Plan plan, List<Draft> drafts) {
    Map<String, List<Block>> blocks = new HashMap<>();
    if (layout.laid().stream().anyMatch(laid -> laid.room().name().equals(BetweenParams.KEY))) {
      double level = plan.truck().flatMap(Truck::between).orElseThrow().record().level();
      placed(plan, drafts).forEach(part -> blocks.put(part.name(), between(layout, part, level)));
    }
    return blocks;
  }

  private static List<Block> between(Arrangement layout, Placed part, double level) {
    return layout.laid().stream().filter(laid -> laid.room().name().equals(BetweenParams.KEY))
        .flatMap(laid -> pieces(laid, part.pose()).map(piece -> turnedBack(Block.on(laid.item().name(),
            new Block.Corner(piece.x(), piece.y(), level), piece.length(), piece.width(), laid.item().height()), part.pose())
            .larger(laid.item().clearance()))).toList();
  }

  private record Piece(double x, double y, double length, double width) {}

  /** Small pieces of an item where the part is turned to it, so that a box round each is hardly larger than the piece. */
  private static Stream<Piece> pieces(Laid laid, Placement pose) {
    boolean isSquare = Math.abs(pose.xx() * pose.xy()) < SQUARE;
    int along = isSquare ? 1 : (int) Math.ceil(laid.length() / PIECE);
    int across = isSquare ? 1 : (int) Math.ceil(laid.width() / PIECE);
    double length = laid.length() / along;
    double width = laid.width() / across;
    return IntStream.range(0, along * across).mapToObj(i -> new Piece(laid.x() - laid.length() / 2
        + (i % along + 0.5) * length, laid.y() - laid.width() / 2 + (i / along + 0.5) * width, length, width));
  }

  /** The box round a block in a part's axes. */
  private static Block turnedBack(Block item, Placement p) {
    List<Block.Corner> corners = new ArrayList<>();
    for (double x : List.of(item.low().x(), item.high().x())) {
      for (double y : List.of(item.low().y(), item.high().y())) {
        for (double z : List.of(item.low().z(), item.high().z())) {
          corners.add(back(p, x - p.tx(), y - p.ty(), z - p.tz()));
        }
      }
    }
    return Block.round(item.name(), corners);
  }

  /** A turned direction turned back: the transpose of a turn undoes it. */
  private static Block.Corner back(Placement p, double x, double y, double z) {
    return new Block.Corner(p.xx() * x + p.yx() * y + p.zx() * z, p.xy() * x + p.yy() * y + p.zy() * z,
        p.xz() * x + p.yz() * y + p.zz() * z);
  }

  Arrangement arrange() {
    if (items.isEmpty()) {
      return new Arrangement(List.of(), List.of(), List.of());
    }
    List<Fault> faults = new ArrayList<>();
    items.forEach(item -> faults.addAll(unknownRooms(item)));
    if (rooms.isEmpty() || rooms.size() > MOST) {
      faults.add(items.get(0).fault(ROOMS, rooms.isEmpty() ? "items have nowhere to go: there is no tray without items of "
          + "its own and no table [between-rails]" : rooms.size() + " trays and spaces are more than the " + MOST
          + " over which items can be shared out", rooms.isEmpty() ? "Add one." : "Give trays their items."));
    }
    FaultList.throwIfAny(faults);
    Arrangement arrangement = Arranger.arrange(items.stream().map(told -> told.record().item()).toList(), rooms);
    FaultList.throwIfAny(arrangement.out().stream().map(this::fault).toList());
    return arrangement;
  }

  /**
   * What is wrong with items whatever else is at fault: those that may only go where all rooms are known.
   *
   * @param missing names of parts that could not be drawn, which may be rooms
   * @param told faults already found; what is at fault itself is not laid out
   */
  List<Fault> certainFaults(List<String> missing, List<Fault> told) {
    List<Fault> faults = new ArrayList<>();
    List<String> names = rooms.stream().map(Room::name).toList();
    List<Told<ItemParams>> certain = new ArrayList<>();
    for (Told<ItemParams> item : items) {
      List<String> wanted = item.record().rooms();
      if (told.stream().anyMatch(fault -> fault.subject().equals(item.name()))) {
        continue;
      }
      if (wanted.stream().anyMatch(name -> !names.contains(name)) && !mayLackRooms && missing.isEmpty()) {
        faults.addAll(unknownRooms(item));
      } else if (wanted.isEmpty() ? !mayLackRooms && missing.isEmpty() : names.containsAll(wanted)) {
        certain.add(item);
      }
    }
    if (!certain.isEmpty() && !rooms.isEmpty() && rooms.size() <= MOST && certain.size() <= Arranger.MOST_ITEMS
        && certain.stream().map(item -> item.record().item()).distinct().count() == certain.size()) {
      Arranger.arrange(certain.stream().map(item -> item.record().item()).toList(), rooms).out()
          .forEach(out -> faults.add(fault(out)));
    }
    return faults;
  }

  private List<Fault> unknownRooms(Told<ItemParams> told) {
    List<String> names = rooms.stream().map(Room::name).toList();
    return names.isEmpty() ? List.of() : told.record().rooms().stream().filter(name -> !names.contains(name))
        .map(name -> told.fault(ROOMS, "there is no tray without items of its own and no space called "
            + Texts.quoted(name), NearMiss.advice(name, names))).toList();
  }

  private Fault fault(LeftOut out) {
    Told<ItemParams> told = items.stream().filter(item -> item.record().item().equals(out.item())).findFirst()
        .orElseThrow();
    return told.fault(NAME, LayoutText.out(out), "Make a room larger by that much, let it go elsewhere, or leave it out.");
  }
}
