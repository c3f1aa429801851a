package outrigger.generator.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BatchTest {
  private static final String PLAN = """
      title = "Trial"
      printer = "demo-0.6"
      material = "PETG"

      [defaults]
      wall-thickness = 1.5

      [[part]]
      kind = "hook"
      name = "pair"
      width = [10, "0.5in"]
      height = [5, 6.5]

      [[part]]
      kind = "hook"
      name = "sets"
      set = [[2, 3], [4]]
      """;

  @TempDir
  Path folder;
  private Path plan;

  @BeforeEach
  void writePlan() throws IOException {
    plan = Files.writeString(folder.resolve("trial.toml"), PLAN);
  }

  private Path batch(String name, String... more) {
    Path out = folder.resolve(name);
    String[] args = Stream.concat(Stream.of("batch", plan.toString(), "--out", out.toString()), Stream.of(more))
        .toArray(String[]::new);
    Run run = Run.hook(args);
    assertEquals("", run.err());
    assertEquals(Exit.DONE, run.exit());
    return out;
  }

  @Test
  void batch_lists_makeOnePartForEveryPairNamedAfterTheValues() throws IOException {
    assertEquals(List.of("hardware.csv", "manifest.json", "pair-width-0.5in-height-5.stl", "pair-width-0.5in-height-6.5.stl",
        "pair-width-10-height-5.stl", "pair-width-10-height-6.5.stl", "sets-set-2-3-2.stl", "sets-set-2-3-3.stl",
        "sets-set-4-4.stl"), BadOptionsTest.list(batch("out")));
  }

  @Test
  void batch_table_tellsEachPart() {
    Path out = folder.resolve("out");
    Run run = Run.hook("batch", plan.toString(), "--out", out.toString());
    assertEquals("""
        file                             kind  size                  facets        volume      bytes
        pair-width-10-height-5.stl       hook  10 x 10 x 5 mm            12       500 mm3  684 bytes
        pair-width-10-height-6.5.stl     hook  10 x 10 x 6.5 mm          12       650 mm3  684 bytes
        pair-width-0.5in-height-5.stl    hook  12.7 x 12.7 x 5 mm        12   806.444 mm3  684 bytes
        pair-width-0.5in-height-6.5.stl  hook  12.7 x 12.7 x 6.5 mm      12  1048.377 mm3  684 bytes
        sets-set-2-3-2.stl               hook  20 x 20 x 2 mm            12       800 mm3  684 bytes
        sets-set-2-3-3.stl               hook  20 x 20 x 3 mm            12      1200 mm3  684 bytes
        sets-set-4-4.stl                 hook  20 x 20 x 4 mm            12      1600 mm3  684 bytes

        7 parts, every one proven sound, in %s; notes, poses and hardware in %s.
        """.formatted(out, out.resolve("manifest.json")), run.outWithoutPrinting());
  }

  @Test
  void batch_anyNumberOfThreads_writesTheSameBytes() throws IOException {
    Path one = batch("one", "--threads", "1");
    Path many = batch("many", "--threads", "8");
    assertEquals(BadOptionsTest.list(one), BadOptionsTest.list(many));
    for (String name : BadOptionsTest.list(one)) {
      assertArrayEquals(Files.readAllBytes(one.resolve(name)), Files.readAllBytes(many.resolve(name)), name);
    }
  }

  @Test
  void manifest_tellsWhereEachValueCameFrom() throws IOException {
    String manifest = Files.readString(batch("out").resolve("manifest.json"));
    assertTrue(manifest.startsWith("{\n  \"program\" : \"outrigger "), manifest);
    assertTrue(manifest.contains("\"plan\" : \"trial.toml\",\n  \"title\" : \"Trial\",\n  \"material\" : \"PETG\","));
    assertTrue(manifest.contains("""
                  "key" : "printer",
                  "value" : "demo-0.6",
                  "from" : "plan",
                  "at" : "trial.toml, line 2, column 1"
        """.stripTrailing()), manifest);
    assertTrue(manifest.contains("""
                  "key" : "width",
                  "value" : 12.7,
                  "unit" : "mm",
                  "from" : "plan",
                  "at" : "trial.toml, line 11, column 14"
        """.stripTrailing()), manifest);
    assertTrue(manifest.contains("""
                  "key" : "wall-thickness",
                  "value" : 1.5,
                  "unit" : "mm",
                  "from" : "plan",
                  "at" : "trial.toml, line 6, column 1"
        """.stripTrailing()), manifest);
    assertTrue(manifest.contains("""
                  "key" : "screws",
                  "value" : 2,
                  "from" : "default"
        """.stripTrailing()), manifest);
  }

  @Test
  void manifest_measuresAndChecksum_areThoseOfTheFile() throws Exception {
    Path out = batch("out");
    String manifest = Files.readString(out.resolve("manifest.json"));
    byte[] file = Files.readAllBytes(out.resolve("pair-width-10-height-5.stl"));
    String sum = HexFormat.of()
        .formatHex(MessageDigest.getInstance("SHA-256").digest(file));
    assertTrue(manifest.contains("\"file\" : \"pair-width-10-height-5.stl\",\n      \"bytes\" : 684,\n"
        + "      \"sha256\" : \"" + sum + "\""), manifest);
    assertTrue(manifest.contains("\"volume-mm3\" : 500,"), manifest);
    assertTrue(manifest.contains("\"area-mm2\" : 400,"), manifest);
    assertTrue(!manifest.contains(folder.toString()), "no folder in a manifest");
  }

  @Test
  void batch_printerByOption_overridesThePlan() throws IOException {
    String manifest = Files.readString(batch("out", "--printer", "demo-0.25").resolve("manifest.json"));
    assertTrue(manifest.contains("\"value\" : \"demo-0.25\""), manifest);
    assertTrue(manifest.contains("\"at\" : \"option --printer\""), manifest);
    assertTrue(!manifest.contains("demo-0.6"), manifest);
  }

  @Test
  void batch_again_replacesItsFilesAndKeepsOthers() throws IOException {
    Path out = batch("out");
    Files.writeString(out.resolve("mine.txt"), "kept");
    Files.writeString(out.resolve("sets-set-4-4.stl"), "stale");
    batch("out");
    assertEquals("kept", Files.readString(out.resolve("mine.txt")));
    assertEquals(684, Files.size(out.resolve("sets-set-4-4.stl")));
  }

  @Test
  void batch_planWithByteOrderMarkAndCarriageReturns_isRead() throws IOException {
    Files.writeString(plan, "\uFEFF" + PLAN.replace("\n", "\r\n"));
    assertEquals(9, BadOptionsTest.list(batch("out")).size());
  }

  @Test
  void batch_presetsOfThePlan_areFoundBesideIt() throws IOException {
    Files.writeString(folder.resolve("own.toml"), """
        [source.callipers]
        kind = "user"
        text = "Callipers"

        [[screws.row]]
        name = "M3-socket"
        head-height = 2.9
        source = "callipers"
        """);
    Files.writeString(plan, "presets = \"own.toml\"\n" + PLAN);
    assertEquals(9, BadOptionsTest.list(batch("out")).size());
  }

  @Test
  void batch_picture_drawsEachPartAndAllOfThem() throws IOException {
    Path out = batch("drawn", "--picture");
    try (Stream<Path> files = Files.list(out)) {
      List<String> names = files.map(file -> file.getFileName().toString()).sorted().toList();
      List<String> pictures = names.stream().filter(name -> name.endsWith(".png")).toList();
      assertTrue(pictures.contains("parts.png"), names.toString());
      assertEquals(names.stream().filter(name -> name.endsWith(".stl")).count() * 2 + 1, pictures.size());
    }
  }

  @Test
  void batch_pictureOfAPartCalledParts_isRefusedAndWritesNothing() throws IOException {
    Files.writeString(plan, PLAN.replace("name = \"sets\"", "name = \"parts\"").replace("set = [[2, 3], [4]]", ""));
    Path out = folder.resolve("none");
    Run run = Run.hook("batch", plan.toString(), "--out", out.toString(), "--picture");
    assertEquals(Exit.BAD_INPUT, run.exit());
    assertTrue(run.err().contains("a part is called parts"), run.err());
    assertTrue(Files.notExists(out));
  }
}
