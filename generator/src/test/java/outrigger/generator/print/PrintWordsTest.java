package outrigger.generator.print;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import outrigger.shapes.print.Concern;
import outrigger.shapes.print.Limit;
import outrigger.shapes.print.PrintLimits;
import outrigger.shapes.print.PrintReport;
import outrigger.shapes.print.Severity;

class PrintWordsTest {
  private static String line(String rule, double measured, double bound) {
    Concern concern = new Concern(rule, Severity.ERROR, 1, 2, 3, measured, bound, Limit.LEDGE, 4, "it hangs", "Hold it.");
    return PrintWords.concerns(new PrintReport(PrintLimits.standard(), List.of(concern), List.of(), List.of(), List.of(),
        Optional.empty())).get(0);
  }

  @Test
  void concerns_limit_measuredAndLimitTold() {
    assertEquals("  ERROR ledge at (1, 2, 3): it hangs (0.7, limit 0.5 mm by ledge). Hold it.", line("ledge", 0.7, 0.5));
    assertEquals("  ERROR ledge at (1, 2, 3): it hangs (0.7, limit 0 mm by ledge). Hold it.", line("ledge", 0.7, 0));
  }

  /** No limit can be set for these: the words tell what was measured and that none passes. */
  @Test
  void concerns_island_noLimitTold() {
    assertEquals("  ERROR island at (1, 2, 3): it hangs (8.94 mm across where it starts; nothing may start in the air, "
        + "however small). Hold it.", line("island", 8.944, 0));
  }
}
