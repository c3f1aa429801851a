package outrigger.generator.fit;

import outrigger.generator.magnet.Hold;
import outrigger.presets.DiscMagnet;

/**
 * Magnets of a station: one stack in each of its mounts, and as many again in the body where it faces magnets.
 *
 * @param magnet the disc
 * @param stack discs on each other in a pocket
 * @param discs how many the station takes in all
 * @param hold what one of its mounts holds, against what is most asked of one
 */
public record Choice(DiscMagnet magnet, int stack, int discs, Hold hold) {
  /** Volume of all its discs, mm^3. */
  double volume() {
    return discs * Math.PI * magnet.diameter() * magnet.diameter() / 4 * magnet.thickness();
  }
}
