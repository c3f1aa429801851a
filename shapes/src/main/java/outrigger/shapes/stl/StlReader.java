package outrigger.shapes.stl;

import java.io.IOException;
import java.nio.file.Path;

/** Reads binary and ASCII STL. Pending. */
public final class StlReader {
  private StlReader() {}

  /** The facets as 32-bit floats, nine a facet, in file order. */
  public static StlFile read(Path file) throws IOException, StlException {
    throw new UnsupportedOperationException("pending");
  }
}
