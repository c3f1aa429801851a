package outrigger.shapes.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import outrigger.shapes.check.Proof.Verdict;
import outrigger.shapes.mesh.Mesh;
import outrigger.shapes.stl.RawStl;

/**
 * The proof against an outside judge that shares no code with it: same validity and same counts. Runs where the
 * environment variable OUTRIGGER_JUDGE names the judge's program.
 */
class JudgeAgreementTest {
  private static final long SEED = 42;
  private static final Pattern FIELD = Pattern.compile("\"(\\w+)\":([^,}\\[]+)");

  @TempDir
  private Path folder;

  @Test
  void judge_spoiledMeshes_agree() throws IOException {
    List<Mesh> meshes = new ArrayList<>();
    for (SpoiledMeshes.Spoiled s : SpoiledMeshes.all().values()) {
      if (s.soup().size() > 0 && !s.rules().contains("out-of-range")) {
        meshes.add(s.soup().mesh());
      }
    }
    compare(meshes, "spoiled mesh");
  }

  @Test
  void judge_soundMeshes_agree() throws IOException {
    compare(SoundMeshes.all().values().stream().map(Soup::mesh).toList(), "sound mesh");
  }

  @Test
  void judge_randomBoxes_agree() throws IOException {
    Random random = new Random(SEED);
    List<Mesh> meshes = new ArrayList<>();
    for (int i = 0; i < 300; i++) {
      Soup soup = new Soup();
      for (int b = 1 + random.nextInt(3); b > 0; b--) {
        Soup box = Meshes.box(1 + random.nextInt(6), 1 + random.nextInt(6), 1 + random.nextInt(6))
            .move(random.nextInt(7), random.nextInt(7), random.nextInt(7));
        soup.add(random.nextInt(3) == 0 ? box.flip() : box);
      }
      meshes.add(soup.mesh());
    }
    compare(meshes, "boxes, seed " + SEED + ", case");
  }

  @Test
  void judge_randomCubes_agree() throws IOException {
    Random random = new Random(SEED);
    List<Mesh> meshes = new ArrayList<>();
    for (int i = 0; i < 200; i++) {
      boolean[][][] full = new boolean[4][3][3];
      double share = i % 2 == 0 ? 0.85 : 0.5;
      for (boolean[][] plane : full) {
        for (boolean[] row : plane) {
          for (int z = 0; z < row.length; z++) {
            row[z] = random.nextDouble() < share;
          }
        }
      }
      meshes.add(Meshes.cubes(full, 3).mesh());
    }
    compare(meshes, "cubes, seed " + SEED + ", case");
  }

  @Test
  void judge_bentMeshes_agree() throws IOException {
    Random random = new Random(SEED);
    List<Soup> sound = List.copyOf(SoundMeshes.all().values());
    List<Mesh> meshes = new ArrayList<>();
    for (int i = 0; i < 300; i++) {
      Soup soup = sound.get(random.nextInt(sound.size())).copy();
      for (int k = random.nextInt(3); k >= 0; k--) {
        bend(random, soup);
      }
      meshes.add(soup.mesh());
    }
    compare(meshes, "bent, seed " + SEED + ", case");
  }

  private static void bend(Random random, Soup soup) {
    int f = random.nextInt(soup.size());
    int[] from = soup.corner(f, 0);
    int[] to = random.nextBoolean() ? soup.corner(random.nextInt(soup.size()), 1) : from.clone();
    for (int k = 0; k < 3; k++) {
      to[k] = Math.max(-1 << 24, Math.min(1 << 24, to[k] + random.nextInt(5) - 2));
    }
    switch (random.nextInt(5)) {
      case 0 -> soup.remove(f).copy();
      case 1 -> soup.flip(f, f + 1);
      case 2 -> soup.moveCorner(f, 0, from, to);
      default -> soup.moveVertex(from, to);
    }
  }

  private void compare(List<Mesh> meshes, String what) throws IOException {
    String judge = System.getenv("OUTRIGGER_JUDGE");
    Assumptions.assumeTrue(judge != null, "OUTRIGGER_JUDGE is not set: no outside judge to agree with");
    List<String> command = new ArrayList<>(List.of(judge, "--no-thickness"));
    for (int i = 0; i < meshes.size(); i++) {
      Path file = folder.resolve(i + ".stl");
      RawStl.write(meshes.get(i), file);
      command.add(file.toString());
    }
    Process process = new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.DISCARD).start();
    List<String> lines;
    try (BufferedReader reader = new BufferedReader(
        new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
      lines = reader.lines().toList();
    }
    assertEquals(meshes.size(), lines.size());
    for (int i = 0; i < meshes.size(); i++) {
      compare(Proof.judge(meshes.get(i)), lines.get(i), what + " " + i);
    }
  }

  private static void compare(Verdict verdict, String line, String what) {
    Map<String, String> judged = new HashMap<>();
    for (Matcher m = FIELD.matcher(line); m.find();) {
      judged.put(m.group(1), m.group(2));
    }
    String both = what + ": " + verdict.tallies() + " against " + line;
    assertEquals(judged.get("valid"), String.valueOf(verdict.proven().isPresent()), both);
    assertEquals(judged.get("boundary_edges"), count(verdict, Rule.OPEN_EDGE), both);
    assertEquals(judged.get("nonmanifold_edges"), count(verdict, Rule.CROWDED_EDGE), both);
    if (judged.get("repeated_vertex_faces").equals("0")) {
      assertEquals(judged.get("nonmanifold_vertices"), count(verdict, Rule.PINCHED), both);
    }
    assertEquals(judged.get("degenerate_faces"), count(verdict, Rule.ZERO_AREA), both);
    assertEquals(judged.get("duplicate_faces"), count(verdict, Rule.DUPLICATE), both);
    assertEquals(judged.get("self_intersections"), count(verdict, Rule.CONTACT), both);
    assertEquals(judged.get("components"), String.valueOf(verdict.measures().shells()), both);
    if (count(verdict, Rule.CROWDED_EDGE).equals("0")) {
      assertEquals(judged.get("misoriented_edges"), count(verdict, Rule.FLIPPED), both);
    }
    if (verdict.measures().genus() != Measures.NO_GENUS) {
      assertEquals(judged.get("genus"), String.valueOf(verdict.measures().genus()), both);
    }
    if (verdict.notExamined().isEmpty()) {
      assertEquals(judged.get("winding_bad_components"), String.valueOf(Integer.parseInt(
          count(verdict, Rule.INSIDE_OUT)) + Integer.parseInt(count(verdict, Rule.NESTED))), both);
    }
    double area = verdict.measures().area();
    assertEquals(Double.parseDouble(judged.get("area")), area, 1e-6 * area, both);
    // an open surface's volume depends on the point it is taken from
    if (verdict.proven().isPresent()) {
      double volume = verdict.measures().volume();
      assertEquals(Double.parseDouble(judged.get("volume")), volume, 1e-6 * volume, both);
    }
  }

  private static String count(Verdict verdict, Rule rule) {
    return verdict.tallies().stream().filter(t -> t.rule().equals(rule.label()))
        .map(t -> String.valueOf(t.count())).findFirst().orElse("0");
  }
}
