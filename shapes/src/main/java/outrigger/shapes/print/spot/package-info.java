/**
 * Where on the whole surface something is narrow: one {@link Spot} each.
 *
 * <p><b>Input.</b> The tree of facets, and how far to look, a {@code Reach}: the solid or the air, up to which width.
 * <b>Output.</b> Spots narrower than the bound, those beside them, and the least width of each facet for a map.
 *
 * <p><b>Steps.</b>
 * <ol>
 * <li>{@link BallField} asks where facets stand against each other; nowhere else can a narrow ball be held.
 * <li>It lays samples on these facets, thins them, and asks a ball at each, in pieces that several threads take.
 *     Needles, whose way of facing is rounding's, are left out.
 * <li>{@link InnerEdges} does the same on edges that look inward, where a ball may lie any way between two faces, and no
 *     sample of either face shows what is left. {@link InnerTips} does it at the tips of hollows.
 * </ol>
 *
 * <p><b>Sources.</b> None: that only facets that stand against each other hold a ball is shown where they are sought.
 */
package outrigger.shapes.print.spot;
