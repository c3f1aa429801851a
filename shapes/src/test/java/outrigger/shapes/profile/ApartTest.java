package outrigger.shapes.profile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import outrigger.shapes.num.Grid;

class ApartTest {
  private static final long SEED = 91_320;

  /** The general way, JTS, is the yardstick. */
  @Test
  void unionAndDifference_anyProfiles_areThoseOfTheGeneralWay() {
    Random random = new Random(SEED);
    int joined = 0;
    int cut = 0;
    for (int i = 0; i < 3000; i++) {
      List<List<Region>> parts = new ArrayList<>();
      for (int n = random.nextInt(5) + 1; n > 0; n--) {
        parts.add(any(random, 2).regions());
      }
      String where = "seed " + SEED + ", case " + i;
      List<Region> union = Overlays.union(parts);
      Optional<List<Region>> quick = Apart.union(parts);
      assertEquals(union, quick.orElse(union), where);
      joined += quick.isPresent() ? 1 : 0;
      List<Region> from = any(random, random.nextBoolean() ? 8 : 1).regions();
      Optional<List<Region>> left = Apart.difference(from, union);
      if (left.isPresent()) {
        cut++;
        assertEquals(Overlays.difference(from, union), left.get(), where);
      }
    }
    assertTrue(joined > 300 && cut > 300, joined + " joined, " + cut + " cut");
  }

  @Test
  void isWithin_anyProfiles_isWhetherTheGeneralWayLeavesNothing() {
    Random random = new Random(SEED);
    int within = 0;
    int seen = 0;
    for (int i = 0; i < 3000; i++) {
      Profile profile = any(random, 1);
      Profile area = any(random, 8);
      area = random.nextBoolean() ? area : area.cut(any(random, 2)).join(any(random, 4));
      boolean all = Overlays.difference(profile.regions(), area.regions()).isEmpty();
      assertEquals(all, profile.isWithin(area), "seed " + SEED + ", case " + i);
      within += all ? 1 : 0;
      seen += StickingOut.isSeen(profile.regions(), area.regions()) ? 1 : 0;
    }
    assertTrue(within > 300 && seen > 300, within + " within, " + seen + " seen to stick out");
  }

  @Test
  void isWithin_byGridSteps_isToldExactly() {
    Profile area = Profile.rectangle(20, 20);
    for (int steps = -40; steps <= 40; steps++) {
      double out = 5 + steps * Grid.STEP;
      assertEquals(steps <= 0, Profile.rectangle(10, 10).move(out, 0).isWithin(area), steps + " steps");
    }
  }

  /** A disc, plate, slot or ring on a coarse raster, so that many touch. */
  private static Profile any(Random random, int size) {
    double wide = size * (1 + random.nextInt(3)) / 2.0;
    Profile profile = switch (random.nextInt(5)) {
      case 0 -> Profile.hole(wide);
      case 1 -> Profile.rectangle(wide, wide * 0.75);
      case 2 -> Profile.slot(wide * 1.5, wide * 0.5);
      case 3 -> Profile.hexagon(wide);
      default -> Profile.post(wide).cut(Profile.hole(wide / 2));
    };
    return profile.move(random.nextInt(13) - 6, random.nextInt(13) - 6);
  }
}
