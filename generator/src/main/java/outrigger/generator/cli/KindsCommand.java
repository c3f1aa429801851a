package outrigger.generator.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import outrigger.generator.accessory.Accessory;
import outrigger.generator.accessory.Kinds;
import outrigger.generator.doc.KindsJson;
import outrigger.generator.doc.ParameterPages;
import outrigger.generator.run.Workshop;
import picocli.CommandLine;

/** {@code kinds}: what can be made, with {@code --json} every parameter; writes the parameter pages. */
@CommandLine.Command(name = "kinds", sortOptions = false, header = "List the kinds of part that can be made.")
final class KindsCommand implements Command {
  private final Kinds kinds;

  @CommandLine.Option(names = "--pages", paramLabel = "FOLDER",
      description = "Write a page of parameters for each kind into this folder.")
  private String pages = "";

  KindsCommand(Kinds kinds) {
    this.kinds = kinds;
  }

  @Override
  public int run(Console console) {
    if (!pages.isEmpty()) {
      Path folder = Arguments.path("--pages", pages);
      Workshop.writeTexts(ParameterPages.all(kinds), folder);
    }
    if (console.json()) {
      console.json(Exit.DONE, json -> json.objects("kinds", kinds.all(), KindsJson::write));
      return Exit.DONE;
    }
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("kind", "what it is"));
    for (Accessory<?> accessory : kinds.all()) {
      rows.add(List.of(accessory.kind(), accessory.summary()));
    }
    AlignedTable.lines(rows).forEach(console::line);
    return Exit.DONE;
  }
}
