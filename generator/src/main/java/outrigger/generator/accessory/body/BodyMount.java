package outrigger.generator.accessory.body;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import outrigger.generator.accessory.Accessory;
import outrigger.generator.accessory.Part;
import outrigger.generator.accessory.Words;
import outrigger.generator.accessory.feature.Gusset;
import outrigger.generator.accessory.feature.PocketFit;
import outrigger.generator.accessory.feature.PoleMark;
import outrigger.generator.accessory.feature.ScrewHole;
import outrigger.presets.Shelf;
import outrigger.shapes.num.Axis;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Solid;

/**
 * A tower on a chassis rail that carries a magnet under the kit body's floor.
 *
 * <p>It is built standing as it stands on the truck. So the pocket, which must be round and true, runs along the build
 * axis, its floor and lip are level with the layers, and the push-out hole is a plain upright bore. The price is paid
 * where it is cheap: the screw holes lie on their side and get a pointed roof above the round hole, the post is carried
 * by a gusset whose underside leans no further than the printer can do, and the height comes out in whole layers,
 * which the notes say. Lying on the web's face it would need support under the post and would have a pocket with a
 * sagging wall; lying on its back the flange would hang in the air.
 */
public final class BodyMount implements Accessory<BodyMountParams> {
  /** Radius of the flange's upper corners, at most, mm. */
  private static final double FLANGE_CORNER = 2;
  /** Radius of the post's upright corners, mm. */
  private static final double POST_CORNER = 1;
  /**
   * Bevel along the web's face at the bed, mm: the first layers swell by 0.1 to 0.3 a side and would keep the flange
   * from lying flat; common practice.
   */
  private static final double BED_BEVEL = 0.4;
  private static final double BEVEL_LEAN = 45;

  @Override
  public String kind() {
    return "body-mount";
  }

  @Override
  public String summary() {
    return "A tower bolted to a chassis rail that carries a magnet under the body's floor.";
  }

  @Override
  public Class<BodyMountParams> parameters() {
    return BodyMountParams.class;
  }

  @Override
  public List<Part> build(BodyMountParams p, Shelf shelf) {
    BodyMountLayout layout = BodyMountLayout.of(p, shelf);
    BodyMountChecks.require(layout);
    String pose = "Standing as on the truck: lower edge of the flange on the bed, head up; no support.";
    return List.of(new Part("", solid(layout), pose, BodyMountNotes.of(layout), stated(layout),
        heights(layout), BodyMountNotes.fixings(layout, shelf)));
  }

  /**
   * Height of the rails' top plane over the bed when a mount is built, mm: its flange as high as the rail allows and with
   * its middle on the web's middle.
   */
  public static double railTop(outrigger.presets.Rail rail, Mounting mounting) {
    boolean inChannel = mounting == Mounting.INBOARD && rail.form().equals("channel");
    double flange = inChannel ? rail.height() - 2 * rail.web() - 2 * BodyMountLayout.CHANNEL_PLAY : rail.height();
    return (flange + rail.height()) / 2;
  }

  private static Solid solid(BodyMountLayout l) {
    Solid body = Solid.union(flange(l), l.gusset().solid(gussetPlan(l)), post(l));
    List<Solid> cutters = new ArrayList<>(screwHoles(l));
    for (double x : l.pocketX()) {
      cutters.add(l.pocket().cutter(l.top()).move(x, l.p().reach(), 0));
      cutters.add(pushOut(l).move(x, l.p().reach(), 0));
    }
    cutters.addAll(marks(l));
    if (l.p().printer().overhang() >= BEVEL_LEAN) {
      cutters.add(bedBevel(l));
    }
    return body.cut(cutters);
  }

