/**
 * Electronics trays between the rails or outboard of one. {@link outrigger.generator.accessory.tray.TrayFrame} works
 * out the dimensions and refuses what cannot be; the other classes each make one feature from it.
 *
 * <p>A tray's own axes: X forward along the rails, Y left, Z up from the underside of its floor; the origin lies under
 * its middle.
 */
package outrigger.generator.accessory.tray;
