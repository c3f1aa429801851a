package outrigger.generator.param;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import outrigger.presets.Shelf;

class ParamValuesTest {
  enum Hand { LEFT, RIGHT_HAND }

  record Tag(String name, int size) {
    static Tag parse(String text, Shelf shelf) {
      String[] halves = text.split(":", -1);
      if (halves.length != 2) {
        throw new Clash("tags", "which is no NAME:SIZE", "Write it such as a:1.");
      }
      return new Tag(halves[0], Integer.parseInt(halves[1]));
    }
  }

  static final class Clash extends RuntimeException implements Refusal {
    private final String parameter;
    private final String what;
    private final String advice;

    Clash(String parameter, String what, String advice) {
      this.parameter = parameter;
      this.what = what;
      this.advice = advice;
    }

    @Override
    public String parameter() {
      return parameter;
    }

    @Override
    public String what() {
      return what;
    }

    @Override
    public String advice() {
      return advice;
    }
  }

  record HookParams(
      @Param(min = 1, max = 9, def = "3", help = "Wall thickness.") double wallThickness,
      @Param(min = 2, max = 200, def = "20", help = "Reach.") double reach,
      @Param(unit = Unit.DEGREES, min = -45, max = 45, def = "30", help = "Lean.") double lean,
      @Param(unit = Unit.NONE, min = 0, max = 2, def = "1.5", help = "Factor.") double factor,
      @Param(min = 1, max = 4, def = "2", help = "Screws.") int screws,
      @Param(def = "left", help = "Hand.") Hand hand,
      @Param(def = "no", help = "Marked.") boolean marked,
      @Param(max = 8, def = "", help = "Label.") String label,
      @Param(min = 0.5, max = 50, def = "1, 2mm", help = "Steps.") List<Double> steps,
      @Param(def = "", help = "Tags.") List<Tag> tags) {
    HookParams {
      if (reach <= wallThickness) {
        throw new Clash("reach", "reach (" + Texts.number(reach) + " mm) must exceed wall-thickness ("
            + Texts.number(wallThickness) + " mm)", "Raise reach or lower wall-thickness.");
      }
    }
  }

  private static HookParams hook(String... keysAndTexts) {
    return ParamValues.record(HookParams.class, null, keysAndTexts);
  }

  private static String refusal(String key, String text) {
    return assertThrows(InputException.class, () -> hook(key, text)).getMessage();
  }

  @Test
  void record_nothingGiven_isAtItsDefaults() {
    assertEquals(new HookParams(3, 20, 30, 1.5, 2, Hand.LEFT, false, "", List.of(1.0, 2.0), List.of()), hook());
  }

  @Test
  void list_severalFaultyValues_namesEachOfThem() {
    assertEquals("steps is 0.1 mm (option --steps, written 0.1, x, 3, 60), below the minimum of 0.5 mm. "
        + "Use 0.5 mm or more.\n"
        + "steps is \"x\" (option --steps, written 0.1, x, 3, 60), not a length: not a number. "
        + "Write a length in mm, in or thou, such as 6, 6mm, 0.25in or 40thou.\n"
        + "steps is 60 mm (option --steps, written 0.1, x, 3, 60), above the maximum of 50 mm. Use 50 mm or less.",
        refusal("steps", "0.1, x, 3, 60"));
  }

  @Test
  void refusal_controlCharactersOrALongText_showsOneShortLine() {
    assertEquals("hand is \"left?[31m\" (option --hand), not one of: left, right-hand. Known are: left, right-hand.",
        refusal("hand", "left\u001b[31m"));
    String shown = "7".repeat(60) + "...";
    assertEquals("wall-thickness is \"" + shown + "\" (option --wall-thickness), not a length: longer than 64 "
        + "characters. Write a length in mm, in or thou, such as 6, 6mm, 0.25in or 40thou.",
        refusal("wall-thickness", "7".repeat(5000)));
    assertEquals("steps is 0 mm (option --steps, written 0?,1,1,1,1,1,1,1,1,1,1,1,1,1,1,1,1,1,1,1,1,1,1,1,1,1,1,1,1,1..."
        + "), below the minimum of 0.5 mm. Use 0.5 mm or more.", refusal("steps", "0\n" + ",1".repeat(1000)));
  }

  @ParameterizedTest
  @CsvSource({"6,6", "6mm,6", "' 6 mm ',6", "0.25in,6.35", "40thou,1.016", ".3in,7.62", "0.6e1,6", "+6,6"})
  void length_anyUnit_isMillimetres(String text, double mm) {
    assertEquals(mm, hook("wall-thickness", text).wallThickness(), 1e-12);
  }

