package outrigger.presets;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class NearNamesTest {
  @Test
  void of_oneSlip_findsTheName() {
    List<String> known = List.of("screws", "nuts", "disc-magnets", "rails");
    assertEquals(List.of("disc-magnets"), NearNames.of("disk-magnets", known));
    assertEquals(List.of("disc-magnets"), NearNames.of("DISCMAGNETS", known));
    assertEquals(List.of("rails"), NearNames.of("rials", known));
    assertEquals(List.of("nuts"), NearNames.of("nut", known));
    assertEquals(List.of(), NearNames.of("printers", known));
  }

  @Test
  void of_swappedNeighbours_isOneSlip() {
    assertEquals(List.of("ab"), NearNames.of("ba", List.of("ab")));
  }

  @Test
  void of_equallyNear_putsCloserNumbersFirst() {
    assertEquals(List.of("6x2", "8x2", "3x2"), NearNames.of("7x2", List.of("3x2", "6x2", "8x2", "2x2")));
  }

  @Test
  void of_empty_findsNothing() {
    assertEquals(List.of(), NearNames.of("", List.of("M3")));
    assertEquals(List.of(), NearNames.of("M3", List.of()));
  }
}
