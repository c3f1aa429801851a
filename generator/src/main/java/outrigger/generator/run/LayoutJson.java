package outrigger.generator.run;

import java.io.IOException;
import outrigger.generator.layout.Arrangement;
import outrigger.generator.layout.Fit;
import outrigger.generator.layout.Lack;
import outrigger.generator.layout.Laid;
import outrigger.generator.layout.LeftOut;

/** Where items lie as JSON; mm. */
public final class LayoutJson {
  private LayoutJson() {}

  /** An arrangement, as members of an object. */
  public static void write(Json json, Arrangement arrangement) throws IOException {
    json.objects("laid", arrangement.laid(), LayoutJson::laid);
    json.objects("left-out", arrangement.out(), (one, out) -> {
      one.put("item", out.item().name());
      one.objects("rooms", out.wants(), LayoutJson::want);
    });
    json.objects("alone", arrangement.fits(), LayoutJson::fit);
  }

  private static void laid(Json json, Laid laid) throws IOException {
    json.put("item", laid.item().name()).put("room", laid.room().name()).put("x", laid.x()).put("y", laid.y())
        .put("length", laid.length()).put("width", laid.width()).put("height", laid.item().height())
        .put("crosswise", laid.crosswise()).put("cables", laid.cables().word());
    Laid.Free free = laid.free();
    json.object("free", one -> one.put("front", free.front()).put("rear", free.rear()).put("left", free.left())
        .put("right", free.right()).put("above", free.above()));
  }

  private static void want(Json json, LeftOut.Want want) throws IOException {
    json.put("room", want.room().name());
    lack(json, want.alone());
    json.put("more-length", want.moreLength()).put("more-width", want.moreWidth());
  }

  private static void fit(Json json, Fit fit) throws IOException {
    json.put("item", fit.item().name()).put("room", fit.room().name()).put("fits", fit.lack().isNone());
    lack(json, fit.lack());
  }

  private static void lack(Json json, Lack lack) throws IOException {
    json.put("too-long", lack.length()).put("too-wide", lack.width()).put("too-high", lack.height());
  }
}
