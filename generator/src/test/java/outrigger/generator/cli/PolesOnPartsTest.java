package outrigger.generator.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import outrigger.generator.accessory.Accessories;

/** What is engraved on the demo truck's mounts and pads. */
class PolesOnPartsTest {
  private static final Pattern PART = Pattern.compile("\"name\" : \"([a-z-]+)\",\\s+\"kind\" : \"([a-z-]+)\"");
  private static final Pattern POLE = Pattern.compile("\"key\" : \"pole\",\\s+\"value\" : \"([^\"]+)\"");

  @TempDir
  Path folder;

  /** Unlike poles attract (a fact of physics): of each mount and its pad one shows N and the other S. */
  @Test
  void batch_demoTruck_matesShowUnlikePoles() throws Exception {
    Run run = Run.of(Accessories.kinds(), "batch", "../presets/plans/tidewick-tipper.toml", "--out",
        folder.resolve("out").toString());
    assertEquals("", run.err());
    Map<String, String> poles = poles(Files.readString(folder.resolve("out").resolve("manifest.json")));
    assertEquals(8, poles.size(), poles.toString());
    for (String mount : new String[] {"cab-front-left", "cab-front-right", "cab-rear-left", "cab-rear-right"}) {
      assertNotEquals(poles.get(mount), poles.get(mount + "-pad"), mount + " of " + poles);
    }
    // the front pair must not attract the rear pair's mounts, or the body would sit turned back to front
    assertEquals(poles.get("cab-front-left"), poles.get("cab-front-right"));
    assertNotEquals(poles.get("cab-front-left"), poles.get("cab-rear-left"));
  }

  private static Map<String, String> poles(String manifest) {
    Map<String, String> poles = new LinkedHashMap<>();
    Matcher part = PART.matcher(manifest);
    while (part.find()) {
      Matcher pole = POLE.matcher(manifest);
      if (part.group(2).startsWith("body-") && pole.find(part.end())) {
        poles.put(part.group(1), pole.group(1));
      }
    }
    return poles;
  }
}
