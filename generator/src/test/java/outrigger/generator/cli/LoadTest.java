package outrigger.generator.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The axis along which a part is loaded, from the command line and from a plan. */
class LoadTest {
  private static final String PULLED = "a load along Z pulls apart";

  @TempDir
  private Path folder;

  private Path plan(String part) throws IOException {
    return Files.writeString(folder.resolve("plan.toml"), "[[part]]\nkind = \"hook\"\n" + part);
  }

  private Run batch(String part, String... options) throws IOException {
    String[] args = new String[options.length + 4];
    args[0] = "batch";
    args[1] = plan(part).toString();
    args[2] = "--out";
    args[3] = folder.toString();
    System.arraycopy(options, 0, args, 4, options.length);
    return Run.hook(args);
  }

  private String manifest() throws IOException {
    return Files.readString(folder.resolve("manifest.json"));
  }

  @Test
  void make_load_ranksPosesByIt() {
    Run run = Run.hook("make", "hook", "--load", "Z", "--out", folder.toString());
    assertTrue(run.out().contains(PULLED), run.out() + run.err());
    assertFalse(Run.hook("make", "hook", "--out", folder.toString()).out().contains(PULLED));
  }

  @Test
  void batch_load_isThatOfThePartOrTheCommandLine() throws IOException {
    assertEquals(0, batch("").exit());
    assertFalse(manifest().contains(PULLED));
    assertEquals(0, batch("load = \"Z\"\n").exit());
    assertTrue(manifest().contains(PULLED));
    assertEquals(0, batch("load = \"Z\"\n", "--load", "X").exit());
    assertFalse(manifest().contains(PULLED));
  }

  @Test
  void batch_loadThatIsNoAxis_isToldWithItsLine() throws IOException {
    Run run = batch("load = \"down\"\n");
    assertEquals(2, run.exit());
    assertTrue(run.err().contains("there is no axis \"down\" (") && run.err().contains("line 3"), run.err());
    assertTrue(batch("load = 3\n").err().contains("load is a number"));
  }
}
