package outrigger.generator.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import outrigger.generator.clash.Element;
import outrigger.generator.clash.Sort;
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
    parts.forEach(part -> elements.add(Element.of(part.name(), Sort.PART, part.solid())));
    for (Chosen chosen : joints) {
      Placed part = byName.get(chosen.of().part());
      if (part != null) {
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

  private static Optional<Solid> item(Laid laid, Map<String, Placed> parts, Truck truck) {
    Profile plan = Profile.rectangle(laid.length(), laid.width()).move(laid.x(), laid.y());
    if (laid.room().name().equals(BetweenParams.KEY)) {
      double level = truck.between().orElseThrow().record().level();
      return Optional.of(Prism.of(plan, level, level + laid.item().height()));
    }
    return Optional.ofNullable(parts.get(laid.room().name())).map(tray -> {
      double floor = tray.part().stated().get("floor");
      return Prism.of(plan, floor, floor + laid.item().height()).place(tray.pose());
    });
  }

  private static Element keepOut(Told<KeepOut> told, int number) {
    Point low = told.record().low();
    Point high = told.record().high();
    return Element.of("keep-out " + number + " " + told.record().name(), Sort.KEEP_OUT, Prism.of(Profile.rectangle(high.x() - low.x(),
        high.y() - low.y()).move((low.x() + high.x()) / 2, (low.y() + high.y()) / 2), low.z(), high.z()));
  }
}
