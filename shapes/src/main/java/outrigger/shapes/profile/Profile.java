package outrigger.shapes.profile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.Grid;
import outrigger.shapes.num.Placement;
import outrigger.shapes.num.ShapeException;

/**
 * Flat regions on the grid, in the XY plane. A value: every method returns a new profile.
 *
 * <p>Lengths are millimetres. Sizes that are not finite numbers above zero are refused with a {@link ShapeException};
 * so is any corner beyond the grid's range.
 */
public final class Profile {
  /** Largest distance between a true circle and its polygon, mm, where no other is given. */
  public static final double CHORD_ERROR = 0.01;

  private static final Profile EMPTY = new Profile(List.of());

  private final List<Region> regions;

  private Profile(List<Region> regions) {
    this.regions = regions;
  }

  /** No region at all. */
  public static Profile empty() {
    return EMPTY;
  }

  /** A rectangle centred on the origin. */
  public static Profile rectangle(double width, double depth) {
    return outline(Outlines.rectangle(width, depth));
  }

  /**
   * A rectangle centred on the origin with rounded corners; the corners' points lie on the true arc.
   *
   * @param radius at most half the shorter side
   */
  public static Profile roundedRectangle(double width, double depth, double radius) {
    return outline(Outlines.roundedRectangle(width, depth, radius, CHORD_ERROR));
  }

  /**
   * A rectangle centred on the origin with corners cut at 45 degrees.
   *
   * @param leg what each cut takes from either side, at most half the shorter side
   */
  public static Profile chamferedRectangle(double width, double depth, double leg) {
    return outline(Outlines.chamferedRectangle(width, depth, leg));
  }

  /** A round hole about the origin: its flats touch the true circle, so a 3.4 hole passes 3.4. */
  public static Profile hole(double diameter) {
    return hole(diameter, CHORD_ERROR);
  }

  /**
   * The same with a chord error of its own.
   *
   * @param chordError how far the corners may stand outside the circle, mm
   */
  public static Profile hole(double diameter, double chordError) {
    int sides = Circles.circumscribedSides(Sizes.positive("diameter", diameter) / 2, chordError);
    return outline(Circles.corners(Circles.holeRadius(diameter), sides, true));
  }

  /** A round post about the origin: its corners lie on the true circle. */
  public static Profile post(double diameter) {
    return post(diameter, CHORD_ERROR);
  }

  /**
   * The same with a chord error of its own.
   *
   * @param chordError how far the flats may stand inside the circle, mm
   */
  public static Profile post(double diameter, double chordError) {
    int sides = Circles.inscribedSides(Sizes.positive("diameter", diameter) / 2, chordError);
    return outline(Circles.corners(Circles.postRadius(diameter), sides, false));
  }

  /**
   * A slot hole about the origin, long side along X, ends circumscribed.
   *
   * @param length over all, at least the width
   */
  public static Profile slot(double length, double width) {
    return outline(Outlines.slot(length, width, true, CHORD_ERROR));
  }

  /** A bar of the same outline as a slot, ends inscribed: what fits into the slot. */
  public static Profile slotPost(double length, double width) {
    return outline(Outlines.slot(length, width, false, CHORD_ERROR));
  }

  /** A hexagon about the origin, two flats parallel to X; slanted flats never closer, by less than a grid step. */
  public static Profile hexagon(double acrossFlats) {
    return outline(Outlines.hexagon(acrossFlats));
  }

  /**
   * A polygon from x, y pairs, either turn.
   *
   * @throws ShapeException if it has fewer than three corners off one line, or crosses or touches itself
   */
  public static Profile polygon(double... xy) {
    if (xy.length % 2 != 0 || xy.length < 6) {
      throw new ShapeException("a polygon of " + xy.length + " numbers; it needs x and y of three corners or more",
          "Give pairs of x and y.");
    }
    int[] points = new int[xy.length];
    for (int i = 0; i < xy.length; i++) {
      points[i] = Grid.fromMm(xy[i]);
    }
    Profile profile = outline(points);
    String fault = Overlays.fault(profile.regions);
    if (!fault.isEmpty()) {
      throw new ShapeException("a polygon that crosses or touches itself: " + fault,
          "List the corners once round, in order.");
    }
    return profile;
  }

