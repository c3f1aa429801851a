package outrigger.shapes.stl;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import outrigger.shapes.mesh.Mesh;

/** Writes any mesh, sound or not: for showing spoiled ones to a judge. */
public final class RawStl {
  private RawStl() {}

  /** Writes a file. */
  public static void write(Mesh mesh, Path file) throws IOException {
    try (OutputStream out = Files.newOutputStream(file)) {
      StlEncoder.write(mesh, file.getFileName().toString(), out);
    }
  }
}
