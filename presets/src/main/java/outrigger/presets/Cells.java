package outrigger.presets;

import java.util.List;
import java.util.Map;

/** The values of one complete row by column, for making its record. */
final class Cells {
  private final Map<String, Datum> data;

  Cells(Map<String, Datum> data) {
    this.data = Map.copyOf(data);
  }

  String text(String column) {
    return ((Datum.Text) data.get(column)).text();
  }

  double number(String column) {
    return ((Datum.Amount) data.get(column)).number();
  }

  List<Double> numbers(String column) {
    return ((Datum.Amounts) data.get(column)).numbers();
  }
}
