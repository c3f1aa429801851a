package outrigger.shapes.mesh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import outrigger.shapes.check.Proof;
import outrigger.shapes.mesh.frame.Rounded;

/**
 * Parts joined and cut where what lies inside others is left out. Each is a case that once came out open: X is what is
 * joined, C what is cut away, and X less C and what both have in common, X less (X less C), must fill X.
 */
class HidingTest {
  /** A face of what is cut is flush with one that is hidden in part; its sheet is entered over a rim. */
  private static final String RIM = """
      P 0 Y -11000 6000 1 4 9938 6124 3904 14308 -4280 8274 1754 90
      P 1 X -1000 9000 1 7 1449 -2070 5496 733 5827 5645 2194 8966 -2669 8196 -5098 3915 -3265 -654
      U 2 2 0 1
      P 3 Z 1000 15000 1 8 14604 5666 11483 9060 6877 9253 3483 6132 3290 1526 6411 -1868 11017 -2061 14411 1060
      P 4 X 9000 21000 1 4 1275 7402 -8323 2680 -3601 -6918 5997 -2196
      """;
  /** An edge leaves an operand unseen, inside another, and enters it again. */
  private static final String AGAIN = """
      P 0 Y -8000 12000 1 5 1490 -4805 3000 -12031 10339 -12829 13365 -6095 7896 -1136
      P 1 X -15000 -1000 1 8 5187 4014 4363 5415 2790 5821 1389 4997 983 3424 1807 2023 3380 1617 4781 2441
      U 2 2 0 1
      P 3 Z -6000 13000 1 4 -5000 4000 5000 4000 5000 10000 -5000 10000
      """;
  /** An edge leaves one operand and enters another at one point, only the second of which is hidden. */
  private static final String AT_ONE_POINT = """
      P 0 Y 1000 14000 1 4 -4000 11000 2000 11000 2000 15000 -4000 15000
      P 1 X 8000 25000 1 6 9461 10029 3460 10238 279 5147 3097 -155 9098 -364 12279 4727
      U 2 2 0 1
      P 3 Z 1000 15000 1 8 14604 5666 11483 9060 6877 9253 3483 6132 3290 1526 6411 -1868 11017 -2061 14411 1060
      P 4 Y -7000 11000 1 4 -3507 -2184 3895 1818 -107 9220 -7509 5218
      P 5 X -9000 11000 1 4 4000 -8000 10000 -8000 10000 4000 4000 4000
      P 6 X 1000 7000 1 7 181 -13749 4661 -11034 5332 -5839 1688 -2075 -3527 -2577 -6385 -6967 -4735 -11939
      """;

  /**
   * The two feet of what is left standing in C end in edges on a slanted face of X. All of one foot's wall there is hidden,
   * but of the sole under both only that much: it must not seem that the foot is on one side of the slant only.
   */
  private static final String FOOT = """
      P 0 X -20000 20000 1 3 -20000 -20000 20000 -20000 20000 20000
      P 1 Z -5000 8000 1 4 -13000 -3000 -6000 -3000 -6000 8000 -13000 8000
      U 2 2 0 1
      P 3 Z -8000 3000 1 4 -12000 -8000 8000 -8000 8000 4000 -12000 4000
      P 4 Z 0 4000 1 8 -10000 0 -7000 0 -7000 8000 4000 8000 4000 0 10000 0 10000 16000 -10000 16000
      D 5 2 3 4
      D 6 2 2 5
      """;

  @Test
  void mesh_footHiddenOnOneSideOfASheet_isWhatItIsWithoutHiding() {
    Rounded all = ReferencePart.of(FOOT).evaluate(false);
    Rounded hidden = ReferencePart.of(FOOT).evaluate(true);
    assertEquals(volume(all), volume(hidden));
    assertTrue(Proof.judge(Mesh.of(hidden.xyz(), hidden.corners())).proven().isPresent());
  }

  private static double volume(Rounded facets) {
    return ReferencePartTest.volume(Mesh.of(facets.xyz(), facets.corners()));
  }

  @Test
  void mesh_enteredOverARim_partsFillTheWhole() {
    assertFills(RIM);
  }

  @Test
  void mesh_enteredAgain_partsFillTheWhole() {
    assertFills(AGAIN);
  }

  @Test
  void mesh_changesAtOnePoint_partsFillTheWhole() {
    assertFills(AT_ONE_POINT);
  }

  private static void assertFills(String operands) {
    int last = (int) operands.lines().count() - 1;
    StringBuilder cut = new StringBuilder("D " + (last + 1) + " " + (last - 1) + " 2");
    for (int i = 3; i <= last; i++) {
      cut.append(" ").append(i);
    }
    String less = operands + cut + "\n";
    double rest = volume(less);
    double common = volume(less + "D " + (last + 2) + " 2 2 " + (last + 1) + "\n");
    double whole = volume(operands.substring(0, operands.indexOf("P 3")));
    assertTrue(rest > 0 && common > 0);
    // half a grid step over some thousand square millimetres, mm^3
    assertEquals(whole, rest + common, 0.2);
  }

  private static double volume(String part) {
    Mesh mesh = ReferencePart.of(part).mesh();
    assertTrue(Proof.judge(mesh).proven().isPresent(), part);
    return ReferencePartTest.volume(mesh);
  }
}
