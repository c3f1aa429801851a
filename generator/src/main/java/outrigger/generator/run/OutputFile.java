package outrigger.generator.run;

/** A file to be written: its name and its bytes, which the caller no longer changes. */
final class OutputFile {
  private final String name;
  private final byte[] bytes;

  OutputFile(String name, byte[] bytes) {
    this.name = name;
    this.bytes = bytes;
  }

  String name() {
    return name;
  }

  byte[] bytes() {
    return bytes;
  }
}
