package outrigger.generator.plan;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import outrigger.generator.accessory.Words;
import outrigger.generator.layout.Arranger;
import outrigger.generator.param.Fault;
import outrigger.generator.param.Origin;
import outrigger.generator.truck.ItemParams;
import outrigger.generator.truck.MountParams;
import outrigger.generator.truck.RailAt;
import outrigger.generator.truck.RailParams;
import outrigger.generator.truck.Told;
import outrigger.generator.truck.Truck;

/** What does not fit between the tables of a truck. */
final class TruckChecks {
  private final List<Fault> faults;

  TruckChecks(List<Fault> faults) {
    this.faults = faults;
  }

  void check(List<Told<RailParams>> rail, List<Told<RailAt>> places, List<Told<MountParams>> mounts) {
    rail.forEach(rails -> {
      sections(rails, places);
      mounts.forEach(mount -> onRail(rails.record(), mount));
    });
    names(mounts, MountParams::name);
    mounts.forEach(mount -> fileName(mount));
  }

  private void sections(Told<RailParams> rails, List<Told<RailAt>> places) {
    Map<Double, Origin> taken = new HashMap<>();
    for (Told<RailAt> place : places) {
      double x = place.record().x();
      if (!(x < rails.record().front() && x >= rails.record().rear())) {
        faults.add(place.fault("x", "a section at x " + Words.mm(x) + " does not lie behind the front end at "
            + Words.mm(rails.record().front()) + " and before the rear end at " + Words.mm(rails.record().rear()),
            "Use an x between them, or make the rails longer."));
      }
      Origin first = taken.putIfAbsent(x, place.where());
      if (first != null) {
        faults.add(place.fault("x", "two sections lie at x " + Words.mm(x) + "; the first at " + first.words(),
            "Leave one out."));
      }
      if (place.record().spacing() > 0 && place.record().spacing() < 8) {
        faults.add(place.fault("spacing", "spacing is " + Words.mm(place.record().spacing())
            + ", below the minimum of 8 mm", "Use 8 mm or more, or 0 for that ahead."));
      }
      if (place.record().height() > 0 && place.record().height() < 3) {
        faults.add(place.fault("height", "height is " + Words.mm(place.record().height())
            + ", below the minimum of 3 mm", "Use 3 mm or more, or 0 for that ahead."));
      }
    }
  }

  private void onRail(RailParams rail, Told<MountParams> mount) {
    double x = mount.record().x();
    if (x > rail.front() || x < rail.rear()) {
      double nearest = Math.max(rail.rear(), Math.min(rail.front(), x));
      faults.add(mount.fault("x", "x is " + Words.mm(x) + ", but the rails reach from " + Words.mm(rail.rear()) + " to "
          + Words.mm(rail.front()), "Use " + Words.mm(nearest) + " at most, or make the rails longer."));
    }
  }

  /** Items have names of their own, and there are not too many to share out. */
  void items(List<Told<ItemParams>> items) {
    names(items, ItemParams::name);
    if (items.size() > Arranger.MOST_ITEMS) {
      faults.add(items.get(Arranger.MOST_ITEMS).fault("name", items.size() + " items are more than the "
          + Arranger.MOST_ITEMS + " that can be laid out", "Name those of one tray as items of that part."));
    }
  }

  /** Items larger than the truck, told beside what else is wrong with it; smaller ones are laid out later. */
  void larger(Truck truck) {
    double rails = truck.rails().params().length();
    truck.items().forEach(item -> {
      ItemParams p = item.record();
      boolean isLong = p.length() >= p.width();
      double side = Math.max(p.length(), p.width());
      if (side > rails) {
        faults.add(item.fault(isLong ? "length" : "width", p.name() + " is " + Words.mm(side) + (isLong ? " long" : " wide")
            + ", " + Words.mm(side - rails) + " more than the rails, so it is larger than the truck",
            "At most " + Words.mm(rails) + " can lie on it; measure again, or leave it out."));
      }
    });
  }

  private <R extends Record> void names(List<Told<R>> all, Function<R, String> name) {
    Map<String, Origin> taken = new HashMap<>();
    for (Told<R> one : all) {
      String called = name.apply(one.record());
      Origin first = taken.putIfAbsent(called.toLowerCase(Locale.ROOT), one.where());
      if (first != null) {
        faults.add(one.fault("name", "two are called " + called + "; the first at " + first.words(),
            "Give each a name of its own."));
      }
    }
  }

  private void fileName(Told<MountParams> mount) {
    Names.fault(mount.record().name(), mount.where("name")).ifPresent(faults::add);
  }
}
