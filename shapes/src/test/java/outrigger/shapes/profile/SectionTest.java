package outrigger.shapes.profile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class SectionTest {
  private static final double[] SHELL = {0, 0, 20, 0, 20, 20, 0, 20};
  private static final double[] HOLE = {5, 5, 5, 8, 8, 8, 8, 5};

  @Test
  void minus_holeInBoth_isNoPartOfTheDifference() {
    Section narrower = Section.of(List.of(new double[] {0, 0, 18, 0, 18, 20, 0, 20}, HOLE));
    Section difference = Section.of(List.of(SHELL, HOLE)).minus(narrower);
    assertEquals(40, difference.area(), 1e-9);
    assertFalse(difference.holds(6, 6));
    assertEquals(40, Section.of(List.of(SHELL, HOLE)).minus(narrower, 1e-3).area(), 1e-9);
  }

  @Test
  void minus_holeInOneAlone_isTheDifference() {
    Section more = Section.of(List.of(SHELL, HOLE, new double[] {12, 12, 12, 15, 15, 15, 15, 12}));
    Section less = Section.of(List.of(SHELL, HOLE));
    assertEquals(9, less.minus(more).area(), 1e-9);
    assertEquals(9, less.minus(more, 1e-3).area(), 1e-9);
    assertEquals(0, more.minus(less).area(), 1e-9);
  }

  /** The frame in the middle touches nothing: one part is left round it and one within, the hole stays in that. */
  @Test
  void minus_frameInside_leavesWhatIsRoundAndWhatIsWithin() {
    Section whole = Section.of(List.of(SHELL, new double[] {9, 9, 9, 11, 11, 11, 11, 9}));
    Section frame = Section.of(
        List.of(new double[] {2, 2, 18, 2, 18, 18, 2, 18}, new double[] {4, 4, 4, 16, 16, 16, 16, 4}));
    Section difference = whole.minus(frame);
    assertEquals(400 - 4 - 256 + 144, difference.area(), 1e-9);
    assertEquals(2, difference.pieces(0).size());
    assertTrue(difference.holds(1, 1) && difference.holds(5, 5));
    assertFalse(difference.holds(3, 3) || difference.holds(10, 10));
    assertEquals(difference.area(), whole.minus(frame, 1e-3).area(), 1e-9);
  }

  /** Where outlines meet in one corner, nothing is put together. */
  @Test
  void minus_insideButForACorner_isTheDifference() {
    Section inside = Section.of(List.of(new double[] {1, 1, 19, 1, 20, 10, 10, 19}));
    assertEquals(400 - inside.area(), Section.of(List.of(SHELL)).minus(inside).area(), 1e-9);
  }
}
