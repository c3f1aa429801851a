package outrigger.generator.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import outrigger.generator.param.Texts;
import outrigger.generator.param.Unit;
import outrigger.generator.stack.Found;
import outrigger.generator.stack.Piece;
import outrigger.generator.stack.Stack;
import outrigger.generator.stack.StackParams;
import outrigger.presets.SheetStock;
import outrigger.presets.Shelf;

/** What to know before cutting what a search found. */
final class StackNotes {
  private StackNotes() {}

  static List<String> of(StackParams given, Found found, Shelf shelf) {
    List<String> notes = new ArrayList<>();
    if (!found.answers().isEmpty()) {
      notes.add("Worst case and root-sum-square: how far the stack may be off its total, either way. Pieces of one kind "
          + "are taken to be off alike.");
    }
    List<Stack> shown = found.answers().isEmpty()
        ? Stream.of(found.below(), found.above()).flatMap(Optional::stream).toList() : found.answers();
    notes.addAll(sheets(shown, shelf));
    if (shown.stream().anyMatch(stack -> stack.blockLayers().isPresent())) {
      notes.add(block(given));
    }
    return notes;
  }

  private static List<String> sheets(List<Stack> shown, Shelf shelf) {
    List<SheetStock> sheets = shown.stream().flatMap(stack -> stack.members().stream()).map(Stack.Member::piece)
        .filter(piece -> piece.sort() == Piece.Sort.SHEET).distinct()
        .map(piece -> shelf.get(SheetStock.class, piece.presets().get(0))).toList();
    List<String> notes = new ArrayList<>();
    if (!sheets.isEmpty()) {
      double off = sheets.stream().mapToDouble(SheetStock::tolerance).max().orElseThrow();
      notes.add("Sheet may be off by " + Texts.number(off) + " %: measure yours, and give what you measured with "
          + "--shims.");
    }
    sheets.stream().filter(sheet -> sheet.label() != sheet.thickness())
        .forEach(sheet -> notes.add(sheet.name() + " sheet is " + Texts.number(sheet.thickness(), Unit.MM)
            + ", but usually sold as " + Texts.number(sheet.label(), Unit.MM) + "."));
    return notes;
  }

  private static String block(StackParams given) {
    return "Printed block: first layer " + Texts.number(given.printer().firstLayer()) + ", then layers of "
        + Texts.number(given.printer().layer(), Unit.MM) + " (" + given.printer().name() + "). It is taken to be off "
        + "by " + Texts.number(given.blockError(), Unit.MM) + " always the same way: print one and measure it.";
  }
}
