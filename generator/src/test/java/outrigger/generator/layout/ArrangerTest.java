package outrigger.generator.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ArrangerTest {
  private static final long SEED = 20_261_125L;
  private static final double NOISE = 1e-9;
  /** Rails 40 apart at x = 0, 30 at x = 100: one millimetre closer for every ten. */
  private static final Room TAPER = new Room("frame",
      List.of(new Room.Section(0, 100, -20, 20, -15, 15)), 25);

  private static Item item(String name, double length, double width, double height) {
    return Item.of(name, length, width, height, 0);
  }

  private static Laid only(Arrangement arrangement) {
    assertEquals(List.of(), arrangement.out());
    return arrangement.laid().get(0);
  }

  /** At 20 mm from the wide end the walls are 38 apart: a thing 20 long may be 38 wide. At 38.5 they are 36.15 apart. */
  @Test
  void arrange_taper_goesToTheWideEnd() {
    Laid laid = only(Arranger.arrange(List.of(item("pack", 20, 38, 10)), List.of(TAPER)));
    assertEquals(10, laid.x(), NOISE);
    assertEquals(0, laid.y(), NOISE);
    assertEquals(0, laid.free().left(), 1e-3);
    assertEquals(80, laid.free().front(), NOISE);
    assertEquals(15, laid.free().above(), NOISE);
    LeftOut out = Arranger.arrange(List.of(item("pack", 38.5, 38.5, 10)), List.of(TAPER)).out().get(0);
    assertEquals(new Lack(0, 2.35, 0), out.wants().get(0).alone());
  }

  @Test
  void arrange_steppedRails_laysOnBothSidesOfTheStep() {
    Room room = new Room("frame", List.of(new Room.Section(0, 50, -15, 15, -15, 15),
        new Room.Section(50, 90, -20, 20, -20, 20)), 20);
    Arrangement both = Arranger.arrange(List.of(item("wide", 40, 40, 10), item("slim", 50, 30, 10)), List.of(room));
    assertEquals(List.of(), both.out());
    assertEquals(70, both.laid().get(0).x(), NOISE);
    assertEquals(25, both.laid().get(1).x(), NOISE);
    Arrangement out = Arranger.arrange(List.of(item("wide", 40, 40, 10), item("slim", 50.25, 30, 10)), List.of(room));
    assertEquals("slim", out.out().get(0).item().name());
    assertEquals(0.25, out.out().get(0).wants().get(0).moreLength(), NOISE);
  }

  /** Wide, narrow, wide: the waist takes nothing, both ends do. */
  @Test
  void arrange_waist_usesBothEnds() {
    Room room = new Room("frame", List.of(new Room.Section(0, 30, -20, 20, -20, 20),
        new Room.Section(30, 60, -5, 5, -5, 5), new Room.Section(60, 90, -20, 20, -20, 20)), 20);
    Arrangement two = Arranger.arrange(List.of(item("a", 30, 40, 10), item("b", 30, 40, 10)), List.of(room));
    assertEquals(List.of(), two.out());
    assertEquals(0, Arranger.arrange(List.of(item("rod", 90, 10, 5)), List.of(room)).out().size());
  }

  /** Rails that taper to a waist of 28: a mast through it reaches from -14 to -4, and 40 from an end the wall is at 16. */
  @Test
  void arrange_tapersToAWaist_laysThroughAndBothSides() {
    Room room = new Room("frame", List.of(new Room.Section(0, 60, -20, 20, -14, 14), new Room.Section(60, 120, -14, 14, -20,
        20)), 20);
    List<Item> three = List.of(item("mast", 120, 10, 10), item("front", 40, 20, 10), item("rear", 40, 20, 10));
    assertEquals(List.of(), Arranger.arrange(three, List.of(room)).out());
    Arrangement out = Arranger.arrange(List.of(three.get(0), three.get(1), item("rear", 40, 21, 10)), List.of(room));
    assertEquals(1, out.out().size());
    assertEquals(1, out.out().get(0).wants().get(0).moreWidth(), NOISE);
  }

  /** A screw that stands in from one side: only there the wall comes in, the rail's own slope goes on beside it. */
  @Test
  void clearOf_onATaper_comesInWhereTheScrewStandsOnly() {
    Room room = TAPER.clearOf(40, 60, 16, 30);
    assertEquals(16, room.left(40.1, 59.9), NOISE);
    assertEquals(18.1, room.left(10, 38), NOISE);
    assertEquals(15.5, room.left(60, 90), NOISE);
    assertEquals(-17, room.right(45, 60), 0.51);
  }

  @Test
  void arrange_twoRooms_sharesOutAndKeepsToWhereItMayGo() {
    Room front = Room.rectangle("front", 100, 0, 40, 30, 20);
    Room rear = Room.rectangle("rear", 0, 0, 60, 30, 20);
    Item battery = item("battery", 55, 28, 16);
    Item controller = item("controller", 30, 20, 8);
    Item receiver = new Item("receiver", 22, 14, 8, 0.5, CableSide.NONE, 0, List.of("rear"));
    Arrangement all = Arranger.arrange(List.of(battery, controller), List.of(front, rear));
    assertEquals("rear", all.laid().get(0).room().name());
    assertEquals("front", all.laid().get(1).room().name());
    Arrangement crowded = Arranger.arrange(List.of(battery, controller, receiver), List.of(front, rear));
    assertEquals(2, crowded.laid().size());
    assertEquals(1, crowded.out().size());
    assertEquals(1, Arranger.arrange(List.of(receiver), List.of(front, rear)).fits().size());
  }

  @Test
  void arrange_tooHigh_saysByHowMuch() {
    Arrangement out = Arranger.arrange(List.of(item("tall", 10, 10, 27.5)), List.of(TAPER));
    assertEquals(new Lack(0, 0, 2.5), out.out().get(0).wants().get(0).alone());
  }

  /** 10 of cable room at its front: turned crosswise they leave to the left, and the body lies off the middle. */
  @Test
  void arrange_cables_keepTheirRoomAndTurnWithTheItem() {
    Item item = new Item("controller", 30, 20, 8, 1, CableSide.FRONT, 10, List.of());
    Laid along = only(Arranger.arrange(List.of(item), List.of(Room.rectangle("tray", 0, 0, 41, 22, 20))));
    assertEquals(CableSide.FRONT, along.cables());
    assertEquals(10, along.free().front(), NOISE);
    assertEquals(1, along.free().rear(), NOISE);
    Laid across = only(Arranger.arrange(List.of(item), List.of(Room.rectangle("tray", 0, 0, 22, 41, 20))));
    assertEquals(CableSide.LEFT, across.cables());
    assertEquals(10, across.free().left(), NOISE);
    assertEquals(1, across.free().right(), NOISE);
    assertEquals(-4.5, across.y(), NOISE);
    assertEquals(1, Arranger.arrange(List.of(item), List.of(Room.rectangle("tray", 0, 0, 40, 22, 20))).out().size());
  }

  /** Whatever is laid keeps within the walls, by the walls' own equation, and off its neighbours. */
  @Test
  void arrange_randomTapers_keepWallsAndDistances() {
    Random random = new Random(SEED);
    int laid = 0;
    for (int round = 0; round < 200; round++) {
      double rear = 15 + random.nextInt(30);
      double front = 15 + random.nextInt(30);
      Room room = new Room("r", List.of(new Room.Section(0, 90, -rear / 2, rear / 2, -front / 2, front / 2)), 20);
      List<Item> items = new ArrayList<>();
      for (int i = 0; i < 1 + random.nextInt(4); i++) {
        items.add(Item.of("i" + i, 5 + random.nextInt(40), 5 + random.nextInt(25), 10, random.nextInt(3)));
      }
      Arrangement arrangement = Arranger.arrange(items, List.of(room));
      for (Laid one : arrangement.laid()) {
        String where = "seed " + SEED + " round " + round + " " + one;
        double widest = Math.abs(one.y()) + one.width() / 2 + one.item().clearance();
        for (double x : new double[] {one.x() - one.length() / 2 - one.item().clearance(),
            one.x() + one.length() / 2 + one.item().clearance()}) {
          assertTrue(widest <= (rear + (front - rear) * x / 90) / 2 + NOISE && x >= -NOISE && x <= 90 + NOISE, where);
        }
        for (Laid other : arrangement.laid()) {
          double clear = one.item().clearance() + other.item().clearance();
          assertTrue(one == other || Math.abs(one.x() - other.x()) >= (one.length() + other.length()) / 2 + clear - 1e-6
              || Math.abs(one.y() - other.y()) >= (one.width() + other.width()) / 2 + clear - 1e-6, where);
        }
        laid++;
      }
    }
    assertTrue(laid > 200, "only " + laid);
  }

  /** Screws end between micrometres: whatever is laid beside them keeps within the walls by the room's own equation. */
  @Test
  void lay_roomsWithScrews_keepsWithinTheirWalls() {
    Random random = new Random(SEED);
    int laid = 0;
    for (int round = 0; round < 400; round++) {
      double wide = 5 + random.nextDouble() * 20;
      double waist = 5 + random.nextDouble() * 20;
      double x = -random.nextDouble() * 30;
      Room room = new Room("r", List.of(new Room.Section(-100, x, -wide, wide, -waist, waist),
          new Room.Section(x, 50, -waist, waist, -wide, wide)), 10);
      for (int i = 0; i < 6; i++) {
        double rear = -110 + random.nextDouble() * 150;
        double y = (random.nextDouble() - 0.5) * 50;
        room = room.clearOf(rear, rear + random.nextDouble() * 12, y - random.nextDouble() * 8, y + random.nextDouble() * 8);
      }
      List<Packing.Box> boxes = new ArrayList<>();
      for (int i = 0; i < 1 + random.nextInt(4); i++) {
        boxes.add(new Packing.Box(5000 + random.nextInt(40000), 5000 + random.nextInt(20000)));
      }
      for (Walls.Place place : new Walls(room).lay(boxes).orElse(List.of())) {
        double from = place.rear() + NOISE;
        double to = place.front() - NOISE;
        assertTrue(place.right() >= room.right(from, to) - 1e-6 && place.left() <= room.left(from, to) + 1e-6,
            "seed " + SEED + " round " + round + " " + place + " in " + room);
        laid++;
      }
    }
    assertTrue(laid > 100, "only " + laid);
  }

  /** The most items that any sharing out over two rectangles lets lie, each sharing tried. */
  @Test
  void arrange_randomRooms_laysAsManyAsAnySharing() {
    Random random = new Random(SEED);
    for (int round = 0; round < 150; round++) {
      List<Item> items = new ArrayList<>();
      for (int i = 0; i < 2 + random.nextInt(4); i++) {
        items.add(item("i" + i, 5 + random.nextInt(30), 5 + random.nextInt(20), 10));
      }
      List<Room> rooms = List.of(Room.rectangle("a", 0, 0, 20 + random.nextInt(30), 15 + random.nextInt(20), 20),
          Room.rectangle("b", 0, 0, 20 + random.nextInt(30), 15 + random.nextInt(20), 20));
      int most = 0;
      for (int way = 0; way < Math.pow(3, items.size()); way++) {
        most = Math.max(most, laid(items, rooms, way));
      }
      assertEquals(most, Arranger.arrange(items, rooms).laid().size(), "seed " + SEED + " round " + round + " " + items);
    }
  }

  /** Items laid where digit i of the way says the room of item i, 2 for none; 0 where one room does not take its own. */
  private static int laid(List<Item> items, List<Room> rooms, int way) {
    int count = 0;
    for (int room = 0; room < rooms.size(); room++) {
      List<Packing.Box> boxes = new ArrayList<>();
      int digits = way;
      for (Item item : items) {
        if (digits % 3 == room) {
          boxes.add(item.box());
        }
        digits /= 3;
      }
      Room r = rooms.get(room);
      if (Packing.lay(boxes, Micro.down(r.length()), Micro.down(r.widest())).isEmpty()) {
        return 0;
      }
      count += boxes.size();
    }
    return count;
  }
}
