package outrigger.shapes.campaign;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import outrigger.shapes.check.CheckedMesh;
import outrigger.shapes.check.Proof;
import outrigger.shapes.mesh.Mesher;
import outrigger.shapes.num.ShapeException;
import outrigger.shapes.solid.Solid;
import outrigger.shapes.stl.StlException;
import outrigger.shapes.stl.StlReader;
import outrigger.shapes.stl.StlWriter;

/** Sends solids through a file. */
final class Stl {
  private Stl() {}

  /** The solid as read back from an STL file; the other one where it cannot be written because it touches itself. */
  static Solid reread(Solid solid, Solid otherwise) {
    try {
      return Proof.judge(Mesher.mesh(solid)).proven().map(Stl::through).orElse(otherwise);
    } catch (ShapeException touching) {
      return otherwise;
    }
  }

  private static Solid through(CheckedMesh mesh) {
    try {
      Path file = Files.createTempFile("campaign", ".stl");
      try {
        StlWriter.write(mesh, "operand", file);
        return StlReader.read(file).toSolid();
      } finally {
        Files.deleteIfExists(file);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (StlException e) {
      throw new AssertionError("a file that was just written cannot be read", e);
    }
  }
}
