/**
 * Screwed joints, the screws that suit them all, and the list of hardware.
 *
 * <p>A {@link outrigger.generator.joint.Joint} says what a screw clamps and what it ends in; from that follow the
 * shortest and the longest screw that will do. {@link outrigger.generator.joint.ScrewChoice} then picks lengths for all
 * joints of a truck at once: the fewest different articles there can be, found by looking at every choice. {@link
 * outrigger.generator.joint.HardwareList} adds up what that takes.
 */
package outrigger.generator.joint;
