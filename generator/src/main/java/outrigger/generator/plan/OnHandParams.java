package outrigger.generator.plan;

import java.util.List;
import outrigger.generator.joint.OnHand;
import outrigger.generator.joint.Stock;
import outrigger.generator.param.Param;

/** The table {@code [on-hand]} of a plan. */
public record OnHandParams(
    @Param(def = "", help = "Screws, nuts, washers, inserts and magnets in the drawer, each ARTICLE:COUNT, such as "
        + "M3-socket x 10:20, M3 nut:50, M3-short insert:12 or 6x2 magnet:8. Screws are chosen from them where they do "
        + "as well as others, and the list of hardware says what to buy.")
    List<OnHand> hardware) {

  /** Counts by article. */
  Stock stock() {
    return Stock.of(hardware.stream().map(OnHand::piece).toList());
  }
}
