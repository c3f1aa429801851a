package outrigger.shapes.stl;

import java.io.IOException;
import java.nio.file.Path;
import outrigger.shapes.check.CheckedMesh;

/** Writes proven meshes as binary STL. Pending. */
public final class StlWriter {
  private StlWriter() {}

  /** The file's bytes: same mesh and title, same bytes. */
  public static byte[] bytes(CheckedMesh mesh, String title) {
    throw new UnsupportedOperationException("pending");
  }

  /** Writes whole or not at all: a temporary file beside the target, then an atomic move. */
  public static void write(CheckedMesh mesh, String title, Path file) throws IOException {
    throw new UnsupportedOperationException("pending");
  }
}
