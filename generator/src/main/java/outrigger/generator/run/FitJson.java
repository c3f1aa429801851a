package outrigger.generator.run;

import java.io.IOException;
import outrigger.generator.accessory.feature.Pole;
import outrigger.generator.fit.Bumper;
import outrigger.generator.fit.Choice;
import outrigger.generator.fit.FitText;
import outrigger.generator.fit.Height;
import outrigger.generator.fit.Member;
import outrigger.generator.fit.Need;
import outrigger.generator.fit.Shim;
import outrigger.generator.fit.Site;
import outrigger.generator.fit.StackUp;
import outrigger.generator.fit.TruckFit;
import outrigger.generator.magnet.Hold;
import outrigger.generator.param.Texts;
import outrigger.generator.stack.Spread;
import outrigger.generator.stack.Stack;

/** A solved truck as JSON; mm, N, degrees. */
public final class FitJson {
  private FitJson() {}

  /** All of it, as members of an object. */
  public static void write(Json json, TruckFit fit) throws IOException {
    json.numbers("body-centre-mm", fit.centre().x(), fit.centre().y(), fit.centre().z());
    json.objects("mounts", fit.sites(), (one, site) -> site(one, fit, site));
    if (!fit.sites().isEmpty()) {
      json.object("level", one -> {
        one.put("lift-mm", fit.level().lift()).put("pitch-degrees", fit.level().pitch())
            .put("roll-degrees", fit.level().roll());
        spread(one, "pitch-", fit.level().pitchSpread());
        spread(one, "roll-", fit.level().rollSpread());
      });
      json.texts("shims", FitText.shims(fit));
      json.objects("shim-stacks", fit.shims(), FitJson::shim);
      json.object("poles", one -> one.put("wrong-places", (long) fit.poles().wrong()).texts("open", fit.poles().open()));
      json.texts("cautions", FitText.cautions(fit));
    }
    if (fit.bumper().isPresent()) {
      Bumper bumper = fit.bumper().get();
      json.object("bumper", one -> {
        chain(one, bumper.chain());
        spread(one, "face-", bumper.spread());
      });
    }
  }

  private static void shim(Json json, Shim shim) throws IOException {
    json.put("mount", shim.mount()).put("wanted-mm", shim.mm());
    if (shim.stack().isPresent()) {
      Stack stack = shim.stack().get();
      json.put("on-hand", stack.words()).put("pieces", (long) stack.pieces()).put("total-mm", stack.total())
          .put("error-mm", stack.error());
    }
    if (shim.toBuy().isPresent()) {
      json.put("to-buy", shim.toBuy().get().words());
    }
  }

  private static void site(Json json, TruckFit fit, Site site) throws IOException {
    Height height = fit.heights().get(site);
    Need need = fit.needs().get(site);
    Choice choice = fit.choices().get(site);
    Hold hold = choice.hold();
    Pole pole = fit.pole(site);
    json.put("name", site.name()).put("x-mm", site.x()).put("y-mm", site.y()).put("head-mm", height.head());
    chain(json, height.chain());
    json.put("solved", height.solvedFor().orElse(""));
    spread(json, "floor-", height.spread());
    json.put("layers-mm", height.layers()).put("misfit-mm", height.misfit()).put("magnet", choice.magnet().name())
        .put("stack", (long) choice.stack()).put("facing", Texts.choice(hold.given().facing()))
        .put("gap-mm", hold.gap().nominal()).put("pull-n", hold.force().middle())
        .put("counted-n", hold.counted()).put("needed-up-n", need.up()).put("needed-side-n", need.side())
        .put("needed-fore-n", need.fore()).put("needed-sideways-n", need.sideways())
        .put("margin", hold.counted() / need.most()).put("pole-up", pole.name());
  }

  private static void chain(Json json, StackUp chain) throws IOException {
    json.objects("chain", chain.members(), FitJson::member);
  }

  private static void member(Json json, Member member) throws IOException {
    json.put("name", member.name()).put("sign", (long) member.sign()).put("mm", member.size().mm())
        .put("off-mm", member.off()).put("one-way", member.isSystematic());
  }

  private static void spread(Json json, String name, Spread spread) throws IOException {
    json.put(name + "worst", spread.worst()).put(name + "root-sum-square", spread.rootSumSquare());
  }
}
