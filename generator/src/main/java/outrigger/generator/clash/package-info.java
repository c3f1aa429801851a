/**
 * What touches what on the truck: common volume and least distance of everything that has a place on it.
 *
 * <p>Data flows one way: {@link outrigger.generator.clash.Element}s (a name, a {@link outrigger.generator.clash.Sort} and
 * a solid in truck axes) go into {@link outrigger.generator.clash.ClashCheck}; {@link outrigger.generator.clash.Pairs}
 * says which pairs matter; out comes a {@link outrigger.generator.clash.ClashReport}. Truck axes follow ISO 8855: X
 * forward, Y left, Z up, mm.
 *
 * <p><b>Volume.</b> The common part of two solids is evaluated by the kernel, exactly, and measured as any part is. A
 * common part on average thinner than 0.001 mm is what rounding to the grid
 * leaves of a seat and counts as none. <b>Distance</b> is that of the facets, in double arithmetic.
 *
 * <p>Not promised: anything about what was not given, such as wires, or about springs and steering in motion.
 */
package outrigger.generator.clash;
