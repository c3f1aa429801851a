/**
 * What a magnet holds: the pull between two disc magnets or a disc and steel, the gap a print really leaves, and
 * whether the body stays on.
 *
 * <p>Data flows one way: {@link outrigger.generator.magnet.HoldParams} (what was measured) becomes discs, a {@link
 * outrigger.generator.magnet.Gap} and a {@link outrigger.generator.magnet.Strength}; {@link
 * outrigger.generator.magnet.Coupling} gives the force at a gap; {@link outrigger.generator.magnet.Hold} puts it
 * against the load. Sizes in mm, remanence in tesla, forces in newton.
 *
 * <p>The forces are those of rigid uniform magnetisation, exact for coaxial cylinders by quadrature; no short formula
 * is used. Not promised: that a real magnet reaches them; see {@code docs/hold.md} for limits.
 */
package outrigger.generator.magnet;
