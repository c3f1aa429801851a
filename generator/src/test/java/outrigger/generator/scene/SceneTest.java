package outrigger.generator.scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import outrigger.generator.accessory.Part;
import outrigger.generator.accessory.body.BodyMount;
import outrigger.generator.accessory.body.BodyMountParams;
import outrigger.generator.clash.ClashCheck;
import outrigger.generator.clash.ClashReport;
import outrigger.generator.joint.Fitted;
import outrigger.generator.joint.HardwareList;
import outrigger.generator.joint.Stock;
import outrigger.generator.param.Origin;
import outrigger.generator.param.ParamSpec;
import outrigger.generator.param.ParamValues;
import outrigger.generator.truck.BodyParams;
import outrigger.generator.truck.Placed;
import outrigger.generator.truck.RailAt;
import outrigger.generator.truck.RailParams;
import outrigger.generator.truck.Rails;
import outrigger.generator.truck.Told;
import outrigger.generator.truck.Truck;
import outrigger.generator.truck.TruckParams;
import outrigger.presets.Printer;
import outrigger.presets.Shelf;

/** Body mounts on both rails: they rest flat on the webs, and nothing shares a place. */
class SceneTest {
  private static final Shelf SHELF = Shelf.standard();

  private static <R extends Record> Told<R> told(Class<R> type, String... given) {
    return new Told<>("t", ParamValues.record(type, SHELF, given), ParamValues.of(ParamSpec.of(type)), Origin.DEFAULT);
  }

  private static Truck truck(Rails rails) {
    return new Truck(told(TruckParams.class), told(RailParams.class), rails, List.of(), List.of(), told(BodyParams.class),
        List.of(), Optional.empty(), List.of(), Optional.empty(), Optional.empty(), SHELF.get(Printer.class, "demo-0.4"));
  }

  private static Rails rails(String rear, String... given) {
    return Rails.of(ParamValues.record(RailParams.class, SHELF, given),
        List.of(ParamValues.record(RailAt.class, SHELF, "x", "-150", "spacing", rear)));
  }

  private static Scene scene(Rails rails, String mounting, String rail) {
    List<Placed> placed = new ArrayList<>();
    List<Fitted> fitted = new ArrayList<>();
    for (String side : new String[] {"left", "right"}) {
      BodyMountParams p = ParamValues.record(BodyMountParams.class, SHELF, "side", side, "mounting", mounting, "rail", rail);
      Part part = new BodyMount().build(p, SHELF).get(0);
      String name = "mount-" + side;
      placed.add(new Placed(name, "body-mount", part, ParamValues.of(ParamSpec.of(BodyMountParams.class)), p,
          Poses.bodyMount(rails, -60, p.side(), p.mounting(), part.stated())));
      fitted.add(new Fitted(name, name, part.fixings(), Origin.DEFAULT));
    }
    return Scene.of(truck(rails), placed, HardwareList.of(fitted, Stock.NONE, SHELF).screws().joints(), List.of(), SHELF);
  }

  private static ClashReport check(Scene scene) {
    return ClashCheck.check(scene.elements(), scene.ways(), 1);
  }

  @Test
  void of_outboardMounts_restOnTheWebsAndClashWithNothing() {
    Scene scene = scene(rails("32", "spacing", "32"), "outboard", "plate-32");
    ClashReport report = check(scene);
    assertEquals(List.of(), report.clashes().stream().map(Object::toString).toList());
    assertTrue(report.isClear(), () -> report.reaches().toString());
    assertEquals(4, scene.ways().size());
    assertTrue(report.near().stream().anyMatch(n -> n.distance() == 0 && n.isSeat()
        && n.words().contains("mount-left") && n.words().contains("rail left")), () -> report.near().toString());
  }

  @Test
  void of_taperedChannel_mountsTurnWithTheWebs() {
    ClashReport report = check(scene(rails("24", "spacing", "40", "form", "channel", "flange", "5", "web", "1.5"), "outboard",
        "channel-30"));
    assertTrue(report.clashes().stream().allMatch(c -> c.volume() < 1), () -> report.clashes().toString());
  }

  /** 3 mm nearer than the web is thick: the flange lies in it, 3 mm deep. */
  @Test
  void of_mountTooNear_isFound() {
    Rails rails = rails("32", "spacing", "32", "web", "5");
    Scene there = scene(rails, "outboard", "plate-32");
    assertTrue(check(there).clashes().stream().noneMatch(c -> c.words().contains("rail")));
    BodyMountParams p = ParamValues.record(BodyMountParams.class, SHELF);
    Part part = new BodyMount().build(p, SHELF).get(0);
    Placed near = new Placed("near", "body-mount", part, ParamValues.of(ParamSpec.of(BodyMountParams.class)), p,
        Poses.bodyMount(rails("32", "spacing", "32", "web", "2"), -60, p.side(), p.mounting(), part.stated()));
    ClashReport report = check(Scene.of(truck(rails), List.of(near), List.of(), List.of(), SHELF));
    assertFalse(report.clashes().isEmpty());
    double size = (part.stated().get("flange-length") * part.stated().get("flange-height")) * 3;
    assertEquals(size, report.clashes().get(0).volume(), size * 0.15);
  }
}
