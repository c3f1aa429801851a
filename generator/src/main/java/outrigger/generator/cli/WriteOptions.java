package outrigger.generator.cli;

import java.nio.file.Path;
import outrigger.generator.run.Batch;
import outrigger.generator.run.Extra;
import outrigger.generator.run.Workshop;
import picocli.CommandLine;

/** Whether parts that will not print as drawn, or clash on the truck, are written. */
final class WriteOptions {
  static final String ANYWAY = "--write-anyway";

  @CommandLine.Option(names = ANYWAY,
      description = "Write parts too that will not print as drawn or that clash on the truck; what is wrong is told all "
          + "the same.")
  private boolean anyway;

  /** Options read already. */
  static WriteOptions of(OptionTexts texts) {
    WriteOptions options = new WriteOptions();
    options.anyway = texts.has(ANYWAY);
    return options;
  }

  /** Whether what is wrong shall not stop the files. */
  boolean isAnyway() {
    return anyway;
  }

  void write(Workshop workshop, Batch batch, Path folder, Extra... extras) {
    if (anyway) {
      workshop.writeAnyway(batch, folder, extras);
    } else {
      workshop.write(batch, folder, extras);
    }
  }
}