  @Test
  void number_commaLocale_changesNothing() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("tr-TR"));
      assertEquals(Hand.RIGHT_HAND, hook("hand", "RIGHT-HAND").hand());
      assertEquals(2.5, hook("wall-thickness", "2.5").wallThickness());
      assertEquals("wall-thickness is 0.5 mm (option --wall-thickness, written 0.5), below the minimum of 1 mm. "
          .replace(", written 0.5", "") + "Use 1 mm or more.", refusal("wall-thickness", "0.5"));
    } finally {
      Locale.setDefault(before);
    }
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
      "wall-thickness | 0 | wall-thickness is 0 mm (option --wall-thickness), below the minimum of 1 mm. "
          + "Use 1 mm or more.",
      "wall-thickness | -3 | wall-thickness is -3 mm (option --wall-thickness), below the minimum of 1 mm. "
          + "Use 1 mm or more.",
      "wall-thickness | 1in | wall-thickness is 25.4 mm (option --wall-thickness, written 1in), "
          + "above the maximum of 9 mm. Use 9 mm or less.",
      "wall-thickness | 1e300 | wall-thickness is 1.0E300 mm (option --wall-thickness, written 1e300), "
          + "above the maximum of 9 mm. Use 9 mm or less.",
      "wall-thickness | 1e999 | wall-thickness is \"1e999\" (option --wall-thickness), not a length: too large a "
          + "number. Write a length in mm, in or thou, such as 6, 6mm, 0.25in or 40thou.",
      "wall-thickness | NaN | wall-thickness is \"NaN\" (option --wall-thickness), not a length: not a number. "
          + "Write a length in mm, in or thou, such as 6, 6mm, 0.25in or 40thou.",
      "wall-thickness | 3kg | wall-thickness is \"3kg\" (option --wall-thickness), not a length: unknown unit \"kg\". "
          + "Write a length in mm, in or thou, such as 6, 6mm, 0.25in or 40thou.",
      "wall-thickness | 3,5 | wall-thickness is \"3,5\" (option --wall-thickness), not a length: a decimal comma is "
          + "not read. Write a length in mm, in or thou, such as 6, 6mm, 0.25in or 40thou.",
      "lean | 3mm | lean is \"3mm\" (option --lean), not an angle: not a number. "
          + "Write an angle in degrees, such as 30 or 30deg.",
      "lean | 90deg | lean is 90 degrees (option --lean, written 90deg), above the maximum of 45 degrees. "
          + "Use 45 degrees or less.",
      "factor | 1mm | factor is \"1mm\" (option --factor), not a number: not a number. "
          + "Write a number without a unit, such as 1.5.",
      "screws | 2.5 | screws is \"2.5\" (option --screws), not a whole number. Write a count such as 1.",
      "screws | 99999999999 | screws is 9.9999999999E10 (option --screws, written 99999999999), "
          + "above the maximum of 4. Use 4 or less.",
      "hand | lef | hand is \"lef\" (option --hand), not one of: left, right-hand. Did you mean left?",
      "marked | maybe | marked is \"maybe\" (option --marked), neither yes nor no. Write yes or no.",
      "label | ABCDEFGHI | label is \"ABCDEFGHI\" (option --label), 9 characters long, above the maximum of 8. "
          + "Shorten it.",
      "steps | 1,,2 | steps is \"\" (option --steps, written 1,,2), not a length: empty. "
          + "Write a length in mm, in or thou, such as 6, 6mm, 0.25in or 40thou.",
      "tags | a | tags is \"a\" (option --tags), which is no NAME:SIZE. Write it such as a:1.",
      "wall-thicknes | 3 | there is no parameter \"wall-thicknes\" (option --wall-thicknes). "
          + "Did you mean wall-thickness?",
      "zzz | 3 | there is no parameter \"zzz\" (option --zzz). Known are: wall-thickness, reach, lean, factor, screws, "
          + "hand, marked, label, steps, tags.",
  })
  void value_bad_isRefusedInWholeWords(String key, String text, String message) {
    assertEquals(message, refusal(key, text));
  }

  @Test
  void resolve_severalFaults_namesAll() {
    InputException e = assertThrows(InputException.class, () -> hook("wall-thickness", "nan", "screws", "9"));
    assertEquals(List.of("wall-thickness", "screws"), e.faults().stream().map(Fault::parameter).toList());
  }

  @Test
  void resolve_recordRefuses_namesParameterAndWhereItWasGiven() {
    ParamValues<HookParams> values = ParamValues.of(ParamSpec.of(HookParams.class))
        .with("reach", Given.of("2", Origin.plan("truck.toml", 12, 3)));
    InputException e = assertThrows(InputException.class, () -> values.resolve("hook", null));
    assertEquals("hook: reach (2 mm) must exceed wall-thickness (3 mm) (reach: truck.toml, line 12, column 3). "
        + "Raise reach or lower wall-thickness.", e.getMessage());
    assertEquals(12, e.faults().get(0).where().line());
  }

  @Test
  void with_planAfterOption_leavesTheOption() {
    ParamValues<HookParams> values = ParamValues.of(ParamSpec.of(HookParams.class))
        .with("reach", Given.of("50", Origin.option("--reach")))
        .with("reach", Given.of("60", Origin.plan("truck.toml", 1, 1)));
    ParamValues.Resolved<HookParams> resolved = values.resolve("hook", null);
    assertEquals(50, resolved.record().reach());
    assertEquals(Origin.Kind.OPTION, resolved.values().get(1).origin().kind());
    assertEquals(Origin.DEFAULT, resolved.values().get(0).origin());
  }

  @Test
  void list_ofPlan_isNotSplitAtCommas() {
    ParamValues<HookParams> values = ParamValues.of(ParamSpec.of(HookParams.class))
        .with("steps", Given.list(List.of("0.1in", "3"), Origin.plan("truck.toml", 1, 1)));
    assertEquals(List.of(2.54, 3.0), values.resolve("hook", null).record().steps());
    assertEquals("2.54, 3", values.resolve("hook", null).values().get(8).text());
  }

  @Test
  void list_forSingleValue_isRefused() {
    ParamValues<HookParams> values = ParamValues.of(ParamSpec.of(HookParams.class))
        .with("reach", Given.list(List.of("5", "6"), Origin.option("--reach")));
    assertEquals("hook: reach is [5, 6] (option --reach), a list where one value is expected. Give one value.",
        assertThrows(InputException.class, () -> values.resolve("hook", null)).getMessage());
  }

  @Test
  void tags_severalWithCommas_areEachRead() {
    assertEquals(List.of(new Tag("a", 1), new Tag("b", 2)), hook("tags", "a:1, b:2").tags());
  }
}
