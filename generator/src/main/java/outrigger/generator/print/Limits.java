package outrigger.generator.print;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import outrigger.presets.Material;
import outrigger.presets.Printer;
import outrigger.shapes.num.ShapeException;
import outrigger.shapes.print.Limit;
import outrigger.shapes.print.PrintLimits;

/** The limits that a printer, a material and wishes for one part give. */
public final class Limits {
  private Limits() {}

  /**
   * A printer's row, then a material's, then wishes, each over the one before; what none of them says stays standard.
   *
   * @throws ShapeException if the printer's row or the material's has a value no limit takes
   */
  public static PrintLimits of(Printer printer, Optional<Material> material, Map<Limit, Double> wishes) {
    Map<Limit, Double> values = new EnumMap<>(Limit.class);
    values.put(Limit.NOZZLE, printer.nozzle());
    values.put(Limit.LAYER, printer.layer());
    values.put(Limit.FIRST_LAYER, printer.firstLayer());
    values.put(Limit.BED_X, printer.bedX());
    values.put(Limit.BED_Y, printer.bedY());
    values.put(Limit.BED_Z, printer.bedZ());
    values.put(Limit.OVERHANG, printer.overhang());
    values.put(Limit.BRIDGE, printer.bridge());
    values.put(Limit.WALL, printer.minimumWall());
    values.put(Limit.HEIGHT_ERROR, printer.layer() / 4);
    // One line's width decides what is printed at all, and two layers what closes; a wish for either moves what hangs on it.
    values.put(Limit.FLOOR, 2 * wishes.getOrDefault(Limit.LAYER, printer.layer()));
    double width = wishes.getOrDefault(Limit.EXTRUSION_WIDTH, printer.extrusionWidth());
    for (Limit line : new Limit[] {Limit.EXTRUSION_WIDTH, Limit.LEAST_WALL, Limit.GAP, Limit.STROKE}) {
      values.put(line, width);
    }
    material.ifPresent(filament -> values.put(Limit.DENSITY, filament.density()));
    values.putAll(wishes);
    return new PrintLimits(values);
  }

  /** What the one printer of a part's parameters gives, or the standard limits where it names none. */
  public static PrintLimits of(Record parameters, Optional<Material> material, Map<Limit, Double> wishes) {
    Optional<Printer> printer = printer(parameters);
    if (printer.isPresent()) {
      return of(printer.get(), material, wishes);
    }
    Map<Limit, Double> values = new EnumMap<>(Limit.class);
    material.ifPresent(filament -> values.put(Limit.DENSITY, filament.density()));
    values.putAll(wishes);
    return new PrintLimits(values);
  }

  private static Optional<Printer> printer(Record parameters) {
    for (java.lang.reflect.RecordComponent component : parameters.getClass().getRecordComponents()) {
      if (component.getType() == Printer.class) {
        try {
          component.getAccessor().setAccessible(true);
          return Optional.of((Printer) component.getAccessor().invoke(parameters));
        } catch (ReflectiveOperationException e) {
          throw new IllegalStateException(parameters.getClass() + " cannot be read", e);
        }
      }
    }
    return Optional.empty();
  }
}
