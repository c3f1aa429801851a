package outrigger.generator.plan;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tomlj.TomlTable;
import outrigger.generator.accessory.tray.TrayParams;
import outrigger.generator.param.BadDimension;
import outrigger.generator.param.Fault;
import outrigger.generator.param.InputException;
import outrigger.generator.param.Origin;
import outrigger.generator.param.ParamValues;
import outrigger.generator.param.Texts;
import outrigger.generator.truck.RailForm;
import outrigger.generator.truck.RailParams;
import outrigger.generator.truck.Truck;
import outrigger.presets.LengthText;
import outrigger.presets.Shelf;

/**
 * Gives trays the rails where they go, which takes no more of the truck than these.
 *
 * @param file name of the plan
 */
record TrayFill(String file, Truck truck, Shelf shelf, List<Fault> faults) {
  /** Between a tray and the flanges over and under it, mm. */
  private static final double FLANGE_GAP = 0.2;
  private static final double STEP = 0.2;

  /** Key of a tray that says where along the truck its middle lies. */
  static final String X = "x";
  private static final double NOISE = 1e-9;

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
    Request<P> filled = TruckFill.with(request, solved, truck.rail().where()).at(middle);
    boolean isBetween = request.values().given("place").text().equals("between");
    return rail.form() == RailForm.CHANNEL && isBetween ? betweenFlanges(filled) : filled;
  }

  /** Hung so that it clears the flanges of a channel, where it and its screws can lie between them. */
  private <P extends Record> Request<P> betweenFlanges(Request<P> tray) {
    double web = truck.rail().record().web();
    double height = Double.parseDouble(tray.values().given("rail-height").text());
    double drop = Math.floor((height - web - FLANGE_GAP) / STEP + NOISE) * STEP;
    for (int i = 1; i * STEP < height - 2 * web; i++) {
      Request<P> hung = TruckFill.with(tray, Map.of("drop", rounded(drop), "screw-drop", rounded(web + i * STEP)),
          truck.rail().where()).at(tray.at().orElseThrow());
      if (top(hung).orElse(Double.MAX_VALUE) <= -web - FLANGE_GAP + NOISE) {
        return hung;
      }
    }
    return tray;
  }

  private static String rounded(double mm) {
    return Texts.number(Math.rint(mm * 1000) / 1000);
  }

  /** z of a tray's highest edge; empty where its sizes do not work together. */
  private <P extends Record> Optional<Double> top(Request<P> tray) {
    try {
      P record = tray.values().resolve(tray.name(), shelf).record();
      double drop = record instanceof TrayParams p ? p.drop() : 0;
      return Optional.of(tray.accessory().build(record, shelf).get(0).stated().get("height") - drop);
    } catch (BadDimension | InputException e) {
      return Optional.empty();
    }
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
