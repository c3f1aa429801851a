package outrigger.generator.doc;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import outrigger.generator.accessory.Accessories;

class ParameterPagesTest {
  private static final Path PAGES = Path.of("..", "docs", "parameters");

  /** Where this fails: {@code generator/bin/outrigger kinds --pages docs/parameters}. */
  @Test
  void pages_ofDocs_areUpToDate() throws IOException {
    Map<String, String> pages = ParameterPages.all(Accessories.kinds());
    try (Stream<Path> files = Files.list(PAGES)) {
      List<String> names = files.map(file -> file.getFileName().toString()).sorted().toList();
      assertEquals(pages.keySet().stream().sorted().toList(), names);
    }
    for (Map.Entry<String, String> page : pages.entrySet()) {
      assertEquals(page.getValue(), Files.readString(PAGES.resolve(page.getKey())),
          page.getKey() + " is out of date: run generator/bin/outrigger kinds --pages docs/parameters");
    }
  }
}
