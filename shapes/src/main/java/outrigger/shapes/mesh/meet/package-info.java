/**
 * How faces of different operands meet: by passing clean through each other, or otherwise.
 *
 * <p><b>Input.</b> Faces and their boxes. <b>Output.</b> An {@link Arranger} that tells {@link Stretch}es, pieces of line in
 * which two faces pass clean through each other, with the {@link Piercing}s they end at and the points where third faces
 * cross them; {@link Contacts}, that is which faces are touched otherwise and need a sheet; and for each plane that gets one
 * the {@link Segment}s on it.
 *
 * <p><b>Steps.</b>
 * <ol>
 * <li>A tree of boxes gives the pairs, on several threads by way of {@code NotedMeetings}. {@code FacePairs} passes over
 *     those of one operand, those that lie beside each other's planes, and what is hidden. Two faces of one plane that
 *     may overlap both need a sheet.
 * <li>Of other pairs {@code Spans} works out the {@code Section} that either's plane cuts out of the other face: the
 *     places along the common line where the face begins or ends, counted on both sides of the line apart. With that,
 *     crossing, standing on and touching are one rule. {@code EdgeMeetings} numbers the points where edges pass through
 *     planes, so that each is worked out once.
 * <li>If all places of both sections are clean ends in the inside of the other face, the {@code Span}s that they have in
 *     common are stretches. If not, the faces are in contact, and {@code Contacts} notes into whose inside it reaches, and
 *     which edges lie in the other face.
 * <li>{@code Contacts} gives a sheet to what goes on flat from a face that has one. {@code CrossingFinder} looks where
 *     stretches on a face without a sheet cross, at {@code PlaneMeetings}; where they touch, or three cross in one point,
 *     the face gets one after all. So do both faces at an edge that is pierced and touched, where anything is hidden.
 * <li>{@code FreeLoops} finds what a sheet does without: stretches that form a closed loop apart from all else on its plane;
 *     and {@code LoneFaces} flush faces that are apart in the same way.
 * <li>{@link SheetSegments} tells the edges of faces and the other stretches on a sheet in the same terms as what
 *     contacts left there.
 * </ol>
 *
 * <p><b>Sources.</b> Requicha and Voelcker, <i>Boolean operations in solid modeling</i>, Proc. IEEE 73 (1985), for cutting
 * faces by planes and classifying what is left by its neighbourhood.
 */
package outrigger.shapes.mesh.meet;
