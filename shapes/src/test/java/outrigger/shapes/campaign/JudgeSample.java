package outrigger.shapes.campaign;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import outrigger.shapes.check.Proof;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.stl.RawStl;

/** Shows results, sound and refused ones alike, to the outside judge, many files a process. */
final class JudgeSample {
  private static final int AT_ONCE = 50;
  private static final Pattern VALID = Pattern.compile("\"valid\":(true|false)");
  private static final Pattern VOLUME = Pattern.compile("\"volume\":([-+.0-9e]+)");

  private record Shown(long seed, Mesh mesh, Proof.Verdict verdict) {}

  private final String judge;
  private final Tally tally;
  private final List<Shown> waiting = new ArrayList<>();

  /**
   * @param judge path of its program
   */
  JudgeSample(String judge, Tally tally) {
    this.judge = judge;
    this.tally = tally;
  }

  synchronized void show(long seed, Outcome outcome) throws IOException {
    if (outcome.mesh().isPresent()) {
      waiting.add(new Shown(seed, outcome.mesh().get(), outcome.verdict().orElseThrow()));
    }
    if (waiting.size() >= AT_ONCE) {
      flush();
    }
  }

  /** Judges what is waiting. */
  synchronized void flush() throws IOException {
    if (waiting.isEmpty()) {
      return;
    }
    Path folder = Files.createTempDirectory("judged");
    List<String> command = new ArrayList<>(List.of(judge, "--no-thickness"));
    for (int i = 0; i < waiting.size(); i++) {
      Path file = folder.resolve(i + ".stl");
      RawStl.write(waiting.get(i).mesh, file);
      command.add(file.toString());
    }
    Process process = new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.DISCARD).start();
    List<String> lines;
    try (BufferedReader in = new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
      lines = in.lines().toList();
    }
    for (int i = 0; i < waiting.size(); i++) {
      compare(waiting.get(i), i < lines.size() ? lines.get(i) : "no answer");
      Files.delete(folder.resolve(i + ".stl"));
    }
    Files.delete(folder);
    waiting.clear();
  }

  private void compare(Shown shown, String line) {
    boolean sound = shown.verdict.proven().isPresent();
    tally.count(sound ? "shown to the outside judge, sound" : "shown to the outside judge, refused", 1);
    Matcher valid = VALID.matcher(line);
    Matcher volume = VOLUME.matcher(line);
    double own = shown.verdict.measures().volume();
    if (!valid.find() || !valid.group(1).equals(String.valueOf(sound))) {
      tally.fail(shown.seed, "the outside judge disagrees: " + line);
    } else if (sound && !(volume.find() && Math.abs(Double.parseDouble(volume.group(1)) - own) <= 1e-6 * own)) {
      tally.fail(shown.seed, "the outside judge weighs " + line + " against " + own);
    }
  }
}
