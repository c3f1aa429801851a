package outrigger.generator.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import outrigger.generator.accessory.body.BodyMountParams;
import outrigger.generator.accessory.pad.BodyPadParams;
import outrigger.generator.accessory.tray.Tray;
import outrigger.generator.accessory.tray.TrayParams;
import outrigger.generator.clash.Element;
import outrigger.generator.clash.Sort;
import outrigger.generator.clash.Spot;
import outrigger.generator.clash.ToolWay;
import outrigger.generator.joint.Chosen;
import outrigger.generator.layout.Laid;
import outrigger.generator.truck.BetweenParams;
import outrigger.generator.truck.KeepOut;
import outrigger.generator.truck.Placed;
import outrigger.generator.truck.Point;
import outrigger.generator.truck.Told;
import outrigger.generator.truck.Truck;
import outrigger.presets.Shelf;
import outrigger.shapes.num.Placement;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Solid;

/**
 * What to check for clashes.
 *
 * @param elements everything with a place
 * @param ways of tools to the heads among them
 */
public record Scene(List<Element> elements, List<ToolWay> ways) {
  public Scene {
    elements = List.copyOf(elements);
    ways = List.copyOf(ways);
  }

  /**
   * A truck's scene.
   *
   * @param parts printed parts at their places; joints and items of parts that are not among them are left out
   * @param joints with the lengths of their screws
   * @param laid items, in the axes of their tray or of the truck
   */
  public static Scene of(Truck truck, List<Placed> parts, List<Chosen> joints, List<Laid> laid, Shelf shelf) {
    List<Element> elements = new ArrayList<>(new RailShapes(truck.rails()).elements());
    List<ToolWay> ways = new ArrayList<>();
    Map<String, Placed> byName = parts.stream().collect(Collectors.toMap(Placed::name, Function.identity()));
    String[] pads = parts.stream().filter(part -> part.record() instanceof BodyPadParams).map(Placed::name)
        .toArray(String[]::new);
    parts.forEach(part -> {
      Element element = Element.of(part.name(), Sort.PART, part.solid());
      elements.add(part.record() instanceof BodyMountParams ? element.seatedOn(pads) : element);
    });
    parts.forEach(part -> elements.addAll(ownItems(part, shelf)));
    for (Chosen chosen : joints) {
      Placed part = byName.get(chosen.of().part());
      if (part != null && chosen.of().set().isEmpty()) {
        ScrewShapes screws = new ScrewShapes(chosen, part.pose(), shelf);
        elements.addAll(screws.elements());
        ways.addAll(screws.ways());
      }
    }
    laid.forEach(one -> item(one, byName, truck).ifPresent(solid ->
        elements.add(Element.of("item " + one.item().name(), Sort.ITEM, solid))));
    for (int i = 0; i < truck.keepOuts().size(); i++) {
      elements.add(keepOut(truck.keepOuts().get(i), i + 1));
    }
    return new Scene(elements, ways);
  }

  /** What a tray lays out for itself. */
  private static List<Element> ownItems(Placed part, Shelf shelf) {
    return part.record() instanceof TrayParams tray ? Tray.items(tray, shelf).stream().map(b -> Element.of("item " + b.name()
        + " in " + part.name(), Sort.ITEM, Prism.of(Profile.rectangle(b.high().x() - b.low().x(), b.high().y() - b.low().y())
            .move((b.low().x() + b.high().x()) / 2, (b.low().y() + b.high().y()) / 2), b.low().z(), b.high().z())
            .place(part.pose()))).toList() : List.of();
  }

  private static Optional<Solid> item(Laid laid, Map<String, Placed> parts, Truck truck) {
    return floor(laid, parts, truck).map(at -> Prism.of(Profile.rectangle(laid.length(), laid.width()), 0,
        laid.item().height()).move(at.x(), at.y(), at.z()));
  }

  /**
   * Where the middle of an item's underside lies; empty where its tray has no place.
   *
   * @param parts at their places, by name
   */
  public static Optional<Spot> floor(Laid laid, Map<String, Placed> parts, Truck truck) {
    if (laid.room().name().equals(BetweenParams.KEY)) {
      return truck.between().map(between -> new Spot(laid.x(), laid.y(), between.record().level()));
    }
    return Optional.ofNullable(parts.get(laid.room().name())).map(tray -> {
      Placement p = tray.pose();
      double z = tray.part().stated().get("floor");
      return new Spot(p.x(laid.x(), laid.y(), z), p.y(laid.x(), laid.y(), z), p.z(laid.x(), laid.y(), z));
    });
  }

  private static Element keepOut(Told<KeepOut> told, int number) {
    Point low = told.record().low();
    Point high = told.record().high();
    return Element.of("keep-out " + number + " " + told.record().name(), Sort.KEEP_OUT, Prism.of(Profile.rectangle(high.x() - low.x(),
        high.y() - low.y()).move((low.x() + high.x()) / 2, (low.y() + high.y()) / 2), low.z(), high.z()));
  }
}
