package outrigger.generator.cli;

import java.io.IOException;
import outrigger.generator.magnet.Aside;
import outrigger.generator.magnet.Cautions;
import outrigger.generator.magnet.Force;
import outrigger.generator.magnet.Gap;
import outrigger.generator.magnet.Hold;
import outrigger.generator.magnet.HoldParams;
import outrigger.generator.param.Texts;
import outrigger.generator.run.Json;

/** A hold as JSON: mm, N, g. */
final class HoldJson {
  private HoldJson() {}

  static void write(Json json, Hold hold) throws IOException {
    HoldParams p = hold.given();
    json.put("magnet", p.magnet().name()).put("stack", p.stack()).put("grade", hold.grade().name());
    json.put("facing", Texts.choice(p.facing()));
    if (hold.steel().isPresent()) {
      json.put("steel-thickness-needed", hold.steel().get().thickness())
          .put("steel-width-needed", hold.steel().get().width()).put("steel-enough", hold.isSteelEnough());
    } else {
      json.put("facing-magnet", p.bodyMagnet().name())
          .put("facing-stack", p.bodyStack())
          .put("facing-grade", hold.bodyGrade().name());
    }
    json.put("temperature", p.temperature());
    json.object("gap", gap -> gap(gap, hold.gap()));
    json.object("pull", pull -> force(pull, hold.force()));
    json.object("pull-with-layers", pull -> force(pull, hold.reach()));
    json.object("load", load -> load(load, hold));
    json.object("sideways", aside -> aside(aside, hold.aside()));
    json.object("by-hand", hand -> force(hand, hold.hand()));
    json.objects("table", hold.tableGaps(), (row, gap) -> {
      Force force = hold.pull().at(gap);
      row.put("gap", gap);
      force(row, force);
      row.put("counted", p.derating() * force.least());
    });
    json.texts("cautions", Cautions.of(hold));
  }

  private static void gap(Json json, Gap gap) throws IOException {
    json.put("nominal", gap.nominal()).put("least", gap.least()).put("greatest", gap.greatest());
    json.objects("parts", gap.parts(), (one, part) -> one.put("name", part.name()).put("mm", part.mm()));
  }

  private static void force(Json json, Force force) throws IOException {
    json.put("least", force.least()).put("middle", force.middle()).put("greatest", force.greatest());
  }

  private static void load(Json json, Hold hold) throws IOException {
    json.put("needed", hold.load().each()).put("counted", hold.counted()).put("margin", hold.margin())
        .put("holds", hold.holds()).put("mounts-that-do", hold.mountsThatDo());
  }

  private static void aside(Json json, Aside aside) throws IOException {
    json.put("friction", aside.friction()).put("centring", aside.centring()).put("along", aside.along())
        .put("needed", aside.needed()).put("needs-pin", aside.needsPin());
  }
}
