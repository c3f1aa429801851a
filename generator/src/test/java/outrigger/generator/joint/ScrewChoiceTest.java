package outrigger.generator.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import outrigger.generator.param.InputException;
import outrigger.generator.param.Origin;
import outrigger.presets.Screw;
import outrigger.presets.Shelf;

class ScrewChoiceTest {
  private static final Shelf SHELF = Shelf.standard();

  /** An M3 nut is 2.4 high, ISO 4032, and its thread has a pitch of 0.5, ISO 262. */
  private static Joint joint(String screw, double grip, int count) {
    Screw s = SHELF.get(Screw.class, screw);
    List<ScrewPlace> places = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      places.add(new ScrewPlace(i, 0, 0, 0, 0, -1));
    }
    return new Joint("joint", s, List.of(Member.of("web", grip)), ScrewThread.nut(2.4, s.diameter(), s.pitch()),
        new Head(3, 0), List.of(new Piece(Piece.Kind.NUT, "M3 nut (ISO 4032)", 1)), places, "", Lengths.of(s, SHELF));
  }

  private static Fitted part(String name, Joint... joints) {
    return new Fitted(name, name, new Fixings(List.of(joints), List.of()), Origin.DEFAULT);
  }

  private static HardwareList list(Stock stock, Fitted... parts) {
    return HardwareList.of(List.of(parts), stock, SHELF);
  }

  private static List<Double> lengths(HardwareList list) {
    return list.screws().joints().stream().map(Chosen::length).toList();
  }

  @Test
  void joint_throughNut_statesRangeThreadAndEnd() {
    Joint joint = joint("M3-socket", 6, 2);
    assertEquals(6 + 2.4 + 0.5, joint.shortest(), 1e-9);
    assertEquals(6 + 2.4 + 2 * 3, joint.longest(), 1e-9);
    assertEquals(List.of(10.0, 12.0), joint.usual());
    assertEquals(2.4, joint.engagement(10), 1e-9);
    assertEquals(1.6, joint.protrusion(10), 1e-9);
    assertEquals(1.0, joint.engagement(7), 1e-9);
  }

  /** Lengths in brackets: 14, as in ISO 1207, page "ISO 1207 - Dimensions, range of commercial lengths". */
  @Test
  void lengths_m3Socket_areFirstAndSecondChoice() {
    Lengths lengths = Lengths.of(SHELF.get(Screw.class, "M3-socket"), SHELF);
    assertEquals(List.of(5.0, 6.0, 8.0, 10.0, 12.0, 16.0, 20.0, 25.0, 30.0), lengths.usual());
    assertEquals(List.of(14.0, 18.0, 22.0, 28.0), lengths.odd());
    assertTrue(Lengths.of(SHELF.get(Screw.class, "M2-pan-hexalobular"), SHELF).usual().contains(16.0));
  }

  /** Ranges 8.9 to 14.4 and 10.9 to 16.4 share 12 alone of the usual lengths, and 14. */
  @Test
  void of_overlappingRanges_takeOneUsualLength() {
    HardwareList list = list(Stock.NONE, part("a", joint("M3-socket", 6, 2)), part("b", joint("M3-socket", 8, 3)));
    assertEquals(List.of(12.0, 12.0), lengths(list));
    HardwareLine screws = list.lines().get(0);
    assertEquals("M3-socket x 12", screws.article());
    assertEquals(5, screws.count());
    assertEquals(1, screws.spares());
    assertEquals(6, screws.toBuy());
    assertEquals(List.of("2 for a, joint", "3 for b, joint"), screws.uses());
    assertEquals("M3 nut (ISO 4032)", list.lines().get(1).article());
  }

  @Test
  void of_threeRanges_sayWhichTwoShareNone() {
    HardwareList list = list(Stock.NONE, part("a", joint("M3-socket", 2, 2)), part("b", joint("M3-socket", 6, 2)),
        part("c", joint("M3-socket", 14, 2)));
    assertEquals(2, list.articles());
    assertEquals(List.of("No fewer than 2 lengths of M3-socket will do: no two of these share one: a, joint (4.9 to "
        + "10.4 mm); c, joint (16.9 to 22.4 mm)."), list.screws().proofs());
  }

  @Test
  void of_stock_isPreferredAmongEquals() {
    Fitted part = part("a", joint("M3-socket", 6, 2));
    assertEquals(List.of(10.0), lengths(list(Stock.NONE, part)));
    assertEquals(List.of(12.0), lengths(list(new Stock(Map.of("M3-socket x 12", 2)), part)));
    assertEquals(List.of(12.0), lengths(list(new Stock(Map.of("M3-socket x 12", 4, "M3-socket x 10", 1)), part)));
  }

  /** Grips 9.5 and 7.5: 12.4 to 17.9 and 10.4 to 15.9; grip 11: 13.9 to 19.4. Only 14 suits all three. */
  @Test
  void of_oddLength_isTakenWhereItSparesAnArticle() {
    HardwareList list = list(Stock.NONE, part("a", joint("M3-socket", 9.5, 1)), part("b", joint("M3-socket", 7.5, 1)),
        part("c", joint("M3-socket", 11, 1)));
    assertEquals(List.of(14.0, 14.0, 14.0), lengths(list));
    assertEquals(List.of(16.0, 16.0), lengths(list(Stock.NONE, part("a", joint("M3-socket", 9.5, 1)),
        part("c", joint("M3-socket", 11, 1)))));
  }

  @Test
  void of_setOfParts_countsTheScrewsOfOne() {
    Fixings thin = new Fixings(List.of(joint("M3-socket", 6, 2).oneOf("set")), List.of());
    HardwareList list = HardwareList.of(List.of(new Fitted("s-1", "s", thin, Origin.DEFAULT),
        new Fitted("s-2", "s", thin, Origin.DEFAULT)), Stock.NONE, SHELF);
    assertEquals(2, list.lines().get(0).count());
    assertEquals(2, list.lines().get(1).count());
    assertEquals("2 for s-1, joint (one of a set)", list.lines().get(0).uses().get(0));
  }

  @Test
  void of_impossibleRanges_nameTheNearestThingThatWorks() {
    InputException e = assertThrows(InputException.class, () -> list(Stock.NONE,
        part("a", joint("M5-pan", 42, 2)), part("b", joint("M3-socket", 40, 2))));
    assertEquals(2, e.faults().size());
    assertEquals("With 45 mm, what is clamped must be 0.2 mm thinner. Or use M5-socket x 50 or M5-button x 50.",
        e.faults().get(0).advice());
    assertEquals("b: joint: M3-socket must be 42.9 to 48.4 mm long (web 40, then the nut), but it comes in 5, 6, 8, 10, "
        + "12, 14, 16, 18, 20, 22, 25, 28, 30. With 30 mm, what is clamped must be 12.9 mm thinner.",
        e.faults().get(1).message());
  }

  @Test
  void of_lengthOnHandBesideTheTables_comesIn() {
    HardwareList list = list(new Stock(Map.of("M3-socket x 45", 2)), part("b", joint("M3-socket", 40, 2)));
    assertEquals(List.of(45.0), lengths(list));
    assertEquals(1, list.lines().get(0).toBuy());
  }
}
