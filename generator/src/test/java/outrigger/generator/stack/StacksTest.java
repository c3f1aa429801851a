package outrigger.generator.stack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import outrigger.generator.param.BadDimension;
import outrigger.generator.param.InputException;
import outrigger.generator.param.ParamValues;
import outrigger.presets.Shelf;

/** Worked by hand. */
class StacksTest {
  private static Found find(String... keysAndTexts) {
    return Stacks.find(ParamValues.record(StackParams.class, Shelf.standard(), keysAndTexts));
  }

  private static List<String> words(Found found) {
    return found.answers().stream().map(Stack::words).toList();
  }

  @Test
  void find_inchTarget_isMetExactlyByInchSheet() {
    // 0.165 in = 125 + 40 thou = 4.191 mm.
    Found found = find("target", "0.165in", "block", "no", "tolerance", "0", "answers", "1");
    assertEquals(List.of("125thou sheet + 40thou sheet"), words(found));
    assertEquals(0, found.answers().get(0).error());
    assertEquals(4.191, found.answers().get(0).total());
    assertEquals(1, found.reaching());
    // 23 sheets, and 23 x 24 / 2 pairs of them.
    assertEquals(23 + 276, found.combinations());
  }

  @Test
  void find_label_isNotTakenForTheThickness() {
    // 40thou is 1.016 mm, sold as 1.0: two of them are 2.032, not 2.
    Found found = find("target", "2", "block", "no", "sheets", "40thou", "tolerance", "0.01");
    assertEquals(List.of(), found.answers());
    assertEquals(1.016, found.below().orElseThrow().total());
    assertEquals(2.032, found.above().orElseThrow().total());
    assertEquals(0.032, found.above().orElseThrow().error());
  }

  @Test
  void find_block_standsOnLayerHeights() {
    // First layer 0.16, then 0.12: 0.16 + 7 x 0.12 = 1.00, with 0.75 sheet 1.75.
    Found found = find("target", "1.75", "tolerance", "0", "sheets", "0.75mm", "printer", "demo-0.25", "answers", "1");
    Stack stack = found.answers().get(0);
    assertEquals("1 mm printed block of 8 layers + 0.75mm sheet", stack.words());
    assertEquals(OptionalLong.of(7), stack.blockLayers());
    assertEquals(1.0, stack.blockHeight());
    // Sheet 10 % of 0.75, block 0.1.
    assertEquals(0.175, stack.spread(0.1).worst(), 1e-12);
    assertEquals(0.175, stack.spread(0.1).rootSumSquare(), 1e-12);
  }

  @Test
  void find_leastBlock_isNotUndercut() {
    Found found = find("target", "0.9", "tolerance", "0", "sheets", "0.5mm,0.3mm", "block-min", "0.5", "answers", "9");
    // 0.6 + 0.3, not 0.4 + 0.5; the block of 0.2 + 0.2 x 3.5 does not exist.
    assertEquals(List.of("0.6 mm printed block of 3 layers + 0.3mm sheet", "3 x 0.3mm sheet"), words(found));
  }

  @Test
  void find_twoOfASheet_areOffAlike() {
    // Two 1 mm of one sheet, 10 %: 0.2; beside them 0.5 mm: 0.05; root of 0.2^2 + 0.05^2.
    Stack stack = find("target", "2.5", "sheets", "1mm,0.5mm", "block", "no", "tolerance", "0").answers().get(0);
    assertEquals("2 x 1mm sheet + 0.5mm sheet", stack.words());
    assertEquals(0.25, stack.spread(0.1).worst(), 1e-12);
    assertEquals(Math.sqrt(0.0425), stack.spread(0.1).rootSumSquare(), 1e-12);
  }

  @Test
  void find_counts_areNotExceeded() {
    assertEquals(List.of(), find("target", "3", "sheets", "1mm:2", "block", "no").answers());
    assertEquals(List.of("3 x 1mm sheet"), words(find("target", "3", "sheets", "1mm:3", "block", "no")));
    // All sheets but those of 3 mm, and one of 2 mm.
    Found found = find("target", "3", "sheets", "all,3mm:0,2mm:1", "block", "no", "tolerance", "0", "answers", "3");
    assertEquals(List.of("2 x 1.5mm sheet", "2.5mm sheet + 0.5mm sheet", "2mm sheet + 1mm sheet"), words(found));
  }

