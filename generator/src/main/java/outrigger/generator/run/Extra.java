package outrigger.generator.run;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import outrigger.generator.param.Fault;
import outrigger.generator.param.InputException;
import outrigger.generator.param.Origin;
import outrigger.generator.picture.Pictures;
import outrigger.generator.picture.Shown;

/** What can be written beside print files. */
public abstract class Extra {
  /** {@code manifest.json}: of every part, where its parameters came from, what it promises and measures. */
  public static final Extra MANIFEST = manifest(json -> { });

  /**
   * A picture of each part beside its print file, a coloured map of what was measured on it, and of more than one all
   * together as {@code parts.png}.
   */
  public static final Extra PICTURES = new Extra() {
    @Override
    List<OutputFile> files(Batch batch, Crew crew) {
      boolean isSheetDrawn = batch.parts().size() > 1;
      if (isSheetDrawn && batch.parts().stream().anyMatch(made -> made.name().equalsIgnoreCase(SHEET))) {
        throw new InputException(Fault.of("", "a part is called " + SHEET + ", as is the picture of all parts",
            "Call it something else, or leave out the pictures.", Origin.option("name")));
      }
      refuseNameOfMap(batch);
      List<OutputFile> files = new ArrayList<>(crew.each(batch.parts(),
          made -> new OutputFile(made.name() + ".png", Pictures.one(shown(made)))));
      files.addAll(crew.each(batch.parts(),
          made -> new OutputFile(made.name() + MAP, Pictures.map(shown(made), made.mapped()))));
      if (isSheetDrawn) {
        files.add(new OutputFile(SHEET + ".png", Pictures.sheet(batch.parts().stream().map(Extra::shown).toList())));
      }
      return files;
    }
  };

  private static final String SHEET = "parts";
  /** Ends the names of coloured maps. */
  private static final String MAP = ".map.png";

  private Extra() {}

  /** The same with what was worked out over all parts. */
  public static Extra manifest(Json.Body working) {
    return new Extra() {
      @Override
      List<OutputFile> files(Batch batch, Crew crew) {
        return List.of(new OutputFile(Manifest.FILE, Manifest.bytes(batch, working)));
      }
    };
  }

  /** A text by the name of its file, in UTF-8. */
  public static Extra text(String name, String text) {
    return new Extra() {
      @Override
      List<OutputFile> files(Batch batch, Crew crew) {
        return List.of(new OutputFile(name, text.getBytes(StandardCharsets.UTF_8)));
      }
    };
  }

  abstract List<OutputFile> files(Batch batch, Crew crew);

  private static void refuseNameOfMap(Batch batch) {
    for (Made made : batch.parts()) {
      String picture = made.name() + ".png";
      if (batch.parts().stream().anyMatch(other -> picture.equalsIgnoreCase(other.name() + MAP))) {
        throw new InputException(Fault.of("", "a part is called " + made.name() + ", as is the map of another",
            "Call it something else, or leave out the pictures.", Origin.option("name")));
      }
    }
  }

  private static Shown shown(Made made) {
    return new Shown(made.name(), made.mesh());
  }
}
