package outrigger.presets;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever a file holds, it is taken or refused with its faults; nothing else comes out. */
class PresetFilePropertyTest {
  private static final long SEED = 20_240_607;
  private static final int ROUNDS = 400;
  private static final String[] PIECES = {"[", "]", "[[", "]]", "{", "}", "=", "\"", "'", "\"\"\"", ".", ",", "\n", "#",
      "-", "\\", "\\u", "nan", "inf", "1e999", "0x",
      "1979-05-27T07:32:00Z", "\\u0000", "\u0000", "\u00e9", "\uD83D\uDE9A", "name = 3\n",
      "[rails.row]\n", "source = 1\n", "[[source]]\n", "row = [[]]\n", "\"\" = 1\n", "a.b = 1\n", "true", "\t", "\r"};

  @TempDir
  private Path folder;

  @Test
  void with_mutilatedTables_takesOrRefuses() throws IOException {
    Random random = new Random(SEED);
    Path file = folder.resolve("mutilated.toml");
    int refused = 0;
    for (int round = 0; round < ROUNDS; round++) {
      TableInfo table = Shelf.standard().tables().get(random.nextInt(Shelf.standard().tables().size()));
      String text = mutilated(table.key(), random);
      Files.write(file, text.getBytes(StandardCharsets.UTF_8));
      try {
        Shelf.standard().with(file);
      } catch (PresetFileException expected) {
        assertFalse(expected.faults().isEmpty(), "seed " + SEED + " round " + round);
        refused++;
      } catch (RuntimeException | StackOverflowError other) {
        fail("seed " + SEED + " round " + round + ":\n" + text, other);
      }
    }
    assertTrue(refused > ROUNDS / 2, refused + " refused");
  }

  private static String mutilated(String key, Random random) throws IOException {
    StringBuilder text = new StringBuilder(
        Files.readString(Path.of("src/main/resources/outrigger/presets", key + ".toml")));
    for (int i = random.nextInt(4); i >= 0; i--) {
      int at = random.nextInt(text.length());
      if (random.nextBoolean()) {
        text.insert(at, PIECES[random.nextInt(PIECES.length)]);
      } else {
        text.delete(at, Math.min(text.length(), at + 1 + random.nextInt(20)));
      }
    }
    return text.toString();
  }
}
