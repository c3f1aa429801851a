package outrigger.generator.plan;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tomlj.TomlTable;
import outrigger.generator.param.Fault;
import outrigger.generator.param.Origin;
import outrigger.generator.param.ParamValues;
import outrigger.generator.param.Texts;
import outrigger.generator.truck.RailForm;
import outrigger.generator.truck.RailParams;
import outrigger.generator.truck.Truck;
import outrigger.presets.LengthText;

/**
 * Gives trays the rails where they go, which takes no more of the truck than these.
 *
 * @param file name of the plan
 */
record TrayFill(String file, Truck truck, List<Fault> faults) {
  /** Key of a tray that says where along the truck its middle lies. */
  static final String X = "x";

  <P extends Record> Request<P> tray(Request<P> request, TomlTable table) {
    RailParams rail = truck.rail().record();
    double half = length(request.values()) / 2;
    double middle = place(table).orElse(rail.front() - rail.length() / 2);
    Map<String, String> solved = new LinkedHashMap<>();
    double spacing = truck.rails().narrowest(middle - half, middle + half);
    solved.put("rail-web", Texts.number(rail.form() == RailForm.BOX ? rail.flange() : rail.web()));
    solved.put("rail-spacing", Texts.number(Math.floor(spacing * 1000) / 1000));
    solved.put("rail-height", Texts.number(Math.min(truck.rails().at(middle - half).height(),
        truck.rails().at(middle + half).height())));
    return TruckFill.with(request, solved, truck.rail().where()).at(middle);
  }

  private Optional<Double> place(TomlTable table) {
    Object value = table.get(List.of(X));
    if (value == null) {
      return Optional.empty();
    }
    LengthText.Result read = LengthText.parse(TomlText.text(value).orElse("?"));
    if (!read.isNumber()) {
      Origin where = TomlText.place(file, table, X);
      faults.add(new Fault("", X, X + " is no length (" + where.words() + ")", "", "",
          "Give the x of the tray's middle, such as -90.", where));
      return Optional.empty();
    }
    return Optional.of(read.value().getAsDouble());
  }

  private static double length(ParamValues<?> values) {
    return LengthText.parse(values.given("length").text()).value().orElse(0);
  }
}
