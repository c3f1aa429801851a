package outrigger.shapes.campaign;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A short run of the campaign; {@link Campaign} runs it at length. */
class CampaignTest {
  @Test
  void run_smallExpressions_keepsVolumesAndNeverFails() throws Exception {
    Tally tally = new Campaign(2, Optional.ofNullable(System.getenv("OUTRIGGER_JUDGE")))
        .run(RandomExpression::small, 1, 300, 60);
    assertEquals(List.of(), tally.failures());
    assertTrue(tally.count("expressions: sound") > 150, tally.text());
  }

  @Test
  void run_oddFamilies_keepsVolumesAndNeverFails() throws Exception {
    Tally tally = new Campaign(2, Optional.ofNullable(System.getenv("OUTRIGGER_JUDGE")))
        .run(RandomExpression::odd, 1, 4 * OddOperand.FAMILIES, 20);
    assertEquals(List.of(), tally.failures());
    assertTrue(tally.count("expressions: sound") > 2 * OddOperand.FAMILIES, tally.text());
  }

  @Test
  void run_operandsAllButAlike_comesToRest() throws Exception {
    Tally tally = new Campaign(2, Optional.ofNullable(System.getenv("OUTRIGGER_JUDGE")))
        .run(RandomExpression::close, 101, 20, 10);
    assertEquals(List.of(), tally.failures());
    assertEquals(0, tally.count("refusals: rounding does not settle"), tally.text());
    assertTrue(tally.count("expressions: sound") > 10, tally.text());
  }

  @Test
  void run_largeExpressions_keepsVolumesAndNeverFails() throws Exception {
    Tally tally = new Campaign(2, Optional.ofNullable(System.getenv("OUTRIGGER_JUDGE")))
        .run(RandomExpression::large, 1, 1, 1);
    assertEquals(List.of(), tally.failures());
  }
}
