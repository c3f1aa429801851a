package outrigger.generator.clash;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import outrigger.shapes.mesh.Mesher;
import outrigger.shapes.num.Grid;

/**
 * Looks at every pair of elements that matters, cheapest question first: boxes, then whether either surface enters the
 * boxes' common room, then the facets' distance, and only of surfaces that meet the common part by the kernel.
 */
public final class ClashCheck {
  /** Surfaces nearer than this may meet once rounded to the grid, mm. */
  private static final double MEETING = 8 * Grid.STEP;

  private final List<Shaped> shaped = new ArrayList<>();
  private final double within;
  private final List<Clash> clashes = new ArrayList<>();
  private final List<Near> near = new ArrayList<>();
  private int pairs;

  private record Shaped(Element element, Facets facets) {}

  private ClashCheck(double within) {
    this.within = within;
  }

  /**
   * Checks everything against everything.
   *
   * @param elements what has a place on the truck, names all different
   * @param ways of tools to the heads among the elements
   * @param within pairs further apart than this are not listed, mm, 0 or more
   */
  public static ClashReport check(List<Element> elements, List<ToolWay> ways, double within) {
    return check(elements, ways, within, Map.of());
  }

  /**
   * The same, with meshes of some elements by name that need not be made again.
   *
   * @param meshes of the solids of these elements
   */
  public static ClashReport check(List<Element> elements, List<ToolWay> ways, double within, Map<String, Meshed> meshes) {
    requireNames(elements);
    ClashCheck check = new ClashCheck(within);
    elements.parallelStream().map(e -> new Shaped(e, facets(e, meshes))).toList()
        .forEach(check.shaped::add);
    for (int i = 0; i < check.shaped.size(); i++) {
      for (int j = i + 1; j < check.shaped.size(); j++) {
        check.pair(check.shaped.get(i), check.shaped.get(j));
      }
    }
    List<Reach> reaches = ways.stream().map(check::reach).toList();
    check.near.sort(Comparator.comparingDouble(Near::distance));
    return new ClashReport(check.clashes, check.near, reaches, elements.size() + ways.size(), check.pairs, within);
  }

  private static Facets facets(Element element, Map<String, Meshed> meshes) {
    Meshed made = meshes.get(element.name());
    return made == null ? Facets.of(Mesher.mesh(element.solid())) : Facets.of(made.mesh(), made.pose());
  }

  private static void requireNames(List<Element> elements) {
    Set<String> names = new HashSet<>();
    for (Element element : elements) {
      if (!names.add(element.name())) {
        throw new IllegalArgumentException("two elements are called " + element.name());
      }
    }
  }

  private void pair(Shaped a, Shaped b) {
    if (!Pairs.matter(a.element, b.element)) {
      return;
    }
    pairs++;
    if (a.facets.bounds().distance(b.facets.bounds()) > within) {
      return;
    }
    Optional<Distance.Nearest> nearest = Distance.between(a.facets, b.facets, Math.max(within, MEETING));
    if (mayOverlap(a, b, nearest)) {
      Optional<CommonPart> common = CommonPart.of(a.element.solid(), b.element.solid());
      if (common.isPresent() && common.get().volume() > 0) {
        clashes.add(new Clash(a.element, b.element, common.get().volume(), common.get().overlaps()));
        return;
      }
    }
    nearest.ifPresent(n -> near.add(new Near(a.element, b.element, n.distance() <= MEETING ? 0 : n.distance(), n.at(),
        Pairs.mayTouch(a.element, b.element))));
  }

  private static boolean mayOverlap(Shaped a, Shaped b, Optional<Distance.Nearest> nearest) {
    Bounds room = a.facets.bounds().common(b.facets.bounds()).grown(-MEETING);
    if (room.thickness() <= 0) {
      return false;
    }
    if (isOutOf(a.facets, room) || isOutOf(b.facets, room)) {
      return false;
    }
    return nearest.isPresent() && nearest.get().distance() <= MEETING
        || a.facets.holdShellOf(b.facets) || b.facets.holdShellOf(a.facets);
  }

  /** Whether a solid leaves a room empty, as may be told where its surface does not enter it. */
  private static boolean isOutOf(Facets facets, Bounds room) {
    Spot middle = room.middle();
    return !facets.reach(room) && !facets.hold(middle.x(), middle.y(), middle.z());
  }

  private Reach reach(ToolWay way) {
    Element element = way.element();
    Bounds bounds = Bounds.of(element.solid());
    Facets facets = Facets.of(Mesher.mesh(element.solid()));
    List<Blocker> blockers = new ArrayList<>();
    for (Shaped other : shaped) {
      if (Pairs.matter(element, other.element)) {
        pairs++;
        if (bounds.overlaps(other.facets.bounds())) {
          blocker(way, new Shaped(element, facets), other).ifPresent(blockers::add);
        }
      }
    }
    blockers.sort(Comparator.comparingDouble(Blocker::at));
    double free = blockers.isEmpty() ? way.length() : Math.max(0, blockers.get(0).at);
    return new Reach(way, free, blockers.stream().map(b -> b.element.words()).toList());
  }

  private record Blocker(Element element, double at) {}

  private static Optional<Blocker> blocker(ToolWay way, Shaped path, Shaped other) {
    if (!mayOverlap(path, other, Distance.between(path.facets, other.facets, MEETING))) {
      return Optional.empty();
    }
    return CommonPart.of(path.element.solid(), other.element.solid()).filter(common -> common.volume() > 0)
        .map(common -> new Blocker(other.element, common.nearest(way.head(), way.direction())));
  }
}
