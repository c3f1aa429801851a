package outrigger.shapes.stl;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.mesh.TriangleMesh;
import org.apache.commons.geometry.io.euclidean.threed.IO3D;
import org.apache.commons.numbers.core.Precision;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import outrigger.shapes.check.CheckedMesh;
import outrigger.shapes.check.Meshes;
import outrigger.shapes.check.Proof;
import outrigger.shapes.check.Soup;
import outrigger.shapes.check.SoundMeshes;

/**
 * The layout by byte offsets: common practice, no standard describes it; and Apache Commons Geometry as an independent
 * reader.
 */
class StlWriterTest {
  private static final int MM = Meshes.MM;

  @TempDir
  private Path folder;

  private static CheckedMesh proven(Soup soup) {
    return Proof.judge(soup.mesh()).proven().orElseThrow();
  }

  private static ByteBuffer bytes(Soup soup, String title) {
    return ByteBuffer.wrap(StlWriter.bytes(proven(soup), title)).order(ByteOrder.LITTLE_ENDIAN);
  }

  @Test
  void bytes_tetrahedron_layoutByOffsets() {
    ByteBuffer b = bytes(Meshes.tetrahedron(2 * MM), "pad");
    assertEquals(84 + 4 * 50, b.capacity());
    byte[] count = Arrays.copyOfRange(b.array(), 80, 84);
    assertArrayEquals(new byte[] {4, 0, 0, 0}, count);
    float[] first = {0, 0, -1, 0, 0, 0, 0, 2, 0, 2, 0, 0};
    float third = (float) Math.sqrt(1 / 3.0);
    float[] last = {third, third, third, 2, 0, 0, 0, 2, 0, 0, 0, 2};
    for (int k = 0; k < 12; k++) {
      assertEquals(first[k], b.getFloat(84 + 4 * k), "float " + k);
      assertEquals(last[k], b.getFloat(84 + 150 + 4 * k), 1e-7f, "float " + k);
    }
    for (int f = 0; f < 4; f++) {
      assertEquals(0, b.getShort(84 + 50 * f + 48));
    }
    assertEquals(0x40000000, b.getInt(84 + 12 + 4 * 4), "2.0f, low byte first");
  }

  @Test
  void bytes_titles_headerIsAsciiAndNeverSolid() {
    for (String title : List.of("", "solid", "  mount 34.5  ", "gr\u00fcn\n\u20ac", "x".repeat(200))) {
      byte[] header = Arrays.copyOf(bytes(Meshes.tetrahedron(MM), title).array(), 80);
      String text = new String(header, StandardCharsets.US_ASCII);
      assertTrue(text.startsWith("Outrigger binary STL"), text);
      assertTrue(text.chars().allMatch(c -> c >= ' ' && c < 127), text);
    }
    byte[] odd = bytes(Meshes.tetrahedron(MM), "gr\u00fcn\n\u20ac").array();
    assertEquals("Outrigger binary STL: gr?n??", new String(odd, 0, 80, StandardCharsets.US_ASCII).strip());
  }

  @Test
  void writeThenRead_soundMeshes_sameFacetsAsFloatBits() throws IOException, StlException {
    Path file = folder.resolve("part.stl");
    for (Soup soup : SoundMeshes.all().values()) {
      CheckedMesh mesh = proven(soup);
      StlWriter.write(mesh, "part", file);
      assertArrayEquals(StlWriter.bytes(mesh, "part"), Files.readAllBytes(file));
      StlFile read = StlReader.read(file);
      assertEquals(soup.size(), read.facetCount());
      for (int f = 0; f < soup.size(); f++) {
        for (int c = 0; c < 3; c++) {
          for (int k = 0; k < 3; k++) {
            assertEquals(Float.floatToRawIntBits(soup.corner(f, c)[k] / 16384f),
                Float.floatToRawIntBits(read.coordinate(f, c, k)));
          }
        }
      }
      StlFile.OnGrid back = read.toMesh();
      assertEquals(0, back.movedCorners());
      assertEquals(mesh.measures(), Proof.judge(back.mesh()).proven().orElseThrow().measures());
    }
  }

