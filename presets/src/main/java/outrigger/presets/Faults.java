package outrigger.presets;

import java.util.ArrayList;
import java.util.List;
import org.tomlj.TomlPosition;

/** Gathers what is wrong with one file, so that all of it is told at once. */
final class Faults {
  private final String file;
  private final List<PresetFileException.Fault> found = new ArrayList<>();

  Faults(String file) {
    this.file = file;
  }

  void add(TomlPosition at, String text) {
    add(at.line(), at.column(), text);
  }

  void add(int line, int column, String text) {
    found.add(new PresetFileException.Fault(line, column, text));
  }

  /** Goes on only if nothing was found. */
  void throwIfAny() {
    if (!found.isEmpty()) {
      throw new PresetFileException(file, found);
    }
  }

  /** The exception for a fault of the file as a whole. */
  static PresetFileException whole(String file, String text) {
    return one(file, 0, 0, text);
  }

  /** The exception for the one fault that stops all reading. */
  static PresetFileException one(String file, int line, int column, String text) {
    return new PresetFileException(file, List.of(new PresetFileException.Fault(line, column, text)));
  }
}
