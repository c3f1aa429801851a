package outrigger.generator.param;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class FaultTest {
  @Test
  void message_noAdvice_endsWithItsFullStop() {
    assertEquals("own.toml: thickness is 0.", Fault.of("own.toml", "thickness is 0", "", Origin.DEFAULT).message());
  }

  @Test
  void message_advice_followsWhatIsWrong() {
    assertEquals("own.toml: thickness is 0. Use more.",
        Fault.of("own.toml", "thickness is 0", "Use more.", Origin.DEFAULT).message());
  }
}