  /**
   * Stroke text: the ink's left edge at x = 0, its lower edge on the baseline y = 0.
   *
   * <p>Strokes end in half an octagon, so a slanted stroke's end stays up to a twelfth of the stroke width inside the
   * box.
   *
   * <p>Lower case is drawn as capitals, save a unit {@code mm} and an {@code x} between figures or spaces.
   *
   * @param text of A-Z, 0-9, space and {@code + - . , / ( ) # :}
   * @param height of capitals over the ink, mm
   * @param stroke width of the strokes, mm, at most a quarter of the height
   * @throws ShapeException naming a character the lettering lacks
   */
  public static Profile text(String text, double height, double stroke) {
    return new Profile(new Lettering(text, height, stroke).regions());
  }

  /** Width of the box a text's ink stands in, mm; spaces at its ends count. */
  public static double textWidth(String text, double height, double stroke) {
    return new Lettering(text, height, stroke).width();
  }

  /** All profiles together; none gives the empty profile. */
  public static Profile union(List<Profile> profiles) {
    if (profiles.isEmpty()) {
      return EMPTY;
    }
    List<List<Region>> parts = new ArrayList<>();
    for (Profile profile : profiles) {
      parts.add(profile.regions);
    }
    Optional<List<Region>> apart = Apart.union(parts);
    return new Profile(apart.isPresent() ? apart.get() : Overlays.union(parts));
  }

  /** Moved by millimetres, rounded to the grid, so that the outline itself stays as it is. */
  public Profile move(double x, double y) {
    long dx = shift(x);
    long dy = shift(y);
    return map((px, py) -> inRange(px + dx), (px, py) -> inRange(py + dy));
  }

  /**
   * Turned about the origin, counter-clockwise.
   *
   * @param degrees any finite angle; quarter turns are exact, others round each corner to the grid
   */
  public Profile turn(double degrees) {
    Placement turn = Placement.turn(Axis.Z, Sizes.finite("angle", degrees));
    Profile turned = map((x, y) -> round(turn.xx() * x + turn.xy() * y), (x, y) -> round(turn.yx() * x + turn.yy() * y));
    return degrees % 90 == 0 || isEmpty() ? turned : new Profile(Overlays.snapped(turned.regions));
  }

  /** Mirrored in the Y axis: x becomes -x. */
  public Profile mirrorX() {
    return map((x, y) -> -x, (x, y) -> y);
  }

  /** Mirrored in the X axis: y becomes -y. */
  public Profile mirrorY() {
    return map((x, y) -> x, (x, y) -> -y);
  }

  /** Grown (positive) or shrunk (negative) by a distance, within the usual chord error. */
  public Profile offset(double distance) {
    return offset(distance, CHORD_ERROR);
  }

  /**
   * Grown (positive) or shrunk (negative) by a distance: all points that near to it, or that far inside.
   *
   * <p>Growing rounds outer corners and keeps inner ones sharp; shrinking keeps outer corners sharp and rounds inner
   * ones. So a rectangle shrunk stays a rectangle. What is narrower than twice the distance vanishes, and the result
   * may be empty.
   *
   * @param chordError how far the roundings' chords may stand from the true arc, mm
   */
  public Profile offset(double distance, double chordError) {
    if (Sizes.finite("offset", distance) == 0 || isEmpty()) {
      return this;
    }
    // JTS rounds an arc's segments to the nearest count, so one may span half as much again as asked for.
    int segments = (int) Math.ceil(1.5 * Circles.inscribedSides(Math.abs(distance), chordError) / 4);
    return new Profile(Overlays.buffer(regions, distance * Grid.PER_MM, segments)).checked();
  }

  /** This profile and the others together. */
  public Profile join(Profile... others) {
    List<Profile> all = new ArrayList<>(List.of(others));
    all.add(0, this);
    return union(all);
  }

  /** This profile without the others. */
  public Profile cut(Profile... others) {
    if (isEmpty() || others.length == 0) {
      return this;
    }
    Profile all = others.length == 1 ? others[0] : union(List.of(others));
    if (all.isEmpty()) {
      return this;
    }
    Optional<List<Region>> apart = Apart.difference(regions, all.regions);
    return new Profile(apart.isPresent() ? apart.get() : Overlays.difference(regions, all.regions));
  }

  /** What this profile and the other share. */
  public Profile common(Profile other) {
    return isEmpty() || other.isEmpty() ? EMPTY : new Profile(Overlays.intersection(regions, other.regions));
  }

  /** Whether nothing of it lies outside another: to cut the other off would leave nothing. */
  public boolean isWithin(Profile area) {
    return isEmpty() || !area.isEmpty() && area.box().holds(box()) && !StickingOut.isSeen(regions, area.regions)
        && cut(area).isEmpty();
  }

