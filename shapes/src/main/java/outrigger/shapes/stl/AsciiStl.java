package outrigger.shapes.stl;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.util.Arrays;
import java.util.regex.Pattern;

/**
 * The ASCII form: {@code solid name}, facets, {@code endsolid name}; several solids in a row are taken as one. Keywords
 * in capitals or not, numbers with a decimal point and perhaps an exponent, whatever the machine's locale. It is a row of
 * words parted by white space; only a name ends with its line, or before a facet that begins in it.
 */
final class AsciiStl {
  private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d+)?");
  private static final Pattern NOT_FINITE = Pattern.compile("[+-]?(nan(\\(\\w*\\))?|inf(inity)?)",
      Pattern.CASE_INSENSITIVE);
  private static final Pattern SOLID = Pattern.compile("(^|\\s)solid(\\s|$)", Pattern.CASE_INSENSITIVE);
  private static final String ADVICE = "Repair the line or export the file anew.";
  /** A facet with short numbers takes about so many bytes; only a first guess at the room needed. */
  private static final int LIKELY_BYTES = 200;

  private final AsciiScanner scanner;
  private float[] coordinates;
  private int count;
  private String name = "";

  private AsciiStl(FileChannel channel, int from, long size) throws IOException {
    scanner = new AsciiScanner(channel, from);
    coordinates = new float[9 * (int) Math.min(StlReader.MOST_FACETS, size / LIKELY_BYTES + 16)];
  }

  static StlFile read(FileChannel channel, int from, long size) throws IOException, StlException {
    AsciiStl stl = new AsciiStl(channel, from, size);
    stl.solids();
    return new StlFile(StlFile.Encoding.ASCII, stl.name, stl.coordinates, stl.count);
  }

  private void solids() throws IOException, StlException {
    expect("solid");
    AsciiScanner.Line line = scanner.name();
    name = line.name();
    while (true) {
      facets(line.inFacet());
      line = scanner.name();
      if (line.inFacet()) {
        requireSolid(line.name());
        continue;
      }
      if (!scanner.next()) {
        break;
      }
      require("solid");
      line = scanner.name();
    }
    if (count == 0) {
      throw scanner.fault("the file has no facets", "Export it anew.");
    }
  }

  /** Between {@code endsolid} and a facet in the same line. */
  private void requireSolid(String names) throws StlException {
    if (!SOLID.matcher(names).find()) {
      throw scanner.fault("\"solid\" should stand here, not \"facet\"", ADVICE);
    }
  }

  /**
   * Facets up to and with {@code endsolid}.
   *
   * @param inFacet whether the first one's words up to its normal are read
   */
  private void facets(boolean inFacet) throws IOException, StlException {
    if (inFacet) {
      facet();
    }
    while (true) {
      if (!scanner.next()) {
        throw scanner.fault("the file ends after " + count + " facets without \"endsolid\"", "Copy or export it anew.");
      }
      if (scanner.is("endsolid")) {
        return;
      }
      require("facet");
      expect("normal");
      facet();
    }
  }

  /** What follows {@code facet normal}. */
  private void facet() throws IOException, StlException {
    for (int k = 0; k < 3; k++) {
      normal();
    }
    expect("outer");
    expect("loop");
    makeRoom();
    for (int corner = 0; corner < 3; corner++) {
      expect("vertex");
      for (int axis = 0; axis < 3; axis++) {
        coordinates[9 * count + 3 * corner + axis] = coordinate();
      }
    }
    expect("endloop");
    expect("endfacet");
    count++;
  }

  private void makeRoom() throws StlException {
    if (9L * (count + 1) > coordinates.length) {
      if (count == StlReader.MOST_FACETS) {
        throw scanner.fault("more than " + count + " facets", "Split the part.");
      }
      long facets = Math.min(StlReader.MOST_FACETS, count + count / 2L + 16);
      coordinates = Arrays.copyOf(coordinates, 9 * (int) facets);
    }
  }

  private void expect(String keyword) throws IOException, StlException {
    need("\"" + keyword + "\"");
    require(keyword);
  }

  private void require(String keyword) throws StlException {
    if (!scanner.is(keyword)) {
      throw scanner.fault("\"" + keyword + "\" should stand here, not \"" + scanner.shown() + "\"", ADVICE);
    }
  }

  private void need(String what) throws IOException, StlException {
    if (!scanner.next()) {
      throw scanner.fault("the file ends in facet " + (count + 1) + " where " + what + " should stand",
          "Copy or export it anew.");
    }
  }

  /** The normal is not used, so it may be anything that is meant as a number. */
  private void normal() throws IOException, StlException {
    need("a number");
    String text = scanner.text();
    if (!NUMBER.matcher(text).matches() && !NOT_FINITE.matcher(text).matches()) {
      throw notNumber();
    }
  }

  private float coordinate() throws IOException, StlException {
    need("a number");
    String text = scanner.text();
    if (NOT_FINITE.matcher(text).matches()) {
      throw BinaryStl.notFinite(count, text, scanner.offset());
    }
    if (!NUMBER.matcher(text).matches()) {
      throw notNumber();
    }
    float x = Float.parseFloat(text);
    if (!Float.isFinite(x)) {
      throw BinaryStl.notFinite(count, text, scanner.offset());
    }
    return x;
  }

  private StlException notNumber() {
    return scanner.fault("a number should stand here, not \"" + scanner.shown() + "\"", ADVICE);
  }
}
