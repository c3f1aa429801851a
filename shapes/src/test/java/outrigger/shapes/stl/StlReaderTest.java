package outrigger.shapes.stl;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import outrigger.shapes.check.Meshes;
import outrigger.shapes.check.Proof;
import outrigger.shapes.num.ShapeException;

class StlReaderTest {
  private static final String FACET = "facet normal 0 0 1\n outer loop\n  vertex 0 0 0\n  vertex 1 0 0\n"
      + "  vertex 0 1 0\n endloop\nendfacet\n";

  @TempDir
  private Path folder;

  private StlFile read(byte[] bytes) throws IOException, StlException {
    return StlReader.read(Files.write(folder.resolve("file.stl"), bytes));
  }

  private StlFile read(String text) throws IOException, StlException {
    return read(text.getBytes(StandardCharsets.ISO_8859_1));
  }

  private StlException refused(byte[] bytes) {
    StlException e = assertThrows(StlException.class, () -> read(bytes));
    assertTrue(e.getMessage().contains("byte " + e.offset()), e.getMessage());
    return e;
  }

  private StlException refused(String text) {
    return refused(text.getBytes(StandardCharsets.ISO_8859_1));
  }

  private static byte[] box() {
    return StlWriter.bytes(Proof.judge(Meshes.box(1 << 14, 2 << 14, 3 << 14).mesh()).proven().orElseThrow(), "box");
  }

