package outrigger.generator.load;

import java.util.List;
import java.util.Optional;
import outrigger.shapes.mesh.Mesh;

/**
 * A post that a jolt pulls at its head, in its build axes; mm.
 *
 * @param part its name
 * @param mesh the part
 * @param root height where it leaves the flange
 * @param neck height below which its section counts: the floor of its pocket
 * @param headX x of the magnet's middle
 * @param headY y of it
 * @param head height of the head's top face, where the body pushes
 */
public record Post(String part, Mesh mesh, double root, double neck, double headX, double headY, double head) {
  /** Layers looked at are this far apart, mm. */
  private static final double STEP = 0.25;

  private record Jolt(String words, double x, double y, double z) {}

  private static final List<Jolt> JOLTS = List.of(new Jolt("forward or back", 1, 0, 0), new Jolt("forward or back", -1, 0, 0),
      new Jolt("to the side", 0, 1, 0), new Jolt("to the side", 0, -1, 0), new Jolt("upward", 0, 0, 1),
      new Jolt("downward", 0, 0, -1));

  /**
   * Its worst layer under a force that may come from any of six sides, one at a time.
   *
   * @param force N, above 0
   */
  public Optional<Bent> bend(double force, Strength strength) {
    Optional<Bent> worst = Optional.empty();
    for (double z = root; z < neck; z += STEP) {
      Optional<Section> section = Section.of(mesh, z);
      if (section.isPresent()) {
        for (Jolt jolt : JOLTS) {
          double stress = stress(section.get(), jolt, force);
          if (stress > worst.map(Bent::stress).orElse(0.0)) {
            worst = Optional.of(new Bent(part, "post", section.get().z(), jolt.words, force, stress, strength));
          }
        }
      }
    }
    return worst;
  }

  private double stress(Section section, Jolt jolt, double force) {
    double lever = head - section.z();
    double alongX = force * (jolt.z * (headX - section.x()) - jolt.x * lever);
    double alongY = force * (jolt.z * (headY - section.y()) - jolt.y * lever);
    return section.tension(force * jolt.z, alongX, alongY);
  }
}
