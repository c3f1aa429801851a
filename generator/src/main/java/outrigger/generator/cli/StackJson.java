package outrigger.generator.cli;

import java.io.IOException;
import outrigger.generator.param.Texts;
import outrigger.generator.run.Json;
import outrigger.generator.stack.Found;
import outrigger.generator.stack.Spread;
import outrigger.generator.stack.Stack;
import outrigger.generator.stack.StackParams;
import outrigger.presets.Shelf;

/** Stacks as JSON; mm. */
final class StackJson {
  private StackJson() {}

  static void write(Json json, StackParams given, Found found, Shelf shelf) throws IOException {
    json.put("target", given.target()).put("tolerance", given.tolerance());
    json.objects("answers", found.answers(), (one, stack) -> stack(one, given, stack));
    if (found.answers().isEmpty()) {
      if (found.below().isPresent()) {
        json.object("below", one -> stack(one, given, found.below().get()));
      }
      if (found.above().isPresent()) {
        json.object("above", one -> stack(one, given, found.above().get()));
      }
    }
    json.object("searched", one -> one.put("pieces", found.pieces()).put("kinds", found.kinds())
        .put("block", given.block()).put("stacks", found.combinations()).put("lookups", found.lookups())
        .put("reaching", found.reaching()));
    json.texts("notes", StackNotes.of(given, found, shelf));
  }

  private static void stack(Json json, StackParams given, Stack stack) throws IOException {
    Spread spread = stack.spread(given.blockError());
    json.put("stack", stack.words()).put("pieces", stack.pieces()).put("total", stack.total())
        .put("error", stack.error()).put("worst-case", spread.worst()).put("root-sum-square", spread.rootSumSquare());
    if (stack.blockLayers().isPresent()) {
      json.object("block", block -> block.put("height", stack.blockHeight())
          .put("first-layer", given.printer().firstLayer()).put("layer", given.printer().layer())
          .put("layers-after-first", stack.blockLayers().getAsLong()).put("off", given.blockError()));
    }
    json.objects("members", stack.members(), (one, member) -> one.put("name", member.piece().name())
        .put("sort", Texts.choice(member.piece().sort())).put("count", member.count())
        .put("thickness", member.piece().thickness()).put("off", member.piece().off())
        .texts("presets", member.piece().presets()));
  }
}
