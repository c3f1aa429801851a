package outrigger.generator.accessory.tray;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import outrigger.generator.param.BadDimension;

class TrayRefusalTest {
  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(delimiter = '|', value = {
      "width | width=36.1 | a tray 36.1 mm wide does not go between rails 36.4 mm apart with 0.2 mm clearance on each "
          + "side: 36 mm is the most, so it is 0.1 mm too wide",
      "width | place=left | width is 0",
      "wall | wall=0.8 | fall short of 0.9 mm, the thinnest wall",
      "floor | floor=0.4 printer=demo-0.6 wall=1.4 | fall short of 0.6 mm, two layers",
      "wall-height | wall-height=1.3 floor=1.2 | fall short of 0.2 mm, one layer above the floor",
      "wall | wall=8 width=16 | leave no room inside",
      "corner-radius | corner-radius=19 | more than half the shorter side, 18 mm",
      "length | length=221 | a part 221 x 36 x 8.6 mm does not fit printer demo-0.4 with 220 x 220 x 240 mm",
      "tab-pitch | tab-pitch=66 | outer tabs end 37.5 mm from the middle, but the straight part of the wall ends at 37",
      "tab-pitch | tab-pitch=9.5 | leave 0.5 mm between them, below 0.9 mm",
      "tab-thickness | tab-thickness=12 straps=0 items= | tabs 12 mm thick fill a box 36 mm wide",
      "screw-drop | screw-drop=1 | leaves a web 10 mm high at its top",
      "screw-drop | screw-drop=9 drop=20 | leaves a web 10 mm high at its bottom",
      "screw-drop | screw-drop=4.5 | keeps 1.4 mm from it, and needs 1.6 mm of floor and wall",
      "tab-width | tab-width=7 | too narrow for its hole of 4.2 mm with 1.6 mm of wall on both sides",
      "tab-thickness | tab-thickness=2.9 | needs a part 3 mm thick",
      "tab-thickness | fit=nut tab-thickness=3.4 tab-width=12 screw-drop=3 | needs a part 3.5 mm thick",
      "screw | screw=M4-socket | no heat-set insert for M4",
      "strap-width | strap-width=36 tab-thickness=3.2 tab-pitch=40 | comes nearer than 0.9 mm to a wall or a screw tab",
      "strap-width | straps=2 strap-pitch=62 tabs=0 strap-width=14 | comes nearer than 0.9 mm to a wall",
      "strap-pitch | straps=2 strap-pitch=11 tab-pitch=60 | leave 0 mm between their slots",
      "screw-drop | drop=1 | its middle 3 mm below the underside of the tray, breaks 5.1 mm through it, and needs 1.6 mm",
      "screw-drop | floor=3 | its middle 4 mm above the underside of the tray, keeps 1.9 mm from it, and needs 3 mm",
      "hexagon | hexagon=1 | lighten nothing",
      "rib | rib=0.8 | fall short of the thinnest wall",
      "notch-width | notch-width=30 | 1 notch and 2 tie slots take 36 mm and 3.6 mm of wall around them, but the end wall is straight for 30 mm",
      "ties | notches=0 ties=6 width=20 | 6 tie slots take 18 mm",
      "notch-depth | notch-depth=7 | cuts into the floor: the wall stands 6.8 mm above it",
      "ties | wall-height=4 notch-depth=2 | leaves 0.2 mm of the wall above it, below 0.9 mm",
      "items | items=battery:90x20x10 | battery is 12.8 mm too long",
      "items | items=battery:60x20x37 | battery is 0.2 mm too high",
      "items | items=battery:60x36x10 | too wide"})
  void build_whatCannotBe_isRefusedInWords(String parameter, String given, String words) {
    BadDimension refusal = assertThrows(BadDimension.class, () -> TrayTest.part(given));
    assertEquals(parameter, refusal.parameter(), refusal.getMessage());
    assertTrue(refusal.what().contains(words), refusal.getMessage());
  }

  /** At the limit that a refusal names, the tray is made. */
  @ParameterizedTest
  @ValueSource(strings = {"width=36", "place=left width=30", "wall=0.9", "corner-radius=10 ties=0 tab-pitch=40",
      "tab-pitch=65", "tab-pitch=9.9 straps=0", "screw-drop=1.5", "screw-drop=4.3", "tab-width=7.4", "tab-thickness=3",
      "fit=nut tab-thickness=3.5 tab-width=12 screw-drop=3", "rib=0.9", "notch-depth=6.8",
      "items=battery:60x20x36.8", "straps=2 strap-pitch=11.9 tab-pitch=60"})
  void build_atTheLimit_isAccepted(String given) {
    assertTrue(TrayTest.part(given).stated().get("length") > 0);
  }
}
