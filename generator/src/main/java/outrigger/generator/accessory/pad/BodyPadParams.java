package outrigger.generator.accessory.pad;

import outrigger.generator.accessory.feature.Pole;
import outrigger.generator.magnet.Facing;
import outrigger.generator.param.Param;
import outrigger.generator.param.Unit;
import outrigger.presets.DiscMagnet;
import outrigger.presets.Printer;

/** Parameters of a body pad. */
public record BodyPadParams(
    @Param(def = "magnet", help = "What lies in the pocket: a magnet, or a steel disc.")
    Facing facing,
    @Param(def = "6x2", help = "The disc magnet, diameter x thickness.")
    DiscMagnet magnet,
    @Param(unit = Unit.NONE, min = 1, max = 10, def = "1", help = "Discs lying on each other in the pocket.")
    int stack,
    @Param(min = 0.2, max = 20, def = "1", help = "Thickness of the disc where it is steel.")
    double steel,
    @Param(min = 3, max = 100, def = "12", help = "Diameter of the disc where it is steel.")
    double steelWidth,
    @Param(min = 0.4, max = 50, def = "1.2", help = "From the body's floor to the disc: what lies under the pocket.")
    double pad,
    @Param(max = 2, def = "0.2", help = "How far the disc lies below the rim.")
    double recess,
    @Param(max = 1, def = "0.3", help = "Bevel at the pocket's mouth that leads the disc in.")
    double leadIn,
    @Param(min = 0.8, max = 20, def = "1.6", help = "Wall round the pocket where it is thinnest.")
    double wall,
    @Param(def = "s", help = "Pole that shows in the pocket, engraved beside it: n, s or none for no mark.")
    Pole pole,
    @Param(max = 4, def = "", help = "What else is engraved, such as the number of its mount.")
    String label,
    @Param(def = "demo-0.4", help = "The printer it is made on: layers, walls, allowances.")
    Printer printer) {

  /** What lies in the pocket, as a disc. */
  DiscMagnet disc() {
    return facing == Facing.MAGNET ? magnet : new DiscMagnet("steel", steelWidth, steel, "steel");
  }

  /** How many of them. */
  int discs() {
    return facing == Facing.MAGNET ? stack : 1;
  }
}
