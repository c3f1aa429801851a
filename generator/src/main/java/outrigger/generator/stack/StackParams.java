package outrigger.generator.stack;

import java.util.List;
import outrigger.generator.param.Param;
import outrigger.generator.param.Unit;
import outrigger.presets.Printer;

/** What thickness is wanted, and what it may be stacked from. */
public record StackParams(
    @Param(min = 0.05, max = 200, def = "", help = "Thickness to reach.")
    double target,

    @Param(max = 5, def = "0.05", help = "How far from the target is near enough, either way.")
    double tolerance,

    @Param(unit = Unit.NONE, min = 1, max = StackParams.MOST_PIECES, def = "4", help = "Most pieces in a stack, the "
        + "printed block among them.")
    int pieces,

    @Param(unit = Unit.NONE, min = 1, max = 100, def = "5", help = "How many stacks to tell, the best first.")
    int answers,

    @Param(def = "all", help = "Sheets at hand by their names in the table sheet-stock, or all; with a count where "
        + "there is little of it, such as 40thou:2, or 5thou:0 beside all. Empty for none.")
    List<Sheet> sheets,

    @Param(def = "", help = "Washers at hand by size or by their names in the table washers, such as M3 or "
        + "M4-small:6.")
    List<WasherSize> washers,

    @Param(def = "", help = "Shims at hand, and whatever else you measured, by thickness, such as 0.1 or 0.98:2.")
    List<Shim> shims,

    @Param(max = 1, def = "0.02", help = "How far a shim may be from its measured thickness, either way: what your "
        + "callipers may be off.")
    double shimError,

    @Param(def = "yes", help = "Whether one printed block may be among the pieces.")
    boolean block,

    @Param(def = "demo-0.4", help = "Printer preset: the layers of the block, and how high it can be.")
    Printer printer,

    @Param(min = 0.05, max = 200, def = "0.6", help = "Lowest printed block worth printing.")
    double blockMin,

    @Param(max = 1, def = "0.1", help = "How far the printed block may be from its height, always the same way; "
        + "a working figure until you measured one.")
    double blockError) {

  /** Most pieces in a stack: with the most kinds there may be, more would take too long to decide. */
  static final int MOST_PIECES = 8;

  public StackParams {
    sheets = List.copyOf(sheets);
    washers = List.copyOf(washers);
    shims = List.copyOf(shims);
  }
}
