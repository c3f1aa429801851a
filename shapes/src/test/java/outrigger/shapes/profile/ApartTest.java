package outrigger.shapes.profile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

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