  private static Solid flange(BodyMountLayout l) {
    double length = l.flangeTo() - l.flangeFrom();
    double corner = Math.min(FLANGE_CORNER, l.flangeHeight() / 4);
    Profile upright = Profile.roundedRectangle(length, 2 * l.flangeHeight(), corner)
        .common(Profile.rectangle(length, l.flangeHeight()).move(0, l.flangeHeight() / 2))
        .move((l.flangeFrom() + l.flangeTo()) / 2, 0);
    return Prism.of(upright, -l.p().flangeThickness(), 0).turn(Axis.X, 90);
  }

  private static Profile postPlan(BodyMountLayout l) {
    return Profile.roundedRectangle(l.width(), l.post(), POST_CORNER).move(0, l.p().reach());
  }

  /** The post's outline, carried on to the web's face. */
  private static Profile gussetPlan(BodyMountLayout l) {
    return postPlan(l).join(Profile.rectangle(l.width(), l.p().reach()).move(0, l.p().reach() / 2));
  }

  private static Solid post(BodyMountLayout l) {
    return Prism.of(postPlan(l), l.flangeHeight(), l.top());
  }

  private static List<Solid> screwHoles(BodyMountLayout l) {
    Solid one = l.hole().cutter(0, l.p().flangeThickness(), "flange-thickness").move(0, 0, l.screwZ());
    return l.screwX().stream().map(x -> one.move(x, 0, 0)).toList();
  }

  private static Solid pushOut(BodyMountLayout l) {
    double floor = l.top() - l.pocket().depth();
    return Prism.of(Profile.hole(l.pushOut()), -ScrewHole.OVERSHOOT, (floor + l.top()) / 2);
  }

  private static List<Solid> marks(BodyMountLayout l) {
    PoleMark face = new PoleMark(l.outerFace(), l.width() - 2 * POST_CORNER, l.flangeHeight(), l.top());
    Optional<String> height = l.p().label() ? Optional.of(Words.mark(l.p().height())) : Optional.empty();
    return face.cutters(l.p().pole(), height, l.p().printer());
  }

  private static Solid bedBevel(BodyMountLayout l) {
    double over = ScrewHole.OVERSHOOT;
    Profile corner = Profile.polygon(-over, -over, BED_BEVEL + over, -over, -over, BED_BEVEL + over);
    return Gusset.alongX(corner, (l.flangeTo() - l.flangeFrom()) / 2 + over)
        .move((l.flangeFrom() + l.flangeTo()) / 2, 0, 0);
  }

  /** The pocket's depth is what lies between its floor and the top. */
  private static Map<String, Double> heights(BodyMountLayout l) {
    Map<String, Double> heights = new LinkedHashMap<>();
    heights.put("flange-height", l.flangeHeight());
    heights.put("pocket-floor", l.top() - l.pocket().depth());
    heights.put("total-height", l.top());
    return heights;
  }

  private static Map<String, Double> stated(BodyMountLayout l) {
    Map<String, Double> stated = new LinkedHashMap<>();
    stated.put("height", l.p().height());
    stated.put("total-height", l.top());
    stated.put("reach", l.p().reach());
    stated.put("pocket-diameter", l.pocket().diameter());
    stated.put(l.p().pocket() == PocketFit.GLUE ? "rib-circle" : "lip-diameter", l.pocket().grip());
    stated.put("pocket-depth", l.pocket().depth());
    stated.put("magnet-below-head", l.pocket().recess());
    stated.put("mouth-diameter", l.pocket().mouth());
    stated.put("push-out-diameter", l.pushOut());
    if (l.p().magnets() > 1) {
      stated.put("magnet-spacing", l.magnetSpacing());
    }
    stated.put("post-size", l.post());
    stated.putAll(l.hole().hole().stated(l.p().flangeThickness()));
    stated.put("screw-height", l.screwZ());
    stated.put("post-to-screw", l.nearestScrew());
    stated.put("flange-length", l.flangeTo() - l.flangeFrom());
    if (l.isHanded()) {
      stated.put("flange-offset", (l.flangeFrom() + l.flangeTo()) / 2);
    }
    stated.put("flange-height", l.flangeHeight());
    stated.put("flange-thickness", l.p().flangeThickness());
    return stated;
  }
}
