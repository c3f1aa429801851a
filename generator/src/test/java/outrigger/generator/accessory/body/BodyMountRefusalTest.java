package outrigger.generator.accessory.body;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import outrigger.generator.accessory.Part;
import outrigger.generator.param.BadDimension;
import outrigger.generator.param.ParamValues;
import outrigger.presets.Printer;
import outrigger.presets.Shelf;

class BodyMountRefusalTest {
  private static final long SEED = 20260101;
  private static final Shelf SHELF = Shelf.standard();

  @ParameterizedTest(name = "{0}")
  @CsvSource(delimiter = '|', value = {
      "post-size      | post-size=8                                | Use 9 mm or more",
      "post-size      | magnet=12x3 post-size=12                   | Use 15 mm or more",
      "push-out       | push-out=5                                 | Use 4.8 mm or less",
      "push-out       | magnet=3x1 push-out=2                      | Use 1.8 mm or less",
      "magnet-spacing | magnets=2 magnet-spacing=7                 | Use 7.9 mm or more",
      "magnet-spacing | magnet-spacing=9                           | Use magnets 2",
      "lead-in        | magnet=6x1 lead-in=1                       | Use 0.45 mm or less",
      "reach          | reach=4                                    | Use a reach of 4.5 mm or more",
      "reach          | reach=6 mounting=inboard rail=channel-34   | Use a reach of 9.2 mm or more",
      "reach          | reach=24 mounting=inboard rail=plate-28    | Use a reach of 23.2 mm or less",
      "flange-height  | flange-height=12                           | Use 11 mm or less",
      "flange-height  | flange-height=11 rail=channel-34 mounting=inboard reach=12 | Use 8.4 mm or less",
      "flange-height  | flange-height=8                            | Use a flange-height of 9 mm or more",
      "screw          | screw=M5-socket                            | Use a smaller screw",
      "gusset-angle   | gusset-angle=50                            | Use 45 or less",
      "height         | height=2 magnet=12x3 reach=14 gusset-angle=45 rail=plate-36 pole=none label=no | or more",
      "screw-spacing  | screw-spacing=15                           | Use 15.5 mm or more",
      "screw-pitch    | screws=4 screw-pitch=6                     | Use 6.5 mm or more",
      "flange-length  | flange-length=24                           | Use 24.5 mm or more",
      "flange-length  | screws=8 screw-pitch=80                    | closer",
      "flange-thickness | fit=pilot flange-thickness=5             | Use 6 mm or more",
      "flange-thickness | fit=nut flange-thickness=3               | thicker",
      "flange-thickness | fit=insert flange-thickness=2            | thicker",
      "head-seat      | screw=M3-countersunk                       | countersink",
      "head-seat      | head-seat=countersink                      | counterbore",
      "label          | height=2 | Leave it out",
  })
  void build_sizesThatDoNotGoTogether_namesParameterAndWayOut(String key, String given, String advice) {
    BadDimension refusal = assertThrows(BadDimension.class, () -> build(given.trim().split(" +")));
    assertEquals(key.trim(), refusal.parameter(), refusal.getMessage());
    assertTrue(refusal.getMessage().contains(advice.trim()), refusal.getMessage());
  }

  @Test
  void build_stackTooDeep_namesStack() {
    BadDimension refusal = assertThrows(BadDimension.class,
        () -> build("height=8", "stack=10", "magnet=6x3", "pole=none", "label=no"));
    assertEquals("stack", refusal.parameter(), refusal.getMessage());
  }

  @Test
  void build_adviceOnHeight_worksWhenTaken() {
    String[] given = {"height=2", "magnet=6x3", "stack=8", "pole=none", "label=no"};
    BadDimension refusal = assertThrows(BadDimension.class, () -> build(given));
    String height = refusal.advice().replaceAll(".*height of ([0-9.]+) mm.*", "$1");
    given[0] = "height=" + height;
    assertEquals(1, build(given).size());
  }

  @Test
  void build_printerThatLeansLess_refusesCountersinkOnItsSide() {
    Printer d = SHELF.get(Printer.class, "demo-0.4");
    Printer weak = new Printer("weak", d.nozzle(), d.extrusionWidth(), d.layer(), d.firstLayer(), d.bedX(), d.bedY(),
        d.bedZ(), d.minimumWall(), 40, d.bridge(), d.holeAllowance(), d.outerAllowance());
    BodyMountParams p = params("screw=M3-countersunk", "head-seat=countersink");
    BodyMountParams weaker = new BodyMountParams(p.side(), p.mounting(), p.rail(), p.height(), p.reach(), p.magnet(),
        p.stack(), p.magnets(), p.magnetSpacing(), p.pocket(), p.leadIn(), p.pushOut(), p.pole(), p.label(),
        p.postSize(), p.postPlace(), p.gussetAngle(), p.flangeThickness(), p.flangeHeight(), p.flangeLength(),
        p.screw(), p.fit(), p.headSeat(), p.screws(), p.screwSpacing(), p.screwPitch(), weak);
    BadDimension refusal = assertThrows(BadDimension.class, () -> new BodyMount().build(weaker, SHELF));
    assertEquals("head-seat", refusal.parameter());
  }

  /** Whatever is asked for, the answer is parts or a refusal that names a parameter of this accessory. */
  @Test
  void build_randomSizes_buildsOrRefusesInWords() {
    Random random = new Random(SEED);
    int built = 0;
    for (int i = 0; i < 400; i++) {
      String[] given = {"height=" + number(random, 60), "reach=" + number(random, 40),
          "stack=" + (1 + random.nextInt(4)), "magnets=" + (1 + random.nextInt(2)),
          "gusset-angle=" + random.nextInt(50), "screws=" + (2 + random.nextInt(4)),
          "post-size=" + (random.nextBoolean() ? 0 : random.nextInt(16)),
          "magnet=" + List.of("3x1", "5x3", "6x2", "10x2").get(random.nextInt(4)),
          "pocket=" + (random.nextBoolean() ? "glue" : "slip")};
      try {
        built += build(given).size();
      } catch (BadDimension refusal) {
        assertTrue(outrigger.generator.param.ParamSpec.of(BodyMountParams.class).find(refusal.parameter()).isPresent(),
            "seed " + SEED + ", trial " + i + ": " + refusal.getMessage());
      }
    }
    assertTrue(built > 100, "seed " + SEED + ": only " + built + " of 400 built");
  }

  private static String number(Random random, int below) {
    return String.format(Locale.ROOT, "%.2f", 2 + random.nextDouble() * (below - 2));
  }

  private static List<Part> build(String... given) {
    return new BodyMount().build(params(given), SHELF);
  }

  static BodyMountParams params(String... given) {
    String[] pairs = new String[2 * given.length];
    for (int i = 0; i < given.length; i++) {
      pairs[2 * i] = given[i].substring(0, given[i].indexOf('='));
      pairs[2 * i + 1] = given[i].substring(given[i].indexOf('=') + 1);
    }
    return ParamValues.record(BodyMountParams.class, SHELF, pairs);
  }
}
