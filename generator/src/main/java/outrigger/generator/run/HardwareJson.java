package outrigger.generator.run;

import java.io.IOException;
import outrigger.generator.joint.Chosen;
import outrigger.generator.joint.HardwareLine;
import outrigger.generator.joint.HardwareList;
import outrigger.generator.joint.Joint;

/** A list of hardware as JSON; mm. */
public final class HardwareJson {
  private HardwareJson() {}

  /** The list and its working, as members of an object. */
  public static void write(Json json, HardwareList list) throws IOException {
    json.objects("hardware", list.lines(), HardwareJson::line);
    json.objects("joints", list.screws().joints(), HardwareJson::joint);
    json.texts("why-no-fewer", list.screws().proofs());
  }

  private static void line(Json json, HardwareLine line) throws IOException {
    json.put("kind", line.kind().word()).put("article", line.article()).put("count", line.count())
        .put("spares", line.spares()).put("on-hand", line.onHand()).put("to-buy", line.toBuy())
        .texts("for", line.uses());
  }

  private static void joint(Json json, Chosen chosen) throws IOException {
    Joint joint = chosen.of().joint();
    json.put("part", chosen.of().part()).put("joint", joint.name()).put("screw", joint.screw().name())
        .put("count", joint.count());
    json.objects("grip", joint.grip(), (one, member) -> one.put("name", member.name()).put("least", member.least())
        .put("most", member.most()));
    json.put("thread", joint.thread().name()).put("thread-length", joint.thread().length())
        .put("shortest", joint.shortest()).put("longest", joint.longest()).put("length", chosen.length())
        .put("engagement", chosen.engagement()).put("protrusion", chosen.protrusion())
        .put("head-above", joint.head().above()).put("head-around", joint.head().around());
  }
}
