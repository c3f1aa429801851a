package outrigger.shapes.mesh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** A short run of the campaign; {@link KernelCampaign} runs it at length. */
class KernelCampaignTest {

  @Test
  void evaluate_randomExpressions_soundOrTouching() {
    KernelCampaign.Tally tally = KernelCampaign.run(1, 1500, 2, 12);
    assertEquals(List.of(), tally.failures());
    assertTrue(tally.sound() > 1000, tally.toString());
  }

  @Test
  void evaluate_largeRandomExpressions_soundOrTouching() {
    KernelCampaign.Tally tally = KernelCampaign.run(1_000_000, 10, 100, 150);
    assertEquals(List.of(), tally.failures());
  }
}
