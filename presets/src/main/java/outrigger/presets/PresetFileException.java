package outrigger.presets;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** A table file cannot be used; all that is wrong with it, in the order of the file. */
public final class PresetFileException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final String file;
  private final transient List<Fault> faults;

  /**
   * One thing that is wrong.
   *
   * @param line line from 1, or 0 where the fault is with the file as a whole
   * @param column column from 1, or 0 where the fault is with the file as a whole
   * @param text what is wrong, the value, the limit and what to change
   */
  public record Fault(int line, int column, String text) {}

  PresetFileException(String file, List<Fault> faults) {
    super(inOrder(faults).stream().map(fault -> worded(file, fault)).collect(Collectors.joining("\n")));
    this.file = file;
    this.faults = inOrder(faults);
  }

  /** The file, as its path was given. */
  public String file() {
    return file;
  }

  /** Everything wrong with it, by line and column; never empty. */
  public List<Fault> faults() {
    return faults;
  }

  private static List<Fault> inOrder(List<Fault> faults) {
    return faults.stream().sorted(Comparator.comparingInt(Fault::line).thenComparingInt(Fault::column)).toList();
  }

  private static String worded(String file, Fault fault) {
    String place = fault.line() == 0 ? "" : ", line " + fault.line() + ", column " + fault.column();
    return file + place + ": " + fault.text();
  }
}
