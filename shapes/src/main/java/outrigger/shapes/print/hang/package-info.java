/**
 * The gauge of overhangs: what hangs over many layers, judged as a whole.
 *
 * <p><b>Input.</b> The pieces of single layers that stand out. <b>Output.</b> Of {@link OverhangGauge}: slopes, ledges,
 * bridges, round roofs, and what starts in the air, with a map of how far undersides lean.
 *
 * <p><b>Steps.</b>
 * <ol>
 * <li>{@code Hangings} joins pieces of different layers that go on from each other, and adds up how far they stand out; what
 *     winds round a core stands out from that ({@code FirmGround}).
 * <li>{@code RoundRoof} tells whether undersides are the roof of a round hole that lies on its side: their normals lie
 *     square to one level axis, their corners on a circle about it.
 * <li>{@code HangingConcerns} holds each {@code Hanging} against the limits and tells it in words.
 * <li>{@code HangingMap} paints large undersides place by place, where what hangs is a concern.
 * </ol>
 *
 * <p><b>Sources.</b> None; the limits are common practice ({@link outrigger.shapes.print.Limit}).
 */
package outrigger.shapes.print.hang;
