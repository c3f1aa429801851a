package outrigger.shapes.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import outrigger.shapes.check.Proof.Verdict;

class ProofTest {
  private static final int MM = Meshes.MM;

  static Stream<Arguments> spoiled() {
    return SpoiledMeshes.all().entrySet().stream().map(e -> Arguments.of(e.getKey(), e.getValue()));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("spoiled")
  void judge_spoiledMesh_thoseRulesAndNoOthers(String name, SpoiledMeshes.Spoiled spoiled) {
    Verdict verdict = Proof.judge(spoiled.soup().mesh());
    assertTrue(verdict.proven().isEmpty());
    assertEquals(new TreeSet<>(spoiled.rules()), rules(verdict), () -> verdict.findings().toString());
    for (Finding f : verdict.findings()) {
      assertFalse(f.message().isBlank() || f.advice().isBlank(), f.toString());
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("spoiled")
  void judge_spoiledMeshTurnedAndReordered_sameTallies(String name, SpoiledMeshes.Spoiled spoiled) {
    List<Tally> expected = Proof.judge(spoiled.soup().mesh()).tallies();
    Soup soup = spoiled.soup().copy();
    for (int i = 0; i < 3; i++) {
      soup.cycle();
      assertEquals(expected, Proof.judge(soup.mesh()).tallies());
      assertEquals(expected, Proof.judge(soup.quarter().reverseOrder().mesh()).tallies());
      assertEquals(expected, Proof.judge(soup.mirror().mesh()).tallies());
    }
  }

  @Test
  void spoiled_gallery_hasFortyOrMore() {
    assertTrue(SpoiledMeshes.all().size() >= 40);
    Set<String> broken = SpoiledMeshes.all().values().stream().flatMap(s -> s.rules().stream())
        .collect(Collectors.toSet());
    for (Rule rule : Rule.values()) {
      assertTrue(broken.contains(rule.label()), "no spoiled mesh for " + rule.label());
    }
  }

  @Test
  void judge_oneFault_placeAndWords() {
    Finding f = only(Meshes.box(9 * MM, 9 * MM, 9 * MM).remove(2).remove(2), "open-edge", 4);
    assertEquals(9, f.z());
    assertTrue(f.message().contains("(0.000, 0.000, 9.000)"), f.message());
    f = only(Meshes.box(2 * MM, 2 * MM, 2 * MM).add(Meshes.box(MM, MM, MM).move(2 * MM, 2 * MM, 2 * MM)),
        "pinched-vertex", 1);
    assertEquals(List.of(2.0, 2.0, 2.0), List.of(f.x(), f.y(), f.z()));
    f = only(Meshes.box(9 * MM, 9 * MM, 9 * MM).add(Meshes.box(9 * MM, 9 * MM, 9 * MM).move(9 * MM, 9 * MM, 0)),
        "crowded-edge", 1);
    assertEquals(List.of(9.0, 9.0, 4.5), List.of(f.x(), f.y(), f.z()));
    assertTrue(f.message().contains("shared by 4 facets"), f.message());
    f = only(Meshes.box(9 * MM, 9 * MM, 9 * MM).add(Meshes.cone(4, 5 * MM, 5 * MM).move(3 * MM, 2 * MM, -5 * MM)),
        "facets-meet", 4);
    assertEquals(0, f.z());
    assertTrue(f.message().contains("touch"), f.message());
  }

  private static Finding only(Soup soup, String rule, int count) {
    Verdict verdict = Proof.judge(soup.mesh());
    assertEquals(List.of(new Tally(rule, count)), verdict.tallies());
    return verdict.findings().get(0);
  }

  @Test
  void judge_manyFaults_listsTwentyCountsAll() {
    Soup soup = new Soup();
    for (int i = 0; i < 50; i++) {
      soup.facet(new int[] {i, 0, 0}, new int[] {i, 1, 0}, new int[] {i, 0, 1});
    }
    Verdict verdict = Proof.judge(soup.mesh());
    assertEquals(20, verdict.findings().size());
    assertEquals(List.of(new Tally("open-edge", 150)), verdict.tallies());
    assertEquals(2, verdict.notExamined().size(), verdict.notExamined().toString());
  }

  /** 500 facets that all cross in one line: 124,750 pairs, more than are worth counting. */
  @Test
  void judge_crossingEverywhere_endsAndSaysSo() {
    Soup soup = new Soup();
    for (int i = 0; i < 500; i++) {
      soup.facet(new int[] {-900, i, -900}, new int[] {900, -i, -900}, new int[] {i, 900 + i, 900 + 7 * i});
    }
    Verdict verdict = Proof.judge(soup.mesh());
    assertTrue(verdict.tallies().contains(new Tally("facets-meet", Contacts.ENOUGH)), verdict.tallies().toString());
    assertTrue(verdict.notExamined().get(0).contains("search ended"), verdict.notExamined().toString());
  }

  static TreeSet<String> rules(Verdict verdict) {
    return verdict.findings().stream().map(Finding::rule).collect(Collectors.toCollection(TreeSet::new));
  }

  /** Each straddles the other's planes, and still no more meets than an edge with an edge. */
  @Test
  void judge_ridgesThatTouchAcrossEachOther_doNotCross() {
    int[][] low = {{-2, 0, 0}, {2, 0, 0}, {0, -1, -2}, {0, 1, -2}};
    int[][] high = {{0, -2, 0}, {0, 2, 0}, {-1, 0, 2}, {1, 0, 2}};
    Soup ridges = new Soup();
    for (int[][] p : new int[][][] {low, high}) {
      ridges.facet(p[0], p[2], p[1]).facet(p[0], p[1], p[3]).facet(p[0], p[3], p[2]).facet(p[1], p[2], p[3]);
    }
    Proof.Verdict verdict = Proof.judge(ridges.mesh());
    assertTrue(verdict.proven().isEmpty());
    verdict.findings().forEach(
        f -> assertTrue(f.message().endsWith("touch where they share no corner or edge"), f.message()));
  }
}
