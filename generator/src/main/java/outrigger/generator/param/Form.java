package outrigger.generator.param;

import outrigger.presets.Shelf;

/** How the values of one parameter are written: the only parser of such text, wherever the text comes from. */
public sealed interface Form permits NumberForm, CountForm, YesNoForm, ChoiceForm, PresetForm, TextForm, RecordForm,
    ListForm, MeasureForm {

  /** What a value is, such as {@code length} or {@code choice}; fixed words, for programs. */
  String kind();

  /** Placeholder in help, such as {@code LENGTH} or {@code left|right}. */
  String placeholder();

  /** What is allowed, in words, such as {@code 1 mm to 9 mm}; empty where anything of its kind is. */
  String allowed();

  /**
   * Reads one value, in no locale.
   *
   * @throws BadText if the text is no such value or the value lies outside its range
   */
  Object parse(String text, Shelf shelf) throws BadText;

  /** The value as a user would write it, given the text it was read from. */
  String print(Object value, String text);
}
