package outrigger.generator.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import outrigger.generator.accessory.Part;
import outrigger.generator.layout.Arrangement;
import outrigger.generator.layout.Arranger;
import outrigger.generator.layout.LayoutText;
import outrigger.generator.layout.LeftOut;
import outrigger.generator.layout.Room;
import outrigger.generator.param.Fault;
import outrigger.generator.param.NearMiss;
import outrigger.generator.plan.Cargo;
import outrigger.generator.plan.Plan;

/** The rooms of a truck: trays that carry nothing of their own yet, and the space between the rails. */
final class Rooms {
  private static final int MOST = 12;
  private static final String ITEMS = "items";

  private final Plan plan;
  private final List<Room> rooms;

  Rooms(Plan plan, List<Draft> drafts) {
    this.plan = plan;
    this.rooms = new ArrayList<>();
    for (Draft draft : drafts) {
      draft.parts().stream().filter(part -> isEmptyTray(draft, part))
          .forEach(part -> rooms.add(tray(draft.name(part), part.stated())));
    }
    plan.cargo().betweenRails().ifPresent(rooms::add);
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

  Arrangement arrange() {
    if (plan.cargo().items().isEmpty()) {
      return new Arrangement(List.of(), List.of(), List.of());
    }
    List<Fault> faults = new ArrayList<>();
    plan.cargo().items().forEach(item -> faults.addAll(unknownRooms(item)));
    if (rooms.size() > MOST) {
      faults.add(Fault.of("item", rooms.size() + " trays and spaces are more than the " + MOST
          + " over which items can be shared out", "Give trays their items.", plan.cargo().items().get(0).where()));
    }
    FaultList.throwIfAny(faults);
    Arrangement arrangement = Arranger.arrange(plan.cargo().items().stream().map(Cargo.Wanted::item).toList(), rooms);
    FaultList.throwIfAny(arrangement.out().stream().map(this::fault).toList());
    return arrangement;
  }

  private List<Fault> unknownRooms(Cargo.Wanted wanted) {
    List<String> names = rooms.stream().map(Room::name).toList();
    return wanted.item().rooms().stream().filter(name -> !names.contains(name))
        .map(name -> Fault.of(wanted.item().name(), "there is no tray without items and no space called " + name + " ("
            + wanted.where().words() + ")", names.isEmpty() ? "Add a tray, or a table [between-rails]."
                : NearMiss.advice(name, names), wanted.where())).toList();
  }

  private Fault fault(LeftOut out) {
    Cargo.Wanted wanted = plan.cargo().items().stream().filter(w -> w.item().equals(out.item())).findFirst()
        .orElseThrow();
    return Fault.of("layout", LayoutText.out(out) + " (" + wanted.where().words() + ")",
        "Make a room larger by that much, let it go elsewhere, or leave it out.", wanted.where());
  }
}
