package outrigger.shapes.profile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

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
}
