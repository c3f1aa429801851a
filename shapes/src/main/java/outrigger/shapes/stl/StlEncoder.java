package outrigger.shapes.stl;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.num.Grid;
import outrigger.shapes.num.Workers;

/** Turns a mesh into the bytes of a binary STL. */
final class StlEncoder {
  private static final String BEGINNING = "Outrigger binary STL";
  private static final int AT_ONCE = 512;
  /** Facets that are worth a thread. */
  private static final int MANY = 1 << 13;

  private StlEncoder() {}

  /** The whole file. */
  static byte[] bytes(Mesh mesh, String title, Workers workers) {
    byte[] bytes = new byte[Math.toIntExact(BinaryStl.size(mesh.facetCount()))];
    ByteBuffer buffer = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
    buffer.put(header(title)).putInt(mesh.facetCount());
    workers.split(mesh.facetCount(), MANY, (from, to) -> {
      ByteBuffer part = buffer.duplicate().order(ByteOrder.LITTLE_ENDIAN);
      part.position(BinaryStl.PREFIX + BinaryStl.FACET * from);
      for (int f = from; f < to; f++) {
        putFacet(part, mesh, f);
      }
    });
    return bytes;
  }

  static void write(Mesh mesh, String title, OutputStream out) throws IOException {
    ByteBuffer buffer = ByteBuffer.allocate(AT_ONCE * BinaryStl.FACET).order(ByteOrder.LITTLE_ENDIAN);
    buffer.put(header(title)).putInt(mesh.facetCount());
    for (int f = 0; f < mesh.facetCount(); f++) {
      if (buffer.remaining() < BinaryStl.FACET) {
        flush(buffer, out);
      }
      putFacet(buffer, mesh, f);
    }
    flush(buffer, out);
  }

  private static void flush(ByteBuffer buffer, OutputStream out) throws IOException {
    out.write(buffer.array(), 0, buffer.position());
    buffer.clear();
  }

  private static byte[] header(String title) {
    StringBuilder text = new StringBuilder(BEGINNING);
    if (!title.isBlank()) {
      text.append(": ");
      title.strip().chars().forEach(c -> text.append(c >= ' ' && c < 127 ? (char) c : '?'));
    }
    byte[] header = new byte[BinaryStl.HEADER];
    Arrays.fill(header, (byte) ' ');
    byte[] ascii = text.toString().getBytes(StandardCharsets.US_ASCII);
    System.arraycopy(ascii, 0, header, 0, Math.min(ascii.length, header.length));
    return header;
  }

  private static void putFacet(ByteBuffer buffer, Mesh mesh, int f) {
    int a = mesh.corner(f, 0);
    int b = mesh.corner(f, 1);
    int c = mesh.corner(f, 2);
    putNormal(buffer, mesh, a, b, c);
    putCorner(buffer, mesh, a);
    putCorner(buffer, mesh, b);
    putCorner(buffer, mesh, c);
    buffer.putShort((short) 0);
  }

  /** The cross product is exact; length and division round once each. */
  private static void putNormal(ByteBuffer buffer, Mesh mesh, int a, int b, int c) {
    long ux = mesh.x(b) - mesh.x(a);
    long uy = mesh.y(b) - mesh.y(a);
    long uz = mesh.z(b) - mesh.z(a);
    long vx = mesh.x(c) - mesh.x(a);
    long vy = mesh.y(c) - mesh.y(a);
    long vz = mesh.z(c) - mesh.z(a);
    double nx = uy * vz - uz * vy;
    double ny = uz * vx - ux * vz;
    double nz = ux * vy - uy * vx;
    double length = Math.sqrt(nx * nx + ny * ny + nz * nz);
    buffer.putFloat((float) (nx / length)).putFloat((float) (ny / length)).putFloat((float) (nz / length));
  }

  private static void putCorner(ByteBuffer buffer, Mesh mesh, int v) {
    buffer.putFloat((float) Grid.toMm(mesh.x(v))).putFloat((float) Grid.toMm(mesh.y(v)))
        .putFloat((float) Grid.toMm(mesh.z(v)));
  }
}
