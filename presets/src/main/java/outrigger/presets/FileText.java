package outrigger.presets;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Reads a whole table file as text, telling what is wrong where it cannot be read. */
final class FileText {
  /** Largest file read, bytes; the largest table that comes with the program is a hundredth of it. */
  static final int LARGEST = 1 << 20;

  private FileText() {}

  /** @throws PresetFileException if the file is missing, a directory, unreadable, too large or not UTF-8 */
  static String read(Path path) {
    String file = path.toString();
    if (Files.isDirectory(path)) {
      throw Faults.whole(file, "this is a directory, not a table file. Give the file inside it.");
    }
    if (!Files.exists(path)) {
      throw Faults.whole(file, "there is no such file. Check the path.");
    }
    try (InputStream in = Files.newInputStream(path)) {
      byte[] bytes = in.readNBytes(LARGEST + 1);
      if (bytes.length > LARGEST) {
        throw Faults.whole(file, "the file is larger than 1 MiB, the most that is read. Split it.");
      }
      return decode(file, bytes);
    } catch (IOException unreadable) {
      throw Faults.whole(file, "the file cannot be read (" + unreadable.getClass().getSimpleName()
          + "). Check that you may read it.");
    }
  }

  private static String decode(String file, byte[] bytes) {
    CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPORT)
        .onUnmappableCharacter(CodingErrorAction.REPORT);
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length);
    boolean wrong = decoder.decode(in, out, true).isError();
    String text = out.flip().toString();
    if (wrong) {
      int lineStart = text.lastIndexOf('\n') + 1;
      Faults faults = new Faults(file);
      faults.add((int) text.chars().filter(c -> c == '\n').count() + 1, text.length() - lineStart + 1,
          "the text is not UTF-8 from here on. Save the file as UTF-8.");
      faults.throwIfAny();
    }
    // Some editors begin UTF-8 files with a byte order mark, which is no part of the text.
    return text.startsWith("\uFEFF") ? text.substring(1) : text;
  }
}
