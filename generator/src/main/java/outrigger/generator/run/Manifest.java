package outrigger.generator.run;

import java.nio.charset.StandardCharsets;

/** The list that goes with a batch: every part with its parameters, where each came from, measures and checksum. */
final class Manifest {
  static final String FILE = "manifest.json";

  private Manifest() {}

  /**
   * Holds no date and no folder, so that the same plan gives the same bytes.
   *
   * @param working what was worked out over all parts
   */
  static byte[] bytes(Batch batch, Json.Body working) {
    return Json.text(json -> {
      json.put("program", Version.words()).put("plan", batch.plan()).put("title", batch.title());
      if (batch.material().isPresent()) {
        json.put("material", batch.material().get().name());
      }
      json.objects("parts", batch.parts(), (part, made) -> PartJson.write(part, batch, made));
      working.write(json);
    }).getBytes(StandardCharsets.US_ASCII);
  }
}
