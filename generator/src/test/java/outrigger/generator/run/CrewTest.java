package outrigger.generator.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CrewTest {
  private static final List<Integer> ITEMS = IntStream.range(0, 100).boxed().toList();

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 7, 200})
  void each_anyNumberOfThreads_keepsTheOrder(int threads) {
    assertEquals(ITEMS.stream().map(i -> i * i).toList(), new Crew(threads).each(ITEMS, i -> i * i));
  }

  @Test
  void each_defectInOne_isThrownAsItIs() {
    IllegalStateException e = assertThrows(IllegalStateException.class, () -> new Crew(2).each(ITEMS, i -> {
      if (i == 50) {
        throw new IllegalStateException("fifty");
      }
      return i;
    }));
    assertEquals("fifty", e.getMessage());
  }
}
