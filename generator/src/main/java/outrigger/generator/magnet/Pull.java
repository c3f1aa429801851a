package outrigger.generator.magnet;

/** The pull of two discs of given strength over a gap, N. */
public final class Pull {
  /** Places in a range of gaps at which the force is looked at, since it need not fall as the gap opens. */
  private static final int PLACES = 16;

  private final Coupling coupling;
  private final Strength one;
  private final Strength other;

  Pull(Coupling coupling, Strength one, Strength other) {
    this.coupling = coupling;
    this.one = one;
    this.other = other;
  }

  /** Along the axis. */
  public Force at(double gap) {
    return Force.of(coupling.pull(gap), one, other);
  }

  /** Along the axes, pushed aside; below 0 where they push each other off. */
  Force aside(double gap, double offset) {
    return Force.of(coupling.pullAside(gap, offset), one, other);
  }

  /** Back to one axis, pushed aside. */
  Force centring(double gap, double offset) {
    return Force.of(coupling.centring(gap, offset), one, other);
  }

  /** Of the weakest magnets at the worst gap of a range, of the strongest at the best; the middle at the middle gap. */
  Force over(Gap gap) {
    double least = Double.MAX_VALUE;
    double greatest = 0;
    for (int i = 0; i <= PLACES; i++) {
      Force force = at(gap.least() + (gap.greatest() - gap.least()) * i / PLACES);
      least = Math.min(least, force.least());
      greatest = Math.max(greatest, force.greatest());
    }
    return new Force(least, at(gap.nominal()).middle(), greatest);
  }
}