  @Test
  void find_washers_ofOneThicknessAreOneKind() {
    Found found = find("target", "1.3", "sheets", "", "washers", "M3,M4-normal:1", "block", "no", "tolerance", "0");
    assertEquals(List.of("M4-normal washer + M3-normal or M3-small washer"), words(found));
    // ISO 7089: 0.8 +-0.1; ISO 7089 and 7092: 0.5 +-0.05.
    assertEquals(0.15, found.answers().get(0).spread(0).worst(), 1e-12);
    assertEquals(2, find("target", "1", "sheets", "", "washers", "m4", "block", "no").kinds());
  }

  @Test
  void find_shims_takeTheirMeasuredThickness() {
    Found found = find("target", "2.96", "sheets", "", "shims", "0.98:3,4thou", "block", "no", "tolerance", "0.03",
        "shim-error", "0.01");
    assertEquals(List.of("3 x 0.98 mm shim"), words(found));
    assertEquals(0.03, found.answers().get(0).spread(0).worst(), 1e-12);
  }

  @Test
  void find_thickerThanTheBed_doesWithoutThatBlock() {
    Found found = find("target", "160", "printer", "demo-0.25", "sheets", "", "tolerance", "0.1");
    assertEquals(List.of(), found.answers());
    // The bed is 150 high: 0.16 + 1248 x 0.12 = 149.92.
    assertEquals(149.92, found.below().orElseThrow().total());
    assertTrue(found.above().isEmpty());
  }

  @Test
  void find_mostKindsAndPieces_isDecidedSoon() {
    Found found = find("target", "8.00001", "tolerance", "0", "pieces", "8", "block", "no",
        "washers", "M1.6,M2,M2.5,M3,M4,M5", "shims", "0.21,0.347,0.484,0.621,0.758,0.895,1.032,1.169,1.306,1.443");
    assertEquals(40, found.kinds());
    assertEquals(8, found.pieces());
    assertEquals(8, found.below().orElseThrow().total());
    // Stacks of 1 to 8 pieces of 40 kinds: 48 over 8, less the one of none.
    assertEquals(377_348_994L - 1, found.combinations());
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
      "sheets= block=no | there is nothing to stack",
      "sheets=5thou:0 block=no | there is nothing to stack",
      "sheets=1mm,1MM:2 | sheets names 1mm twice",
      "sheets=all,ALL | sheets names all twice",
      "washers=M3,M3-normal | washers names M3-normal twice",
      "shims=0.1,0.10 | shims names 0.1 mm twice",
      "block-min=151 printer=demo-0.25 | block-min is 151 mm, but printer demo-0.25 prints 150 mm high at most",
  })
  void find_whatDoesNotGoTogether_isRefused(String options, String message) {
    List<String> texts = new ArrayList<>(List.of("target", "3"));
    for (String option : options.split(" ")) {
      texts.addAll(List.of(option.split("=", -1)));
    }
    BadDimension refusal = assertThrows(BadDimension.class, () -> find(texts.toArray(new String[0])));
    assertTrue(refusal.getMessage().startsWith(message), refusal.getMessage());
  }

  @Test
  void find_tooManyKinds_isRefused() {
    StringBuilder shims = new StringBuilder("0.011");
    for (int i = 12; i < 29; i++) {
      shims.append(",0.0").append(i);
    }
    BadDimension refusal = assertThrows(BadDimension.class, () -> find("target", "3", "shims", shims.toString()));
    assertTrue(refusal.getMessage().startsWith("41 kinds of piece are more than 40"), refusal.getMessage());
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {"sheets | 40thou:-1", "sheets | 40thou:", "sheets | 40thou:1000",
      "washers | M7", "washers | M4:2", "shims | 0", "shims | -0.1", "shims | nan", "shims | 101", "shims | 0.1:x",
      "target | 0", "target | -1", "target | NaN", "target | 1e300", "target | 201", "pieces | 9", "pieces | 0",
      "tolerance | -0.1", "tolerance | 6", "answers | 0", "block | maybe", "printer | demo"})
  void find_badText_isRefused(String key, String text) {
    String[] texts = key.equals("target") ? new String[] {key, text} : new String[] {"target", "3", key, text};
    assertThrows(InputException.class, () -> find(texts));
  }
}
