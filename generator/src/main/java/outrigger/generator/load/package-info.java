/**
 * What a truck weighs, where, and what its printed parts bear.
 *
 * <p>{@link outrigger.generator.load.Balance} sums masses and shares them over the axles by statics; {@link
 * outrigger.generator.load.Section} measures a part's cross-section at a height on its real mesh; {@link
 * outrigger.generator.load.Post} and {@link outrigger.generator.load.Tab} bend it under a jolt. Truck axes or the part's
 * build axes; mm, g, N, MPa.
 *
 * <p>Not promised: that a print is as strong as reckoned. The factors are estimates: plastic between its layers scatters
 * widely with printer, heat and age, and fatigue, notches and creep are left out.
 */
package outrigger.generator.load;
