package outrigger.generator.fit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import outrigger.generator.accessory.feature.Pole;
import outrigger.generator.stack.Drawer;
import outrigger.generator.truck.MountParams;
import outrigger.generator.truck.Point;
import outrigger.generator.truck.Told;
import outrigger.generator.truck.Truck;

/**
 * A truck, solved.
 *
 * @param truck as measured
 * @param sites every mount on every rail, in the order of the plan, left before right
 * @param centre the body's centre of gravity, as given or assumed
 * @param needs what each site must hold
 * @param choices magnets of each site's station
 * @param heights of each site's station
 * @param level how the body sits
 * @param poles which pole looks up
 * @param bumper the bumper's chain, if there is one
 * @param drawer what shims are made from
 */
public record TruckFit(Truck truck, List<Site> sites, Point centre, Map<Site, Need> needs, Map<Site, Choice> choices,
    Map<Site, Height> heights, Level level, Poles poles, Optional<Bumper> bumper, Drawer drawer) {
  public TruckFit {
    sites = List.copyOf(sites);
    needs = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(needs));
    choices = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(choices));
    heights = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(heights));
  }

  /** What brings mounts in that stand low, in the order of the plan. */
  public List<Shim> shims() {
    return Shim.of(this);
  }

  /** The pole that looks up at a site. */
  public Pole pole(Site site) {
    return poles.up().get(site);
  }

  /** What is engraved on a site's pad: its number in the order of the plan, left before right. */
  public String mark(Site site) {
    return String.valueOf(sites.indexOf(site) + 1);
  }

  /** The sites of a station. */
  public List<Site> at(Told<MountParams> mount) {
    return sites.stream().filter(site -> site.mount().equals(mount)).toList();
  }
}
