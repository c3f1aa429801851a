package outrigger.generator.param;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class ParamSpecTest {
  record Undeclared(double length) {}

  record Interpreted(@Param(def = "1", help = "See ${user.name}.") double length) {}

  record Unfit(@Param(def = "1", help = "Text.") Object thing) {}

  record Twisted(@Param(def = "1", min = 3, max = 2, help = "Text.") double length) {}

  @Test
  void of_componentWithoutParam_isRefused() {
    assertTrue(assertThrows(IllegalArgumentException.class, () -> ParamSpec.of(Undeclared.class)).getMessage()
        .contains("Undeclared.length has no @Param"));
  }

  @Test
  void of_helpThatAParserWouldInterpret_isRefused() {
    assertThrows(IllegalArgumentException.class, () -> ParamSpec.of(Interpreted.class));
  }

  @Test
  void of_typeWithoutForm_isRefused() {
    assertThrows(IllegalArgumentException.class, () -> ParamSpec.of(Unfit.class));
  }

  @Test
  void of_rangeUpsideDown_isRefused() {
    assertThrows(IllegalArgumentException.class, () -> ParamSpec.of(Twisted.class));
  }

  @Test
  void nearMiss_swappedLetters_findsTheWord() {
    assertEquals(List.of("post-height"), NearMiss.of("psot-height", List.of("reach", "post-height", "lean")));
    assertEquals("Known are: reach, lean.", NearMiss.advice("xyz", List.of("reach", "lean")));
  }
}
