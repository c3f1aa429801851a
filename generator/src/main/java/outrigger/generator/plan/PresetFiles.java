package outrigger.generator.plan;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import outrigger.generator.param.Fault;
import outrigger.generator.param.InputException;
import outrigger.generator.param.Origin;
import outrigger.presets.PresetFileException;
import outrigger.presets.Shelf;

/** Lays table files of users over the standard tables. */
public final class PresetFiles {
  private PresetFiles() {}

  /**
   * The standard tables with a file laid over them.
   *
   * @throws InputException if the file cannot be used, with every fault
   */
  public static Shelf shelf(Optional<Path> own) {
    List<Fault> faults = new ArrayList<>();
    Shelf shelf = shelf(Optional.empty(), own, faults);
    if (!faults.isEmpty()) {
      throw new InputException(faults);
    }
    return shelf;
  }

  static Shelf shelf(Optional<Path> ofPlan, Optional<Path> own, List<Fault> faults) {
    Shelf shelf = Shelf.standard();
    for (Optional<Path> file : List.of(ofPlan, own)) {
      if (file.isPresent()) {
        shelf = laid(shelf, file.get(), faults);
      }
    }
    return shelf;
  }

  private static Shelf laid(Shelf shelf, Path file, List<Fault> faults) {
    try {
      return shelf.with(file);
    } catch (PresetFileException e) {
      e.faults().forEach(f -> faults.add(fault(e.file(), f)));
      return shelf;
    }
  }

  private static Fault fault(String file, PresetFileException.Fault fault) {
    String place = fault.line() == 0 ? "" : ", line " + fault.line() + ", column " + fault.column();
    String[] halves = fault.text().split("\\. ", 2);
    return Fault.of(file + place, halves[0].replaceAll("\\.$", ""), halves.length > 1 ? halves[1] : "",
        Origin.plan(file, fault.line(), fault.column()));
  }
}
