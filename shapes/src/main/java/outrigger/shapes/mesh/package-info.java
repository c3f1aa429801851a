/**
 * From a solid to triangles on the grid: every Boolean of an expression at once, decided exactly.
 *
 * <p><b>Input.</b> A {@link outrigger.shapes.solid.Solid}. <b>Output.</b> A {@link Mesh}: closed, welded, facets
 * counter-clockwise seen from outside, no more facets than its faces need. That it is sound is for {@code check.Proof} to
 * say, which shares only the predicates of {@code exact} with this package.
 *
 * <p>Others use {@link Mesher} and {@link Mesh}, which {@code Welder} makes of vertices and facets. All else is done in
 * sub-packages, public for each other only, each of which uses those named before it and knows nothing of those after it;
 * all may speak of a {@code Mesh}, none of {@code Mesher}:
 * <ol>
 * <li>{@link outrigger.shapes.mesh.leaf leaf}: a leaf of the expression becomes a polyhedron with flat faces.
 * <li>{@link outrigger.shapes.mesh.frame frame}: in which axes an expression is evaluated, and how it is rounded.
 * <li>{@link outrigger.shapes.mesh.face face}: faces of all operands; their planes, corners and edges get numbers.
 * <li>{@link outrigger.shapes.mesh.inside inside}: which operands hold at a place, and whether the expression does.
 * <li>{@link outrigger.shapes.mesh.meet meet}: pairs of faces pass through each other, or touch.
 * <li>{@link outrigger.shapes.mesh.outline outline}: the edges that bound the result's faces, the fewest there can be.
 * <li>{@link outrigger.shapes.mesh.triangulation triangulation}: exact points of a plane, and outlines, into triangles.
 * <li>{@link outrigger.shapes.mesh.wire wire}: outlines of faces that others only pass through, by walking along lines.
 * <li>{@link outrigger.shapes.mesh.sheet sheet}: outlines of all other faces, by labelling the cells of their planes.
 * <li>{@link outrigger.shapes.mesh.spatial spatial}: the whole evaluation in space, from faces to rounded facets.
 * <li>{@link outrigger.shapes.mesh.settle settle}: rounded facets are brought to rest where rounding made them meet.
 * <li>{@link outrigger.shapes.mesh.planar planar}: the whole evaluation where all operands stand along one axis.
 * </ol>
 *
 * <p><b>Steps.</b> The unit of work is a <i>face</i>, a flat many-cornered area, not a facet.
 * <ol>
 * <li>Where all operands are straight prisms along one axis, the planar way comes first. If it makes a mesh, that is it.
 * <li>Else {@code Operands} gathers the leaves where they are placed, and the expression over them. What is turned by other
 *     than quarters is meshed first, by itself, and the turned mesh is an operand.
 * <li>In the {@code Frame} that the operands set, {@code Kernel} evaluates the expression to rounded facets.
 * <li>{@code Settler} makes a mesh of them. What does not come to rest is evaluated as one of the turned operands sees it,
 *     and turned as a whole ({@code Turning}); if that does not do, or there is none, corners are put clear of each other.
 * </ol>
 *
 * <p><b>Words.</b>
 * <ul>
 * <li><i>Operand</i>: a leaf of the expression where it is placed. <i>Face</i>: one flat area of its surface.
 *     <i>Group</i>: all faces of one plane that look the same way, of whatever operand. <i>Half-edge</i>: an edge as one of
 *     its two faces has it; the other's is its <i>twin</i>. <i>Rim</i>: a closed row of edges of a face.
 * <li><i>Piercing</i>: a point where an edge passes clean through a face. <i>Stretch</i>: the piece of a line, from piercing
 *     to piercing, along which two faces pass clean through each other. If faces meet otherwise, they are in <i>contact</i>;
 *     an edge that may lie in another operand's face is <i>blocked</i>: its two sides need not see the same.
 * <li><i>Sheet</i>: a plane with all that lies in it or crosses it, in one triangulation. <i>Segment</i>: a piece of line
 *     laid into it. <i>Cell</i>: an area between segments. <i>Free loops</i> of stretches and <i>lone faces</i> keep clear
 *     of all else on their plane and are not laid.
 * <li><i>Winding number</i> of an operand at a place: how often its surface goes round that. The operand <i>holds</i> where
 *     it is positive. Numbers are carried along from a first <i>look</i>.
 * <li><i>Hidden</i>: where one operand settles the expression whatever others do there. Hidden things are left out, so
 *     numbers carried through there are <i>stale</i> on the way out; a new look takes them anew.
 * <li><i>Soup</i>: facets that may cross and overlap, of which all is wanted that they wind round.
 * <li><i>Outline</i>: the directed edges that bound the result's faces. <i>At rest</i>: facets with corners on the grid that
 *     meet in common corners and edges only.
 * </ul>
 *
 * <p><b>Threads.</b> {@code Faces} carries the {@link outrigger.shapes.num.Workers} that work on them. Pieces of a step are
 * done side by side, each thread with a {@code FacePairs}, {@code Sheet}, {@code SheetWalker}, {@code WireWalker} or
 * {@code FaceTriangulator} of its own; what gives numbers is told in order ({@code NotedMeetings}, {@code SheetLabels},
 * {@code WireNotes}). The mesh does not depend on the number of threads.
 *
 * <p><b>Exactness.</b> Corners of operands are whole grid units; a new corner is where an edge meets a plane or three planes
 * meet, an {@link outrigger.shapes.exact.ExactPoint}. No decision rests on rounded numbers.
 *
 * <p><b>Sources</b> of the whole; those of a step stand on its page. Requicha and Voelcker, <i>Boolean operations in solid
 * modeling</i>, Proc. IEEE 73 (1985), for classifying by neighbourhoods; Zhou, Grinspun, Zorin, Jacobson, <i>Mesh
 * arrangements for solid geometry</i>, ACM TOG 35 (2016), for whole expressions by winding numbers. Why this way and not
 * another: {@code docs/kernel.md}.
 */
package outrigger.shapes.mesh;
