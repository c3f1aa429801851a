package outrigger.generator.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import outrigger.generator.accessory.Words;
import outrigger.generator.param.Texts;
import outrigger.generator.param.Unit;
import outrigger.generator.stack.Found;
import outrigger.generator.stack.Spread;
import outrigger.generator.stack.Stack;
import outrigger.generator.stack.StackParams;
import outrigger.presets.Shelf;

/** Stacks in words. */
final class StackReport {
  private StackReport() {}

  static List<String> lines(StackParams given, Found found, Shelf shelf) {
    List<String> lines = new ArrayList<>();
    if (found.answers().isEmpty()) {
      lines.add("Nothing of up to " + pieces(given.pieces()) + " reaches " + mm(given.target()) + ", give or take "
          + mm(given.tolerance()) + ".");
      found.below().ifPresent(stack -> lines.add("Nearest below: " + near(stack, "thin")));
      found.above().ifPresent(stack -> lines.add("Nearest above: " + near(stack, "thick")));
      nearest(found).ifPresent(miss -> lines.add("Raise --tolerance to " + Texts.number(miss)
          + " or --pieces, or put more at hand."));
    } else {
      lines.add(mm(given.target()) + ", give or take " + mm(given.tolerance()) + ":");
      lines.add("");
      lines.addAll(table(given, found.answers()));
    }
    lines.add("");
    lines.add(searched(given, found));
    StackNotes.of(given, found, shelf).forEach(lines::add);
    return lines;
  }

  private static List<String> table(StackParams given, List<Stack> answers) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("pieces", "total mm", "error mm", "worst case mm", "root-sum-square mm", "stack"));
    for (Stack stack : answers) {
      Spread spread = stack.spread(given.blockError());
      rows.add(List.of(String.valueOf(stack.pieces()), Texts.number(stack.total()), Texts.number(stack.error()),
          thousandths(spread.worst()), thousandths(spread.rootSumSquare()), stack.words()));
    }
    return AlignedTable.lines(rows);
  }

  private static String near(Stack stack, String tooMuch) {
    return mm(stack.total()) + ", " + mm(Math.abs(stack.error())) + " too " + tooMuch + ": " + stack.words() + ".";
  }

  /** The tolerance at which there would be an answer. */
  private static Optional<Double> nearest(Found found) {
    return Stream.of(found.below(), found.above()).flatMap(Optional::stream)
        .map(stack -> Math.abs(stack.error())).min(Double::compare);
  }

  private static String searched(StackParams given, Found found) {
    String block = given.block() ? (found.kinds() == 0 ? "" : " and ") + "a printed block" : "";
    String kinds = found.kinds() == 0 ? "" : found.kinds() + (found.kinds() == 1 ? " kind" : " kinds");
    return "Decided all " + found.combinations() + " stacks of up to " + pieces(found.pieces()) + " from " + kinds
        + block + " in " + found.lookups() + " look-ups: " + (found.reaching() == 1 ? "1 reaches"
        : found.reaching() + " reach") + " the target.";
  }

  private static String pieces(int count) {
    return count == 1 ? "1 piece" : count + " pieces";
  }

  private static String mm(double value) {
    return Texts.number(value, Unit.MM);
  }

  private static String thousandths(double value) {
    return Words.number(value);
  }
}