  /** Whether there is no region. */
  public boolean isEmpty() {
    return regions.isEmpty();
  }

  /** Area, mm^2. */
  public double area() {
    long sum = 0;
    for (Region region : regions) {
      sum += region.doubleArea();
    }
    return sum * (Grid.STEP * Grid.STEP / 2);
  }

  /** Smallest x, mm. */
  public double minX() {
    return Grid.toMm(box().minX());
  }

  /** Largest x, mm. */
  public double maxX() {
    return Grid.toMm(box().maxX());
  }

  /** Smallest y, mm. */
  public double minY() {
    return Grid.toMm(box().minY());
  }

  /** Largest y, mm. */
  public double maxY() {
    return Grid.toMm(box().maxY());
  }

  /** The regions, in a fixed order: shell counter-clockwise, holes clockwise. */
  public List<Region> regions() {
    return regions;
  }

  /** Whether two of its outlines touch at a point, so that no solid made of it alone would be sound. */
  public boolean touchesItself() {
    return Touches.any(regions);
  }

  /** Of each region the outer outline, then those of its holes, each a profile without holes. */
  public List<List<Profile>> outlines() {
    List<List<Profile>> all = new ArrayList<>();
    for (Region region : regions) {
      List<Profile> rings = new ArrayList<>(List.of(filled(region.shell())));
      region.holes().forEach(hole -> rings.add(filled(hole.turned())));
      all.add(rings);
    }
    return all;
  }

  private static Profile filled(Ring shell) {
    return new Profile(List.of(new Region(shell, List.of())));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Profile profile && regions.equals(profile.regions);
  }

  @Override
  public int hashCode() {
    return regions.hashCode();
  }

  @Override
  public String toString() {
    return "Profile" + regions;
  }

  private static Profile outline(int[] points) {
    Ring ring = Ring.of(points, true);
    if (ring.size() == 0) {
      throw new ShapeException("an outline that encloses no area on the grid of " + Sizes.mm(Grid.STEP),
          "Give it corners that do not all lie on one line.");
    }
    return new Profile(List.of(new Region(ring, List.of()))).checked();
  }

  private static long shift(double mm) {
    double units = Sizes.finite("move", mm) * Grid.PER_MM;
    return Math.round(Math.max(-4.0 * Grid.LIMIT, Math.min(4.0 * Grid.LIMIT, units)));
  }

  private static int round(double units) {
    return inRange(Math.round(units));
  }

  private static int inRange(long units) {
    if (Math.abs(units) > Grid.LIMIT) {
      Grid.fromMm(Grid.toMm(units));
    }
    return (int) units;
  }

  private Profile checked() {
    if (!isEmpty()) {
      Box box = box();
      inRange(box.maxX());
      inRange(box.minX());
      inRange(box.maxY());
      inRange(box.minY());
    }
    return this;
  }

  private Box box() {
    if (isEmpty()) {
      throw new ShapeException("an empty profile has no bounds", "Check that something was left of it.");
    }
    Box box = Box.of(regions.get(0).shell());
    for (Region region : regions) {
      box = box.with(Box.of(region.shell()));
    }
    return box;
  }

  /** A whole-number map of the plane: gives one coordinate of a point's image. */
  @FunctionalInterface
  private interface Image {
    int of(int x, int y);
  }

  private Profile map(Image x, Image y) {
    List<Region> mapped = new ArrayList<>();
    for (Region region : regions) {
      List<Ring> holes = new ArrayList<>();
      for (Ring hole : region.holes()) {
        add(hole, false, x, y, holes);
      }
      List<Ring> shell = new ArrayList<>();
      add(region.shell(), true, x, y, shell);
      if (!shell.isEmpty()) {
        mapped.add(new Region(shell.get(0), holes));
      }
    }
    mapped.sort(null);
    return new Profile(List.copyOf(mapped));
  }

  private static void add(Ring ring, boolean counterClockwise, Image x, Image y, List<Ring> rings) {
    int[] xy = new int[2 * ring.size()];
    for (int i = 0; i < ring.size(); i++) {
      xy[2 * i] = x.of(ring.x(i), ring.y(i));
      xy[2 * i + 1] = y.of(ring.x(i), ring.y(i));
    }
    Ring image = Ring.of(xy, counterClockwise);
    if (image.size() > 0) {
      rings.add(image);
    }
  }
}