  @Test
  void write_readByCommonsGeometry_sameVolumeAndArea() throws IOException {
    Path file = folder.resolve("part.stl");
    for (String name : List.of("box", "nest3", "cone", "torus24", "hollowBall", "prism12", "holedPlate3")) {
      CheckedMesh mesh = proven(SoundMeshes.all().get(name));
      StlWriter.write(mesh, name, file);
      TriangleMesh read = IO3D.readTriangleMesh(file, Precision.doubleEquivalenceOfEpsilon(1e-9));
      assertEquals(mesh.measures().facets(), read.getFaceCount(), name);
      assertEquals(mesh.measures().vertices(), read.getVertexCount(), name);
      double volume = read.triangleStream().mapToDouble(t -> t.getPoint1()
          .dot(t.getPoint2().cross(t.getPoint3())) / 6).sum();
      assertEquals(mesh.measures().volume(), volume, 1e-10 * volume, name);
      double area = read.triangleStream().mapToDouble(t -> t.getSize()).sum();
      assertEquals(mesh.measures().area(), area, 1e-10 * area, name);
    }
  }

  /** The whole solid as Commons Geometry sees it: its own volume and centroid, not a sum of ours. */
  @Test
  void write_readByCommonsGeometryAsSolid_sameSizeAndCentroid() throws IOException {
    Path file = folder.resolve("part.stl");
    for (String name : List.of("box", "nest2", "cone", "torus3", "prism9")) {
      CheckedMesh mesh = proven(SoundMeshes.all().get(name));
      StlWriter.write(mesh, name, file);
      var solid = IO3D.readTriangleMesh(file, Precision.doubleEquivalenceOfEpsilon(1e-9)).toTree();
      assertEquals(mesh.measures().volume(), solid.getSize(), 1e-6 * solid.getSize(), name);
      assertEquals(mesh.measures().centroidX(), solid.getCentroid().getX(), 1e-6, name);
      assertEquals(mesh.measures().centroidZ(), solid.getCentroid().getZ(), 1e-6, name);
    }
  }

  @Test
  void write_fileThere_replacedAndNothingLeft() throws IOException {
    Path file = folder.resolve("part.stl");
    Files.writeString(file, "old");
    StlWriter.write(proven(Meshes.box(MM, MM, MM)), "new", file);
    assertEquals(84 + 12 * 50, Files.size(file));
    assertEquals(List.of(file), list());
  }

  @Test
  void write_cannotReplace_targetUnchangedAndNothingLeft() throws IOException {
    Path taken = Files.createDirectory(folder.resolve("part.stl"));
    Files.writeString(taken.resolve("inside"), "kept");
    assertThrows(IOException.class, () -> StlWriter.write(proven(Meshes.box(MM, MM, MM)), "new", taken));
    assertEquals(List.of(taken), list());
    assertEquals("kept", Files.readString(taken.resolve("inside")));
    assertThrows(IOException.class,
        () -> StlWriter.write(proven(Meshes.box(MM, MM, MM)), "new", folder.resolve("none").resolve("part.stl")));
    assertEquals(List.of(taken), list());
  }

  @Test
  void write_streamFails_failurePassedOn() {
    OutputStream full = new OutputStream() {
      @Override
      public void write(int b) throws IOException {
        throw new IOException("disc full");
      }
    };
    assertThrows(IOException.class, () -> StlWriter.write(proven(Meshes.box(MM, MM, MM)), "t", full));
  }

  @Test
  void bytes_otherLocale_sameBytes() {
    byte[] expected = bytes(Meshes.ball(2, 9 * MM), "ball").array();
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG"));
      assertArrayEquals(expected, bytes(Meshes.ball(2, 9 * MM), "ball").array());
    } finally {
      Locale.setDefault(before);
    }
  }

  private List<Path> list() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.toList();
    }
  }
}
