package outrigger.generator.plan;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import outrigger.generator.param.Fault;
import outrigger.generator.param.InputException;
import outrigger.generator.param.NearMiss;
import outrigger.generator.param.Origin;

/** Reads a plan file as text. */
final class PlanText {
  /** Largest plan read, bytes. */
  static final int LARGEST = 1 << 20;

  private PlanText() {}

  /** @throws InputException if it is missing, a folder, unreadable, too large or no UTF-8 text */
  static String read(Path path) {
    if (Files.isDirectory(path)) {
      throw refused(path, "the plan is a folder", "Give the plan file inside it" + inside(path) + ".");
    }
    if (!Files.exists(path)) {
      throw refused(path, "there is no such plan file", near(path));
    }
    try (InputStream in = Files.newInputStream(path)) {
      byte[] bytes = in.readNBytes(LARGEST + 1);
      if (bytes.length > LARGEST) {
        throw refused(path, "the plan is larger than " + LARGEST + " bytes, the most that is read", "Split it.");
      }
      return decoded(path, bytes);
    } catch (AccessDeniedException e) {
      throw refused(path, "the plan may not be read", "Give yourself the right to read it.");
    } catch (IOException e) {
      throw refused(path, "the plan cannot be read (" + e.getMessage() + ")", "Check the file and its disk.");
    }
  }

  private static String decoded(Path path, byte[] bytes) {
    CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPORT);
    CharBuffer text = CharBuffer.allocate(bytes.length);
    CoderResult end = decoder.decode(ByteBuffer.wrap(bytes), text, true);
    String decoded = text.flip().toString();
    int zero = decoded.indexOf('\0');
    if (zero >= 0) {
      throw new InputException(Fault.of("", "this is no text (" + place(path, decoded.substring(0, zero)).words()
          + " holds a zero byte)", "Give a plan written as text in TOML.", place(path, decoded.substring(0, zero))));
    }
    if (end.isError()) {
      Origin where = place(path, decoded);
      throw new InputException(Fault.of("", "the text is not UTF-8 (" + where.words() + ")",
          "Save the plan as UTF-8.", where));
    }
    // Some editors begin UTF-8 files with a byte order mark, which is no part of the text.
    return decoded.startsWith("\uFEFF") ? decoded.substring(1) : decoded;
  }

  private static Origin place(Path path, String before) {
    int line = (int) before.chars().filter(c -> c == '\n').count() + 1;
    return Origin.plan(name(path), line, before.length() - before.lastIndexOf('\n'));
  }

  static String name(Path path) {
    Path name = path.getFileName();
    return name == null ? path.toString() : name.toString();
  }

  private static InputException refused(Path path, String what, String advice) {
    return new InputException(Fault.of(path.toString(), what, advice, Origin.file(name(path))));
  }

  private static String near(Path path) {
    List<String> near = NearMiss.of(name(path), plans(path.toAbsolutePath().getParent()));
    return near.isEmpty() ? "Check the path." : "Did you mean " + String.join(" or ", near) + "?";
  }

  private static String inside(Path folder) {
    List<String> plans = plans(folder);
    return plans.isEmpty() ? "" : ", such as " + plans.get(0);
  }

  private static List<String> plans(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(PlanText::name).filter(n -> n.endsWith(".toml")).sorted().toList();
    } catch (IOException e) {
      return List.of();
    }
  }
}
