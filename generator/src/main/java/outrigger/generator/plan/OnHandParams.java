package outrigger.generator.plan;

import java.util.List;
import outrigger.generator.joint.OnHand;
import outrigger.generator.joint.Stock;
import outrigger.generator.param.Param;
import outrigger.generator.stack.Drawer;
import outrigger.generator.stack.Sheet;
import outrigger.generator.stack.Shim;
import outrigger.generator.stack.WasherSize;
import outrigger.presets.Shelf;

/** The table {@code [on-hand]} of a plan. */
public record OnHandParams(
    @Param(def = "", help = "Screws, nuts, washers, inserts and magnets in the drawer, each ARTICLE:COUNT, such as "
        + "M3-socket x 10:20, M3 nut:50, M3-short insert:12 or 6x2 magnet:8. Screws are chosen from them where they do "
        + "as well as others, and the list of hardware says what to buy.")
    List<OnHand> hardware,

    @Param(def = "", help = "Sheet in the drawer, for shims, by its names in the table sheet-stock, or all; with a count "
        + "where there is little of it, such as 10thou or 40thou:2.")
    List<Sheet> sheets,

    @Param(def = "", help = "Washers in the drawer, for shims, by size or by their names in the table washers, such as "
        + "M3 or M3-normal:8.")
    List<WasherSize> washers,

    @Param(def = "", help = "Shims in the drawer, and what else you measured, by thickness, such as 0.1:4 or 4thou.")
    List<Shim> shims) {

  public OnHandParams {
    hardware = List.copyOf(hardware);
    new Drawer(sheets, washers, shims, List.of()).require();
  }

  /** What shims are made from, beside what a shelf has to buy. */
  Drawer drawer(Shelf shelf) {
    return new Drawer(sheets, washers, shims, List.of(Sheet.parse("all", shelf)));
  }

  /** Counts by article. */
  Stock stock() {
    return Stock.of(hardware.stream().map(OnHand::piece).toList());
  }
}
