/**
 * From a solid to triangles on the grid: every Boolean of an expression at once, decided exactly.
 *
 * <p><b>Input.</b> A {@link outrigger.shapes.solid.Solid}. <b>Output.</b> A {@link outrigger.shapes.mesh.Mesh}: closed,
 * welded, facets counter-clockwise seen from outside, no more facets than its faces need. That it is sound is for
 * {@code check.Proof} to say, which shares only the predicates of {@code exact} with this package.
 *
 * <p><b>Steps.</b> The unit of work is a <i>face</i>, a flat many-cornered area, not a facet.
 * <ol>
 * <li>{@code LeafBuilder} makes a {@code Polyhedron} of each leaf ({@code PrismBuilder}, {@code RevolutionBuilder},
 *     {@code FacetedBuilder}); {@code FlatFaces} joins flat neighbours; {@code Faces} numbers all faces, corners and
 *     planes ({@code SolidFaces}), so that flush faces are known by one number, {@code HalfEdges} the edges.
 * <li>{@code Arranger} takes each pair of faces whose boxes meet, and {@code FacePairs} compares the {@code Section}s that
 *     their planes cut out of each other ({@code Spans}; out of faces of many edges by {@code EdgeBlocks}). Faces that pass
 *     clean through each other leave {@code Stretch}es between {@code Piercing}s; all else is a contact, for which
 *     {@code Contacts} says which faces need a sheet. What lies inside a convex operand that settles the expression there
 *     ({@code Dominance}, {@code ConvexOperands}) is left out: {@code Hiding}, for most pairs by doubles alone
 *     ({@code RoughStretch}).
 * <li><i>Faces without a sheet.</i> {@code CrossingFinder} finds where stretches on a face cross each other.
 *     {@code Wires} has a {@code WireWalker} go round the rims and along the stretches of each operand and keep, in a
 *     {@code Membership}, which operands hold there; one look of the {@code Locator} starts each shell and each
 *     way out of what hides something. A piece bounds the result where the expression holds on one side of the surface, to
 *     the left of it and not to the right or the other way round.
 * <li><i>Faces with one.</i> {@code SheetSegments} gathers what lies on a plane, {@code Sheet} lays it into a
 *     {@code ConstrainedTriangulation}, which adds the exact points where segments cross. {@code Walker} steps from triangle
 *     to triangle and keeps, in two {@code Membership}s, whether the expression holds just above and just below. A
 *     triangle bounds the result where it holds on exactly one side of it.
 * <li>{@code Outline} gathers the edges of what was kept by plane and sense: seams between flush faces are gone. It drops
 *     corners that bend nothing, and {@code EdgeMatcher} splits edges at corners of their neighbours.
 * <li>{@code FaceTriangulator} cuts each face into facets, constrained Delaunay, and only now are corners that lie off the
 *     grid rounded to it ({@code Kernel}). {@code Settler} looks whether that made facets meet, and if so resolves them by
 *     the same steps as a soup, of which all that is {@code Untouched} stays whole and only the planes of the rest get
 *     sheets ({@code Coplanar}), until none do ({@code Faults}), from the third look on nudging corners first
 *     ({@code Nudger}). Where rounding made the surface touch itself, {@code Parting} gives each of the {@code Fans} of
 *     facets there a vertex of its own and puts them a grid step apart; what touched before ({@code ExactTouch}) is
 *     refused. What does not come to rest is rounded otherwise, in another {@code Attempt}.
 * </ol>
 *
 * <p><b>The planar way.</b> Where all operands are straight prisms along one axis ({@code Uprights}), {@code PlanarWay} comes
 * first. The result is a column of heights over each cell of the outlines ({@code Columns}); where the columns at the two
 * sides of an edge differ stands a wall, where a column begins or ends lies a cap ({@code ColumnWalls}). {@code Rims} tells
 * whether outlines meet. If none do, {@code LooseRims} writes down rectangles along whole rims, and {@code CapTriangulator}
 * cuts the caps. If some do, {@code PlanarSheet} lays them into one {@code ConstrainedTriangulation}, {@code PlanarOutline}
 * gathers walls and caps in an {@code Outline}, and the last two steps above follow. Results that touch themselves, and all
 * that is to be refused, are left to the spatial way.
 *
 * <p><b>Threads.</b> {@code Faces} carries the {@link outrigger.shapes.num.Workers} that work on them. Pieces of a step are
 * done side by side, each thread with a {@code FacePairs}, {@code Sheet}, {@code Walker}, {@code WireWalker} or
 * {@code FaceTriangulator} of its own; what gives numbers is told in order ({@code NotedMeetings}, {@code SheetLabels},
 * {@code WireNotes}). The mesh does not depend on the number of threads.
 *
 * <p><b>Exactness.</b> Corners of operands are whole grid units; a new corner is where an edge meets a plane or three
 * planes meet, an {@link outrigger.shapes.exact.ExactPoint}. No decision rests on rounded numbers.
 *
 * <p><b>Sources.</b> Requicha and Voelcker, <i>Boolean operations in solid modeling</i>, Proc. IEEE 73 (1985), for
 * classifying by neighbourhoods; Zhou, Grinspun, Zorin, Jacobson, <i>Mesh arrangements for solid geometry</i>, ACM TOG 35
 * (2016), for whole expressions by winding numbers; Sloan, <i>A fast algorithm for generating constrained Delaunay
 * triangulations</i>, Computers and Structures 47 (1993), for freeing a segment's way by flips. Why this way and not
 * another: {@code docs/kernel.md}.
 */
package outrigger.shapes.mesh;
