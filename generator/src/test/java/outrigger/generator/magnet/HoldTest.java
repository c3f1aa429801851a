package outrigger.generator.magnet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import outrigger.generator.param.ParamValues;
import outrigger.presets.MagnetGrade;
import outrigger.presets.Shelf;

class HoldTest {
  private static final double G = 9.80665;
  private static final MagnetGrade N42 = new MagnetGrade("N42", 1.28, 1.32, 0.12, 80);

  private static Hold hold(String... keysAndTexts) {
    Shelf shelf = Shelf.standard();
    return Hold.of(ParamValues.record(HoldParams.class, shelf, keysAndTexts), shelf);
  }

  /** Nothing between the faces, and so nothing for layers to round. */
  private static Hold touching(String... more) {
    String[] all = new String[more.length + 6];
    System.arraycopy(new String[] {"recess", "0", "facing-recess", "0", "plating", "0"}, 0, all, 0, 6);
    System.arraycopy(more, 0, all, 6, more.length);
    return hold(all);
  }

  @Test
  void gap_everyPart_isAddedAndSkinsComeInLayers() {
    // demo-0.4: first layer 0.2, layers 0.2. A skin of 0.5 is one first layer and 1.5 more, rounded up to 2.
    Gap gap = hold("recess", "0.1", "facing-recess", "0", "skin", "0.5", "facing-skin", "0.1", "glue", "0.05", "pad",
        "10thou").gap();
    assertEquals(List.of("recess", "skin (0.5 wanted)", "skin in the body (0.1 wanted)", "glue", "pad", "plating"),
        gap.parts().stream().map(Gap.Part::name).toList());
    assertEquals(0.1 + 0.6 + 0.2 + 0.05 + 0.254 + 0.03, gap.nominal(), 1e-12);
    assertEquals(gap.nominal() - 0.2, gap.least(), 1e-12);
    assertEquals(gap.nominal() + 0.2, gap.greatest(), 1e-12);
  }

  @Test
  void gap_steel_hasOnePlatedFace() {
    assertEquals(0.415, hold("facing", "steel").gap().nominal(), 1e-12);
  }

  @Test
  void gap_slackAboveWhole_endsAtContact() {
    assertEquals(0, hold("recess", "0.1", "facing-recess", "0.05").gap().least());
  }

  @Test
  void force_spread_isThatOfBothGrades() {
    // Contact of a 6x2 pair: 9.198267 N at 1.30 T twice.
    double perSquare = 9.198267 / (1.3 * 1.3);
    Force force = touching().force();
    assertEquals(perSquare * 1.28 * 1.28, force.least(), 1e-5);
    assertEquals(9.198267, force.middle(), 1e-5);
    assertEquals(perSquare * 1.32 * 1.32, force.greatest(), 1e-5);
    Force mixed = touching("grade", "N35", "facing-grade", "N52").force();
    assertEquals(perSquare * 1.17 * 1.43, mixed.least(), 1e-5);
    assertEquals(perSquare * 1.195 * 1.455, mixed.middle(), 1e-5);
  }

  @Test
  void grade_sameMagnet_takesItsGrade_otherMagnetItsOwn() {
    assertEquals("N52", hold("grade", "N52").bodyGrade().name());
    assertEquals("N42", hold("grade", "N52", "facing-magnet", "8x2").bodyGrade().name());
    assertEquals("N35", hold("grade", "N52", "facing-grade", "N35").bodyGrade().name());
  }

  /** F(80) / F(20) = (1 - 0.0012 x 60)^2. */
  @Test
  void temperature_warmAndCold_movesThePullByTheSquare() {
    double at20 = touching().force().middle();
    assertEquals(0.928 * 0.928, touching("temperature", "80").force().middle() / at20, 1e-12);
    assertEquals(1.048 * 1.048, touching("temperature", "-20").force().middle() / at20, 1e-12);
    assertEquals(1.3 * 0.976, Strength.of(N42, 40).middle(), 1e-12);
  }

  @Test
  void stack_ofTwo_isOneTwiceAsThick() {
    // 6x3 twice: the table has 11.9604694 N in contact, 1.3 T.
    assertEquals(touching("magnet", "6x1", "stack", "3").force().middle(), touching("magnet", "6x3").force().middle(),
        1e-9);
    assertEquals(11.9604694, touching("magnet", "6x1", "stack", "3").force().middle(), 1e-6);
    assertEquals(touching("magnet", "6x2", "stack", "2", "facing-stack", "1").force().middle(),
        touching("magnet", "6x2", "facing-stack", "2").force().middle(), 1e-9);
  }

