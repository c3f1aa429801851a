package outrigger.generator.stack;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import outrigger.generator.param.BadDimension;
import outrigger.generator.param.Texts;
import outrigger.generator.param.Unit;
import outrigger.presets.Printer;

/** Stacks of an exact thickness. */
public final class Stacks {
  /** Most kinds of piece: with the most pieces, more would take too long to decide. */
  static final int MOST_KINDS = 40;

  private Stacks() {}

  /**
   * The best stacks for what is wanted.
   *
   * @throws BadDimension if there is nothing to stack, a thing is named twice, there are too many kinds, or the least
   *     block is higher than the printer can print
   */
  public static Found find(StackParams params) {
    List<Piece> pieces = pieces(params);
    Optional<Block> block = params.block() ? Optional.of(block(params)) : Optional.empty();
    if (pieces.isEmpty() && block.isEmpty()) {
      throw new BadDimension("sheets", "there is nothing to stack: no sheet, washer, shim or printed block",
          "Name what is at hand, or allow a printed block.");
    }
    return new StackSearch(pieces, block, Nano.of(params.target()), Nano.of(params.tolerance()), params.answers())
        .run(params.pieces());
  }

  private static Block block(StackParams params) {
    Printer printer = params.printer();
    Block block = Block.of(printer, params.blockMin());
    if (block.heights() < 1) {
      throw new BadDimension("block-min", "block-min is " + Texts.number(params.blockMin(), Unit.MM)
          + ", but printer " + printer.name() + " prints " + Texts.number(printer.bedZ(), Unit.MM) + " high at most",
          "Lower block-min.");
    }
    return block;
  }

  /** What is at hand, each kind once. */
  static List<Piece> pieces(StackParams params) {
    return pieces(params.sheets(), params.washers(), params.shims(), params.shimError());
  }

  static List<Piece> pieces(List<Sheet> sheets, List<WasherSize> washers, List<Shim> shims, double shimError) {
    List<Piece> pieces = new ArrayList<>(sheets(sheets));
    washers.forEach(size -> pieces.addAll(size.pieces()));
    refuseTwice("washers", washers.stream().flatMap(size -> size.washers().stream()).map(w -> w.name())
        .toList());
    shims.forEach(shim -> pieces.add(shim.piece(shimError)));
    refuseTwice("shims", shims.stream().map(shim -> Texts.number(shim.thickness(), Unit.MM)).toList());
    List<Piece> left = pieces.stream().filter(piece -> piece.count() > 0).toList();
    if (left.size() > MOST_KINDS) {
      throw new BadDimension("shims", left.size() + " kinds of piece are more than " + MOST_KINDS
          + ", above which a search would take too long", "Leave some out.");
    }
    return left;
  }

  /** Sheets by name: what is named beside all says how many there are of it. */
  private static List<Piece> sheets(List<Sheet> sheets) {
    refuseTwice("sheets", sheets.stream().filter(sheet -> !sheet.isAll())
        .map(sheet -> sheet.stock().get(0).name()).toList());
    refuseTwice("sheets", sheets.stream().filter(Sheet::isAll).map(sheet -> "all").toList());
    Map<String, Piece> byName = new LinkedHashMap<>();
    sheets.stream().filter(Sheet::isAll).flatMap(sheet -> sheet.pieces().stream())
        .forEach(piece -> byName.put(piece.name(), piece));
    sheets.stream().filter(sheet -> !sheet.isAll()).flatMap(sheet -> sheet.pieces().stream())
        .forEach(piece -> byName.put(piece.name(), piece));
    return List.copyOf(byName.values());
  }

  private static void refuseTwice(String parameter, List<String> names) {
    Set<String> seen = new HashSet<>();
    for (String name : names) {
      if (!seen.add(name)) {
        throw new BadDimension(parameter, parameter + " names " + name + " twice",
            "Name it once, with a count such as :2 if it matters.");
      }
    }
  }
}
