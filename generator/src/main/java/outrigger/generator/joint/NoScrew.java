package outrigger.generator.joint;

import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;
import outrigger.generator.param.Fault;
import outrigger.presets.Screw;
import outrigger.presets.Shelf;

/**
 * A joint that no length of its screw suits, and the nearest thing that works.
 *
 * @param lengths there are of the screw, rising, mm
 */
record NoScrew(NamedJoint of, TreeSet<Double> lengths, Shelf shelf) {
  /** Other screws named in advice, at most. */
  private static final int OTHERS = 3;

  Fault fault() {
    Joint joint = of.joint();
    String what = joint.name() + ": " + joint.screw().name() + " must be " + words(joint.shortest()) + " to "
        + words(joint.longest()) + " mm long (" + grip(joint) + ", then the " + joint.thread().name() + "), but "
        + (lengths.isEmpty() ? "no length of it is known"
            : "it comes in " + lengths.stream().map(Lengths::words).collect(Collectors.joining(", ")));
    return Fault.of(of.part(), what + (of.where().line() > 0 ? " (part at " + of.where().words() + ")" : ""), advice(),
        of.where());
  }

  static String grip(Joint joint) {
    return joint.grip().stream().map(m -> m.name() + " " + (m.least() == m.most() ? words(m.least())
        : words(m.least()) + " to " + words(m.most()))).collect(Collectors.joining(" + "));
  }

  private String advice() {
    Joint joint = of.joint();
    Double under = lengths.floor(joint.shortest());
    Double over = lengths.ceiling(joint.longest());
    StringBuilder advice = new StringBuilder();
    if (under != null) {
      advice.append("With ").append(words(under)).append(" mm, what is clamped must be ")
          .append(words(joint.shortest() - under)).append(" mm thinner. ");
    }
    if (over != null) {
      advice.append("With ").append(words(over)).append(" mm, put ").append(words(over - joint.longest()))
          .append(" mm more under the head or the nut. ");
    }
    List<String> others = others();
    if (!others.isEmpty()) {
      advice.append("Or use ").append(String.join(" or ", others)).append(". ");
    }
    return advice.isEmpty() ? "Choose a screw that the table stock-lengths lists." : advice.toString().strip();
  }

  /** Screws of the same size that sit alike and come in a length that will do. */
  private List<String> others() {
    Screw mine = of.joint().screw();
    return shelf.items(Screw.class).stream()
        .filter(s -> s.size().equals(mine.size()) && s.isCountersunk() == mine.isCountersunk() && !s.equals(mine))
        .flatMap(s -> Lengths.of(s, shelf).usual().stream().filter(of.joint()::takes).limit(1)
            .map(length -> Articles.of(s, length).article())).limit(OTHERS).toList();
  }

  private static String words(double mm) {
    return Lengths.words(mm);
  }
}