  private static byte[] patched(int offset, int value) {
    byte[] bytes = box();
    ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN).putInt(offset, value);
    return bytes;
  }

  @Test
  void read_binaryBeginningWithSolid_isBinary() throws IOException, StlException {
    byte[] bytes = box();
    byte[] lie = ("solid box\nfacet normal 0 0 1\n" + " ".repeat(80)).substring(0, 80)
        .getBytes(StandardCharsets.US_ASCII);
    System.arraycopy(lie, 0, bytes, 0, 80);
    StlFile file = read(bytes);
    assertEquals(StlFile.Encoding.BINARY, file.encoding());
    assertEquals(12, file.facetCount());
    assertTrue(file.name().startsWith("solid box?facet"), file.name());
    byte[] cut = Arrays.copyOf(bytes, bytes.length - 1);
    assertTrue(refused(cut).getMessage().contains("cut short"), "a damaged binary file is not taken for ASCII");
  }

  @Test
  void read_truncated_bothCountsAndEndNamed() {
    byte[] bytes = box();
    for (int length : new int[] {85, 133, 134, 400, bytes.length - 1}) {
      StlException e = refused(Arrays.copyOf(bytes, length));
      assertEquals(length, e.offset());
      assertTrue(e.what().contains("promises 12 facets in 684 bytes"), e.what());
      assertTrue(e.what().contains("with " + (length - 84) / 50 + " whole facets"), e.what());
    }
    for (int length : new int[] {1, 20, 80}) {
      assertEquals(0, refused(Arrays.copyOf(bytes, length)).offset(), "text so far");
    }
    assertEquals(83, refused(new byte[83]).offset());
  }

  @Test
  void read_oversizedCount_refusedBeforeAllocation() {
    StlException e = refused(patched(80, -1));
    assertEquals(80, e.offset());
    assertTrue(e.what().contains("4294967295"), e.what());
    assertTrue(refused(patched(80, 200_000_000)).what().contains("promises 200000000 facets"));
  }

  @Test
  void read_trailingBytes_placeNamed() {
    StlException e = refused(Arrays.copyOf(box(), 700));
    assertEquals(684, e.offset());
    assertTrue(e.what().contains("16 bytes follow"), e.what());
    assertEquals(134, refused(patched(80, 1)).offset());
  }

  @Test
  void read_notFinite_facetAndByteNamed() {
    for (float bad : new float[] {Float.NaN, Float.POSITIVE_INFINITY, Float.NEGATIVE_INFINITY}) {
      int offset = 84 + 50 * 7 + 12 + 4 * 5;
      StlException e = refused(patched(offset, Float.floatToRawIntBits(bad)));
      assertEquals(offset, e.offset());
      assertTrue(e.what().contains("facet 8 "), e.what());
    }
  }

  @Test
  void read_notFiniteNormal_taken() throws IOException, StlException {
    assertEquals(12, read(patched(84, Float.floatToRawIntBits(Float.NaN))).facetCount());
  }

  @Test
  void read_emptyAndNoFacets_refused() {
    assertEquals("the file is empty (byte 0). Export it anew.", refused("").getMessage());
    assertEquals(80, refused(new byte[84]).offset());
    assertTrue(refused("solid nothing\nendsolid nothing\n").what().contains("no facets"));
  }

  @Test
  void read_otherFiles_namedForWhatTheyAre() {
    Random random = new Random(5);
    byte[] noise = new byte[3000];
    random.nextBytes(noise);
    for (String[] known : new String[][] {{"PK\u0003\u0004", "ZIP"}, {"\u0089PNG\r\n", "PNG"}, {"%PDF-1.7\n", "PDF"}}) {
      byte[] bytes = noise.clone();
      System.arraycopy(known[0].getBytes(StandardCharsets.ISO_8859_1), 0, bytes, 0, known[0].length());
      assertTrue(refused(bytes).what().contains(known[1]), known[1]);
    }
    assertTrue(refused("v 1 2 3\n".repeat(50)).what().contains("does not begin with \"solid\""));
    assertTrue(refused("solidify 1 2 3\n".repeat(50)).what().contains("does not begin with \"solid\""));
    refused(noise);
    assertTrue(assertThrows(StlException.class, () -> StlReader.read(folder)).what().contains("folder"));
    assertThrows(IOException.class, () -> StlReader.read(folder.resolve("missing.stl")));
  }

  @Test
  void read_ascii_namesAndNumbers() throws IOException, StlException {
    StlFile file = read("\n \tsolid  my part v2 \r\n"
        + "FACET NORMAL nan 0 -1e0\nouter loop vertex +1.5e+01 -.25 3.\r\nvertex 1E-3 0 0\tvertex 0 1 0\n"
        + "endloop endfacet\n" + FACET + "endsolid my part v2\nsolid\n" + FACET + "endsolid");
    assertEquals(StlFile.Encoding.ASCII, file.encoding());
    assertEquals("my part v2", file.name());
    assertEquals(3, file.facetCount());
    assertEquals(List.of(15f, -0.25f, 3f, 0.001f), List.of(file.coordinate(0, 0, 0), file.coordinate(0, 0, 1),
        file.coordinate(0, 0, 2), file.coordinate(0, 1, 0)));
  }

  @Test
  void read_asciiWithByteOrderMark_takenAndBytesCounted() throws IOException, StlException {
    String text = "solid part\n" + FACET + "endsolid part\n";
    StlFile file = read(("\ufeff" + text).getBytes(StandardCharsets.UTF_8));
    assertEquals(StlFile.Encoding.ASCII, file.encoding());
    assertEquals("part", file.name());
    assertEquals(1, file.facetCount());
    StlException e = refused(("\ufeff" + text.replace("outer", "?")).getBytes(StandardCharsets.UTF_8));
    assertEquals(3 + text.indexOf("outer"), e.offset());
    assertTrue(e.what().startsWith("line 3: "), e.what());
    assertTrue(refused("\ufeffv 1 2 3\n".getBytes(StandardCharsets.UTF_8)).what().contains("does not begin"));
  }

  @Test
  void read_asciiWithOtherLineEnds_sameFacets() throws IOException, StlException {
    String text = "solid my  part\n" + FACET + FACET + "endsolid my part\nsolid facet normal\n" + FACET + "endsolid\n";
    for (String end : List.of("\n", "\r", "\r\n", " ", "\t ")) {
      StlFile file = read(text.replace("\n", end));
      assertEquals(3, file.facetCount(), end);
      assertEquals("my  part", file.name(), end);
    }
    assertEquals("", read(("solid " + FACET + "endsolid").replace("\n", " ")).name());
    assertEquals("facet", read(("solid facet  " + FACET + "endsolid").replace("\n", " ")).name());
    String full = "part ".repeat(30);
    assertEquals(full.substring(0, 128).strip(), read("solid " + full + FACET + "endsolid").name());
  }

  @Test
  void read_asciiNameLikeAFacet_isAName() throws IOException, StlException {
    for (String name : List.of("facet normal", "a facet normal test", "facets normal 1", "facet normals 1", "my solid")) {
      StlFile file = read("solid " + name + "\n" + FACET + "endsolid " + name + "\n");
      assertEquals(name, file.name());
      assertEquals(1, file.facetCount());
    }
  }

  @Test
  void read_asciiOneLineFault_refused() {
    String line = ("solid a\n" + FACET + "endsolid a\n").replace("\n", " ");
    assertTrue(refused(line.replace("endsolid a", "")).what().contains("the file ends after 1 facets"));
    assertTrue(refused(line + FACET.replace("\n", " ")).what().contains("\"solid\" should stand here"));
    assertEquals(line.indexOf("outer"), refused(line.replace("outer", "?")).offset());
  }

  @Test
  void read_asciiOfBinary_sameFacets() throws IOException, StlException {
    StringBuilder text = new StringBuilder("solid ball\n");
    StlFile binary = read(StlWriter.bytes(
        Proof.judge(Meshes.ball(4, 9.3 * Meshes.MM).mesh()).proven().orElseThrow(), ""));
    for (int f = 0; f < binary.facetCount(); f++) {
      text.append("facet normal 0 0 0\nouter loop\n");
      for (int c = 0; c < 3; c++) {
        text.append(String.format(Locale.ROOT, "vertex %.9g %.9e %s%n", binary.coordinate(f, c, 0),
            binary.coordinate(f, c, 1), binary.coordinate(f, c, 2)));
      }
      text.append("endloop\nendfacet\n");
    }
    StlFile ascii = read(text.append("endsolid ball\n").toString());
    assertEquals(binary.facetCount(), ascii.facetCount());
    for (int i = 0; i < 9 * binary.facetCount(); i++) {
      assertEquals(binary.coordinate(i / 9, i / 3 % 3, i % 3), ascii.coordinate(i / 9, i / 3 % 3, i % 3));
    }
  }

  @ParameterizedTest(name = "{0} -> {1}")
  @CsvSource(delimiter = '|', value = {
      "vertex 1 0 0  | vertx 1 0 0         | line 5 | \"vertex\" should stand here, not \"vertx\"",
      "vertex 1 0 0  | vertex 1,0 0 0      | line 5 | a number should stand here, not \"1,0\"",
      "vertex 1 0 0  | vertex 1 0x1p3 0    | line 5 | a number should stand here, not \"0x1p3\"",
      "vertex 1 0 0  | vertex 1 0f 0       | line 5 | a number should stand here, not \"0f\"",
      "vertex 1 0 0  | vertex 1 0          | line 6 | a number should stand here, not \"vertex\"",
      "vertex 1 0 0  | vertex 1 0 nan      | byte   | facet 1 has a coordinate that is no finite number: nan",
      "vertex 1 0 0  | vertex 1 0 -INF     | byte   | facet 1 has a coordinate that is no finite number: -INF",
      "vertex 1 0 0  | vertex 1 0 1e99     | byte   | facet 1 has a coordinate that is no finite number: 1e99",
      "endloop       | vertex 1 1 1        | line 7 | \"endloop\" should stand here, not \"vertex\"",
      "endfacet      | facet               | line 8 | \"endfacet\" should stand here, not \"facet\"",
      "endsolid      | endsoli             | line 9 | \"facet\" should stand here, not \"endsoli\"",
      "endsolid      | ''                  | line 10 | the file ends after 1 facets without \"endsolid\"",
      "normal 0 0 1  | normal 0 0 up       | line 2 | a number should stand here, not \"up\"",
      "endsolid      | endsolid x;;more    | line 10 | \"solid\" should stand here, not \"more\""})
  void read_asciiFault_lineAndByteNamed(String part, String spoiled, String place, String what) {
    String sound = "solid\n" + FACET + "endsolid\n";
    assertTrue(sound.contains(part));
    String text = sound.replaceFirst(part, spoiled.replace(";;", "\n"));
    StlException e = refused(text);
    assertTrue(e.getMessage().contains(place) && e.what().contains(what), e.getMessage());
  }

  @Test
  void read_asciiFault_offsetOfTheWord() {
    String text = "solid part\r\n" + FACET + "endsolid\n";
    for (String word : List.of("normal", "outer", "loop", "vertex", "endloop", "endfacet", "endsolid")) {
      assertEquals(text.indexOf(word), refused(text.replaceFirst(word, "?")).offset(), word);
    }
    assertEquals(text.length() - 9, refused(text.substring(0, text.length() - 9)).offset(), "the end");
  }

  @Test
  void read_asciiCutAnywhere_refusedAtTheEnd() {
    String text = "solid a\n" + FACET + "endsolid";
    for (int length = 8; length < text.length(); length++) {
      StlException e = refused(text.substring(0, length));
      assertTrue(e.offset() <= length, e.getMessage());
    }
  }

  @Test
  void read_randomBytes_onlyStlExceptions() throws IOException {
    Random random = new Random(11);
    byte[] ascii = ("solid a\n" + FACET + FACET + "endsolid\n").getBytes(StandardCharsets.US_ASCII);
    for (int i = 0; i < 1000; i++) {
      byte[] bytes = i % 2 == 0 ? box() : ascii.clone();
      for (int k = random.nextInt(4); k >= 0; k--) {
        bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
      }
      try {
        assertTrue(read(Arrays.copyOf(bytes, bytes.length - random.nextInt(2) * random.nextInt(90))).facetCount() > 0);
      } catch (StlException e) {
        assertTrue(e.offset() >= 0, "case " + i + ", seed 11");
      }
    }
  }

  @Test
  void toMesh_offGrid_roundedAndSaid() throws IOException, StlException {
    StlFile file = read("solid\n" + FACET.replace("vertex 1 0 0", "vertex 1.00001 0 0")
        .replace("vertex 0 1 0", "vertex 0 -0.0000153 0") + "endsolid");
    StlFile.OnGrid onGrid = file.toMesh();
    assertEquals(2, onGrid.movedCorners());
    assertEquals(0.0000153, onGrid.largestMove(), 1e-9);
    assertEquals(1 << 14, onGrid.mesh().x(1));
    assertEquals(0, onGrid.mesh().y(onGrid.mesh().corner(0, 2)));
  }

  @Test
  void toMesh_outOfRange_placeAndLimitNamed() throws IOException, StlException {
    StlFile file = read("solid\n" + FACET + FACET.replace("vertex 1 0 0", "vertex 1 2000 0") + "endsolid");
    ShapeException e = assertThrows(ShapeException.class, file::toMesh);
    assertTrue(e.getMessage().startsWith(
        "y of corner 2 of facet 2 is 2000.0 mm, outside the range of +-1024 mm."), e.getMessage());
  }
}
