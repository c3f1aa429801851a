package outrigger.generator.magnet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/** Laws that follow from the physics, whatever the numbers. */
class CouplingPropertyTest {
  private static final long SEED = 7_352_411;
  private static final double MU0 = 4e-7 * Math.PI;

  /** Two discs and a gap. */
  private record Case(Disc one, Disc other, double gap) {}

  private static void forAll(Consumer<Case> law) {
    Random random = new Random(SEED);
    for (int i = 0; i < 200; i++) {
      Case c = new Case(disc(random), disc(random), i % 7 == 0 ? 0 : 8 * random.nextDouble());
      try {
        law.accept(c);
      } catch (AssertionError e) {
        throw new AssertionError("seed " + SEED + ", case " + i + ": " + c, e);
      }
    }
  }

  private static Disc disc(Random random) {
    return new Disc(2 + 13 * random.nextDouble(), 0.5 + 6 * random.nextDouble());
  }

  private static void same(double expected, double actual) {
    assertEquals(expected, actual, 1e-11 * Math.abs(expected));
  }

  /** Newton's third law. */
  @Test
  void pull_swapped_isTheSame() {
    forAll(c -> same(Coupling.pair(c.one, c.other).pull(c.gap), Coupling.pair(c.other, c.one).pull(c.gap)));
  }

  @Test
  void pull_stack_isThatOfOneThickerMagnet() {
    forAll(c -> {
      Disc stacked = new Disc(c.one.diameter(), 2 * c.one.thickness());
      same(Coupling.pair(stacked, c.other).pull(c.gap), Coupling.pair(c.one, c.other).pull(c.gap)
          + Coupling.pair(c.one, c.other).pull(c.gap + c.one.thickness()));
    });
  }

  @Test
  void pull_everythingScaled_growsWithTheSquare() {
    forAll(c -> {
      Coupling twice = Coupling.pair(new Disc(2 * c.one.diameter(), 2 * c.one.thickness()),
          new Disc(2 * c.other.diameter(), 2 * c.other.thickness()));
      same(4 * Coupling.pair(c.one, c.other).pull(c.gap), twice.pull(2 * c.gap));
    });
  }

  @Test
  void pull_equalDiscs_fallsAsTheGapOpens() {
    forAll(c -> {
      Coupling pair = Coupling.pair(c.one, new Disc(c.one.diameter(), c.other.thickness()));
      assertTrue(pair.pull(c.gap) > pair.pull(c.gap + 0.01) && pair.pull(c.gap + 0.01) > 0);
    });
  }

  @Test
  void pull_thicker_isStronger() {
    forAll(c -> {
      Disc thicker = new Disc(c.one.diameter(), c.one.thickness() + 0.5);
      assertTrue(Coupling.pair(thicker, c.other).pull(c.gap) > Coupling.pair(c.one, c.other).pull(c.gap));
    });
  }

  @Test
  void pull_steel_isThatOfThePairAtTwiceTheGap() {
    forAll(c -> same(Coupling.pair(c.one, c.one).pull(2 * c.gap), Coupling.steel(c.one).pull(c.gap)));
  }

  /** A small disc over a large one: the pull grows up to some 2 mm, then falls. */
  @Test
  void pull_smallOverLarge_risesFirst() {
    Coupling pair = Coupling.pair(new Disc(6, 2), new Disc(20, 5));
    double[] gaps = {0, 0.5, 1, 1.5};
    for (int i = 1; i < gaps.length; i++) {
      assertTrue(pair.pull(gaps[i]) > pair.pull(gaps[i - 1]), "gap " + gaps[i]);
    }
    assertTrue(pair.pull(3) < pair.pull(2));
  }

  /** Far away: 3 V1 V2 / (2 pi mu0 r^4) for 1 T, r between middles; what is left out falls with the square of r. */
  @Test
  void pull_farAway_isThatOfTwoDipoles() {
    Disc one = new Disc(6, 2);
    Disc other = new Disc(10, 3);
    double before = 0;
    for (double r : new double[] {100, 200, 400}) {
      double dipoles = 3 * one.area() * one.thickness() * other.area() * other.thickness()
          / (2 * Math.PI * MU0 * r * r * r * r) * 1e-6;
      double error = Coupling.pair(one, other).pull(r - 2.5) / dipoles - 1;
      assertTrue(Math.abs(error) < 0.02 * (100 / r) * (100 / r), r + " mm: " + error);
      if (before != 0) {
        assertEquals(4, before / error, 0.05);
      }
      before = error;
    }
  }

  /** Long rods in contact: Br^2 A / (2 mu0), the one case where the short formula is right. */
  @Test
  void pull_longRodsInContact_isThatOfTheFieldInTheJoint() {
    Disc rod = new Disc(6, 1000);
    assertEquals(1, Coupling.pair(rod, rod).pull(0) / (rod.area() * 1e-6 / (2 * MU0)), 1e-5);
  }

  @Test
  void pull_nearlyEqualRadii_isContinuous() {
    double equal = Coupling.pair(new Disc(6, 2), new Disc(6, 2)).pull(0);
    assertEquals(equal, Coupling.pair(new Disc(6, 2), new Disc(6 + 1e-9, 2)).pull(0), 1e-7 * equal);
    assertEquals(equal, Coupling.pair(new Disc(6, 2), new Disc(6, 2)).pull(1e-12), 1e-7 * equal);
  }

  @Test
  void centring_middleAndSteel_isNone() {
    assertEquals(0, Coupling.pair(new Disc(6, 2), new Disc(8, 2)).centring(0.5, 0));
    assertEquals(0, Coupling.steel(new Disc(6, 2)).centring(0.5, 1));
  }

  @Test
  void pull_noGap_isRefused() {
    assertThrows(IllegalArgumentException.class, () -> Coupling.steel(new Disc(6, 2)).pull(-0.1));
    assertThrows(IllegalArgumentException.class, () -> Coupling.steel(new Disc(6, 2)).pull(Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> new Disc(0, 2));
    assertThrows(IllegalArgumentException.class, () -> new Disc(6, Double.NaN));
    assertThrows(IllegalArgumentException.class,
        () -> new Coupling(Facing.STEEL, new Disc(6, 2), new Disc(8, 2)));
  }
}
