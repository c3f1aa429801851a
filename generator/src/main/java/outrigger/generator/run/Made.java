package outrigger.generator.run;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import outrigger.generator.accessory.Part;
import outrigger.generator.param.Value;
import outrigger.shapes.check.CheckedMesh;
import outrigger.shapes.check.Measures;
import outrigger.shapes.num.Workers;
import outrigger.shapes.print.PrintReport;
import outrigger.shapes.print.Printability;

/** One part made and proven sound, with the bytes of its file. */
public final class Made {
  private final String name;
  private final String kind;
  private final List<Value> values;
  private final Part part;
  private final CheckedMesh mesh;
  private final PrintReport report;
  private final byte[] stl;

  Made(String name, String kind, List<Value> values, Part part, CheckedMesh mesh, PrintReport report,
      byte[] stl) {
    this.name = name;
    this.kind = kind;
    this.values = List.copyOf(values);
    this.part = part;
    this.mesh = mesh;
    this.report = report;
    this.stl = stl;
  }

  /** Its name: the request's, with the part's suffix. */
  public String name() {
    return name;
  }

  /** What it is, such as {@code body-mount}. */
  public String kind() {
    return kind;
  }

  /** Name of its file. */
  public String file() {
    return name + ".stl";
  }

  /** Its parameters as they were used, in declared order. */
  public List<Value> values() {
    return values;
  }

  /** The part as built: pose, notes, stated dimensions, hardware. */
  public Part part() {
    return part;
  }

  /** What its mesh measures. */
  public Measures measures() {
    return mesh.measures();
  }

  /** Its mesh, proven. */
  public CheckedMesh mesh() {
    return mesh;
  }

  /** What of it a careful maker would worry about. */
  public PrintReport report() {
    return report;
  }

  /** The report with what its maps show beyond the limits. */
  PrintReport mapped() {
    return Printability.mapped(mesh, report, Workers.of(1));
  }

  /** Size of its file in bytes. */
  public int size() {
    return stl.length;
  }

  /** The bytes of its file, a copy. */
  public byte[] stl() {
    return stl.clone();
  }

  OutputFile output() {
    return new OutputFile(file(), stl);
  }

  /** SHA-256 of its file, 64 lower-case hexadecimal digits. */
  public String sha256() {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(stl));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