  @Test
  void load_byHand_agrees() {
    Hold hold = touching("mass", "240g", "shock", "6", "mounts", "3", "derating", "0.5");
    double counted = 0.5 * 9.198267 / 1.69 * 1.28 * 1.28;
    assertEquals(0.240 * G * 6 / 3, hold.load().each(), 1e-12);
    assertEquals(counted, hold.counted(), 1e-5);
    assertEquals(counted / (0.240 * G * 2), hold.margin(), 1e-5);
    assertTrue(hold.margin() < 1 == !hold.holds());
    assertEquals(4, hold.mountsThatDo());
    assertEquals(0.240 * G + 3 * 9.198267, hold.hand().middle(), 1e-5);
    assertEquals(0.240 * G + 3 * 9.198267 / 1.69 * 1.32 * 1.32, hold.hand().greatest(), 1e-5);
  }

  @Test
  void mountsThatDo_thatMany_holdAndOneLessDoNot() {
    long enough = hold("mass", "400").mountsThatDo();
    assertTrue(hold("mass", "400", "mounts", Long.toString(enough)).holds());
    assertFalse(hold("mass", "400", "mounts", Long.toString(enough - 1)).holds());
  }

  @Test
  void reach_unequalDiscs_weakestIsNotAtTheWidestGap() {
    // 6x2 over 20x5: weakest in contact, strongest near 1.6 mm.
    Pull pull = new Pull(Coupling.pair(new Disc(6, 2), new Disc(20, 5)), Strength.of(N42, 20), Strength.of(N42, 20));
    Force reach = pull.over(new Gap(List.of(new Gap.Part("pad", 1)), 1));
    assertEquals(pull.at(0).least(), reach.least(), 1e-12);
    assertTrue(reach.greatest() > pull.at(2).greatest());
    assertTrue(reach.greatest() > pull.at(1).greatest());
  }

  @Test
  void aside_pairPullsBack_steelDoesNot() {
    // 6x2 pair, 0.5 mm gap, 1 mm aside: 1.6478101 N back and 4.24575712 N along at 1.3 T.
    Aside pair = touching("pad", "0.5", "offset", "1").aside();
    assertEquals(0.75 * 1.6478101 / 1.69 * 1.28 * 1.28, pair.centring(), 1e-5);
    assertEquals(4.24575712, pair.along(), 1e-5);
    assertEquals(0.15 * 0.75 * 5.27347284 / 1.69 * 1.28 * 1.28, pair.friction(), 1e-5);
    assertEquals(0, touching("facing", "steel", "offset", "1").aside().centring());
    assertTrue(touching("pad", "0.5", "offset", "6").aside().along() < 0);
    assertTrue(touching("mass", "20").aside().needed() < touching("mass", "20").aside().friction());
    assertFalse(touching("mass", "20").aside().needsPin());
    assertTrue(touching("mass", "2000").aside().needsPin());
  }

  @Test
  void steel_thinOrNarrow_isNeverSaidToHold() {
    assertTrue(touching("facing", "steel").holds());
    assertTrue(touching("facing", "steel", "steel-thickness", "0.81", "steel-width", "12").holds());
    assertFalse(touching("facing", "steel", "steel-thickness", "0.79").holds());
    assertFalse(touching("facing", "steel", "steel-width", "11.9").holds());
    assertEquals(0.8033, touching("facing", "steel").steel().orElseThrow().thickness(), 1e-4);
  }

  @Test
  void tableGaps_printedGap_isAmongThemOnce() {
    assertEquals(List.of(0.0, 0.43, 1.0, 2.0), hold("to", "2", "steps", "2").tableGaps().stream()
        .map(gap -> Math.round(gap * 1e9) / 1e9).toList());
    assertEquals(3, touching("pad", "1", "to", "2", "steps", "2").tableGaps().size());
    assertEquals(List.of(0.0, 0.05, 0.1), hold("to", "0.1", "steps", "2").tableGaps());
  }

  @Test
  void risesSomewhere_unequalDiscsOnly() {
    assertFalse(hold().risesSomewhere());
    assertTrue(hold("magnet", "3x1", "facing-magnet", "12x3").risesSomewhere());
  }

  @Test
  void cautions_hot_saySo() {
    assertTrue(Cautions.of(hold("temperature", "70")).get(4).startsWith("Above 60 degrees C discs as flat as these"));
    assertTrue(Cautions.of(hold("temperature", "70", "magnet", "3x2", "stack", "2")).get(4)
        .startsWith("Above 60 degrees C discs may"));
    assertTrue(Cautions.of(hold()).get(4).startsWith("Heat ruins them"));
  }
}
