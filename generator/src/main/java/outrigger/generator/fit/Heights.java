package outrigger.generator.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import outrigger.generator.accessory.Words;
import outrigger.generator.magnet.Facing;
import outrigger.generator.param.Fault;
import outrigger.generator.param.Measure;
import outrigger.generator.truck.MountParams;
import outrigger.generator.truck.Told;
import outrigger.presets.DiscMagnet;
import outrigger.presets.Printer;

/** Solves the height of one station: the chain from the rails' tops up to the body's floor. */
final class Heights {
  static final String FLOOR = "floor";
  static final String POST = "post";
  /** How far a mount's magnet lies below its head, mm, as body-mount draws it. */
  static final double BELOW_HEAD = 0.2;
  /** How far a disc's thickness may be off, mm; suppliers give 0.05 ground to 0.1. */
  private static final double DISC_OFF = 0.05;
  /** What measured and glued things may be off where nothing is said, mm; common practice with callipers. */
  private static final double MEASURED_OFF = 0.1;

  private final Told<MountParams> mount;
  private final MountParams p;
  private final Printer printer;

  Heights(Told<MountParams> mount, Printer printer) {
    this.mount = mount;
    this.p = mount.record();
    this.printer = printer;
  }

  /** The chain: all that stands on each other, less the floor they reach. */
  StackUp chain(DiscMagnet magnet, int stack) {
    double discs = stack * magnet.thickness();
    List<Member> all = new ArrayList<>();
    // What a printer is off, it is off in one direction: half a layer, as heights come out in whole ones.
    all.add(Member.of(POST, 1, p.post(), printer.layer() / 2, true));
    all.add(Member.of("pocket-floor", 1, p.pocketFloor(), 0, true));
    all.add(new Member("magnet", 1, Measure.of(discs, stack * DISC_OFF), stack * DISC_OFF, false));
    all.add(Member.of("gap", 1, p.gap(), 0, true));
    all.add(Member.of("glue", 1, p.glue(), 0, false));
    if (p.facing() == Facing.STEEL) {
      all.add(Member.of("steel", 1, p.steel(), DISC_OFF, false));
    } else {
      all.add(new Member("facing magnet", 1, Measure.of(discs, stack * DISC_OFF), stack * DISC_OFF, false));
    }
    all.add(Member.of("pad", 1, p.pad(), MEASURED_OFF, false));
    all.add(Member.of(FLOOR, -1, p.floor(), MEASURED_OFF, false));
    return new StackUp(all);
  }

  /** What is wrong with a chain, before and after it is solved. */
  Optional<Fault> fault(StackUp chain) {
    List<Member> free = chain.free();
    if (free.size() > 1) {
      List<String> names = free.stream().map(Member::name).toList();
      return Optional.of(mount.fault(names.get(0), "the stack is under-determined: " + String.join(" and ", names)
          + " are all left to be solved, and only one can be", "Measure all but one of them."));
    }
    if (free.isEmpty()) {
      return fight(chain);
    }
    return negative(chain.solved().member(free.get(0).name()), chain);
  }

  private Optional<Fault> fight(StackUp chain) {
    double sum = chain.sum();
    double most = chain.spread("").worst();
    if (Math.abs(sum) <= most) {
      return Optional.empty();
    }
    double floor = p.floor().mm() + sum;
    double post = p.post().mm() - sum;
    return Optional.of(mount.fault(FLOOR, "the stack is over-determined and its values fight: " + chain.words(1) + " = "
        + Words.mm(floor) + ", but " + chain.words(-1) + ", " + Words.mm(Math.abs(sum)) + " apart where all tolerances "
        + "together allow " + Words.mm(most), "Write solve for one of them; what would fit: floor " + Words.number(floor)
        + (post > 0 ? ", or post " + Words.number(post) : "") + "."));
  }

  private Optional<Fault> negative(Member solved, StackUp chain) {
    boolean isBelow = !p.floor().isFree() && p.floor().mm() <= 0;
    if (solved.name().equals(FLOOR) || solved.size().mm() >= 0) {
      return Optional.empty();
    }
    double rest = chain.sum() + (p.floor().isFree() ? 0 : p.floor().mm());
    String low = isBelow ? "the body's floor lies " + Words.mm(-p.floor().mm()) + " below the rails' tops, and what must "
        + "stand between takes " : "the body's floor is " + Words.mm(p.floor().mm())
        + " over the rails' tops, but what must stand between takes ";
    return Optional.of(mount.fault(FLOOR, low + Words.mm(rest) + " (" + chain.words(1) + ") without the "
        + solved.name(), "The lowest floor that works is " + Words.mm(rest) + "; thinner magnets, floor or pad bring it "
        + "down."));
  }
}
