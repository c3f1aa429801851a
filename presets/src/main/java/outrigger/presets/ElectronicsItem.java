package outrigger.presets;

/**
 * A thing that lies in a tray, such as a battery; mm.
 *
 * @param name what users type, such as {@code receiver}
 * @param length along the tray
 * @param width across the tray
 * @param height upwards
 * @param clearance room left on each side for wires, plug and swelling, 0 or more
 */
public record ElectronicsItem(String name, double length, double width, double height, double clearance)
    implements Item {
  public ElectronicsItem {
    Checks.text("name", name);
    Checks.positive("length", length);
    Checks.positive("width", width);
    Checks.positive("height", height);
    Checks.zeroOrMore("clearance", clearance);
  }
}
