package outrigger.generator.stack;

import java.util.ArrayList;
import java.util.List;
import outrigger.generator.param.BadDimension;
import outrigger.generator.param.NearMiss;
import outrigger.presets.SheetStock;
import outrigger.presets.Shelf;

/**
 * Sheets at hand.
 *
 * @param stock the sheets
 * @param isAll whether they are all there are, so that one named beside them only says how many there are of it
 * @param count pieces of each
 */
public record Sheet(List<SheetStock> stock, boolean isAll, int count) {
  private static final String ALL = "all";

  public Sheet {
    stock = List.copyOf(stock);
  }

  /** Reads {@code NAME} or {@code NAME:COUNT}, the name that of a sheet, or {@code all}. */
  public static Sheet parse(String text, Shelf shelf) {
    Counted counted = Counted.of("sheets", text);
    if (counted.name().equalsIgnoreCase(ALL)) {
      return new Sheet(shelf.items(SheetStock.class), true, counted.count());
    }
    List<String> known = new ArrayList<>(shelf.names(SheetStock.class));
    known.add(ALL);
    return shelf.find(SheetStock.class, counted.name())
        .map(sheet -> new Sheet(List.of(sheet), false, counted.count()))
        .orElseThrow(() -> new BadDimension("sheets", "and no sheet of that name is on the shelf",
            NearMiss.advice(counted.name(), known)));
  }

  /** As kinds of piece. */
  List<Piece> pieces() {
    return stock.stream().map(sheet -> new Piece(Piece.Sort.SHEET, sheet.name() + " sheet", List.of(sheet.name()),
        Nano.of(sheet.thickness()), Nano.of(sheet.thickness() * sheet.tolerance() / 100), count)).toList();
  }
}
