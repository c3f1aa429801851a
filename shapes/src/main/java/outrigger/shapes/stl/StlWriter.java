package outrigger.shapes.stl;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;
import outrigger.shapes.check.CheckedMesh;
import outrigger.shapes.num.Workers;

/**
 * Writes proven meshes as binary STL, millimetres.
 *
 * <p>Corners are the mesh's own, exactly: every grid coordinate is a 32-bit float. A facet's corners stand
 * counter-clockwise seen from outside; its normal is that of its corners by the right-hand rule, of length 1 to within
 * rounding. The header begins with {@code Outrigger binary STL}, never with {@code solid}; attributes are 0. Same mesh
 * and title, same bytes.
 */
public final class StlWriter {
  private StlWriter() {}

  /**
   * The file's bytes.
   *
   * @param title stands in the header as far as it fits; characters other than printable ASCII become question marks
   */
  public static byte[] bytes(CheckedMesh mesh, String title) {
    return bytes(mesh, title, Workers.of(1));
  }

  /** The same, by several threads where there are many facets. */
  public static byte[] bytes(CheckedMesh mesh, String title, Workers workers) {
    return StlEncoder.bytes(mesh.mesh(), title, workers);
  }

  /** Writes to a stream, some facets at a time, and leaves it open. */
  public static void write(CheckedMesh mesh, String title, OutputStream out) throws IOException {
    StlEncoder.write(mesh.mesh(), title, out);
  }

  /**
   * Writes a file whole or not at all: to a temporary file beside it, then by an atomic move, or a plain one where the
   * file system has no atomic ones. A file already there is replaced. The folder must exist.
   *
   * @throws IOException if it cannot be written; what was there before is then unchanged and nothing else is left
   */
  public static void write(CheckedMesh mesh, String title, Path file) throws IOException {
    Path part = file.resolveSibling(".outrigger-" + UUID.randomUUID() + ".tmp");
    try {
      try (OutputStream out = Files.newOutputStream(part, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
        write(mesh, title, out);
      }
      move(part, file);
    } finally {
      Files.deleteIfExists(part);
    }
  }

  private static void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }
}
