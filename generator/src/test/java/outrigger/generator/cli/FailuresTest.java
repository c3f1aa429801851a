package outrigger.generator.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import outrigger.generator.run.Unsounds;

/** A part that fails its proof cannot be made on purpose, so its report is tried on a mesh left open. */
class FailuresTest {
  @Test
  void unsound_isToldByPlaceAndExits3() {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    Console console = new Console(new PrintWriter(out), new PrintWriter(err), false, false);
    assertEquals(Exit.UNSOUND, Failures.unsound(console, Unsounds.openTetrahedron()));
    assertTrue(err.toString().startsWith("lid: built, but its mesh is not sound:\n  open-edge: 3\n    at ("),
        err.toString());
    assertTrue(err.toString().endsWith("Nothing was written. This should not happen: please report it with the command "
        + "and its plan.\n"));
    assertEquals("", out.toString());
  }
}
