package outrigger.shapes.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import outrigger.shapes.check.Proof.Verdict;

/** Sound meshes pass, and weigh the same turned, mirrored, moved and reordered. */
class ProofSoundTest {
  @Test
  void judge_soundMeshesPlacedSixWays_proven() {
    int judged = 0;
    for (Map.Entry<String, Soup> e : SoundMeshes.all().entrySet()) {
      Soup soup = e.getValue();
      Measures first = proven(e.getKey(), soup);
      Soup moved = soup.copy();
      boolean largest = e.getKey().equals("largestBox");
      List<Soup> ways = List.of(moved.cycle().copy(), moved.quarter().copy(), moved.reverseOrder().copy(),
          moved.mirror().copy(), largest ? moved.copy() : moved.move(1, -2, 3).copy());
      for (int i = 0; i < ways.size(); i++) {
        String what = e.getKey() + ", way " + i;
        Measures m = proven(what, ways.get(i));
        assertEquals(first.volume(), m.volume(), what);
        assertEquals(first.area(), m.area(), 1e-14 * first.area(), what);
        assertEquals(List.of(first.genus(), first.shells(), first.pieces(), first.vertices()),
            List.of(m.genus(), m.shells(), m.pieces(), m.vertices()), what);
      }
      judged += 1 + ways.size();
    }
    assertTrue(judged >= 200, "only " + judged);
  }

  private static Measures proven(String what, Soup soup) {
    Verdict verdict = Proof.judge(soup.mesh());
    assertEquals(List.of(), verdict.findings(), what);
    assertEquals(List.of(), verdict.notExamined(), what);
    assertEquals(verdict.measures(), verdict.proven().orElseThrow().measures());
    return verdict.measures();
  }
}
