package outrigger.generator.accessory.spacer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import outrigger.generator.param.BadDimension;

class SpacerRefusalTest {
  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(delimiter = '|', value = {
      "corner-radius | corner-radius=6.1 | more than half the shorter side, 6 mm",
      "pitch | pitch=4 | only 0.4 mm of wall is left between neighbouring holes, where 0.9 mm is the minimum",
      "pitch | pitch=3 | run 0.6 mm into each other",
      "row-pitch | rows=2 row-pitch=4 | only 0.4 mm of wall",
      "length | pitch=25 | only 0.7 mm of wall is left between the outer holes and the end",
      "length | pitch=28 | break 0.8 mm through the end",
      "length | slot=9 | break 0.3 mm through the end",
      "width | width=5 | only 0.7 mm of wall is left between the outer holes and the side",
      "width | rows=2 row-pitch=8 | only 0.2 mm of wall is left between the outer holes and the side",
      "corner-radius | corner-radius=6 pitch=24.5 rows=2 row-pitch=5 screw=M2-socket | of wall at the outer holes",
      "thickness | head-seat=counterbore thickness=4 | needs a part 4.1 mm thick, but it is 4 mm",
      "thickness | head-seat=countersink screw=M3-countersunk thickness=2 | needs a part 2.06 mm thick",
      "thickness | fit=insert thickness=2.9 | needs a part 3 mm thick",
      "thickness | fit=nut thickness=3 | needs a part 3.5 mm thick",
      "thickness | head-seat=counterbore slot=2 thickness=4 | needs a part 4.1 mm thick",
      "set | head-seat=counterbore set=5,4 | needs a part 4.1 mm thick, but it is 4 mm",
      "length | length=260 | does not fit printer demo-0.4 with 220 x 220 x 240 mm",
      "set | set=1,2,1.0 | 1 mm stands twice",
      "head-seat | head-seat=countersink | does not fit the socket head",
      "screw | screw=M4-socket fit=insert | no heat-set insert for M4",
      "slot | slot=2 fit=pilot | cannot be shifted in a hole that holds it",
      "slot | slot=2 screw=M3-countersunk head-seat=countersink | centres its screw",
      "bed-chamfer | bed-chamfer=1 thickness=1.5 | more than half the thickness",
      "bed-chamfer | bed-chamfer=0.5 pose=on-edge | lies on no rim",
      "bed-chamfer | bed-chamfer=0.4 width=5.5 | leaves 0.15 mm of the narrowest wall",
      "engrave-depth | engrave=always thickness=0.6 | 0.4 mm deep does not fit a spacer 0.6 mm thick: it takes 0.8 mm",
      "engrave | engrave=always length=14 pitch=6 width=6 | but there is room for"})
  void build_whatCannotBe_isRefusedInWords(String parameter, String given, String words) {
    BadDimension refusal = assertThrows(BadDimension.class, () -> SpacerTest.parts(given));
    assertEquals(parameter, refusal.parameter(), refusal.getMessage());
    assertTrue(refusal.what().contains(words), refusal.getMessage());
  }

  /** What each refusal's advice says does build. */
  @ParameterizedTest
  @ValueSource(strings = {"corner-radius=6", "pitch=4.5", "rows=2 row-pitch=4.5", "length=30.4 pitch=25", "width=5.4",
      "head-seat=counterbore thickness=4.1", "fit=insert thickness=3", "set=1,2", "bed-chamfer=0.25 width=5.5",
      "engrave=always thickness=0.8", "holes=0 length=4 width=4"})
  void build_atTheLimit_isAccepted(String given) {
    assertTrue(SpacerTest.parts(given).size() > 0);
  }
}
