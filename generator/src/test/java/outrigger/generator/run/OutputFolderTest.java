package outrigger.generator.run;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import outrigger.generator.param.InputException;

class OutputFolderTest {
  @TempDir
  Path parent;

  private static OutputFile file(String name, int... bytes) {
    byte[] content = new byte[bytes.length];
    for (int i = 0; i < bytes.length; i++) {
      content[i] = (byte) bytes[i];
    }
    return new OutputFile(name, content);
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(path -> path.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void write_missingFolder_makesItAndLeavesOnlyTheFiles() throws IOException {
    Path folder = parent.resolve("a/b");
    assertEquals(List.of(folder.resolve("x"), folder.resolve("y")),
        new OutputFolder(folder).write(List.of(file("x", 1, 2), file("y"))));
    assertEquals(List.of("x", "y"), names(folder));
    assertArrayEquals(new byte[] {1, 2}, Files.readAllBytes(folder.resolve("x")));
  }

  @Test
  void write_existingFile_isReplacedAndOthersStay() throws IOException {
    Files.writeString(parent.resolve("x"), "old");
    Files.writeString(parent.resolve("other"), "kept");
    new OutputFolder(parent).write(List.of(file("x", 7)));
    assertArrayEquals(new byte[] {7}, Files.readAllBytes(parent.resolve("x")));
    assertEquals("kept", Files.readString(parent.resolve("other")));
  }

  @Test
  void write_oneTargetIsAFolder_changesNothing() throws IOException {
    Files.writeString(parent.resolve("x"), "old");
    Files.createDirectory(parent.resolve("y"));
    InputException e = assertThrows(InputException.class,
        () -> new OutputFolder(parent).write(List.of(file("x", 7), file("y", 7))));
    assertEquals("there is a folder named y in " + parent + ", where a file is to be written. "
        + "Move it away or give another folder with --out.", e.getMessage());
    assertEquals(List.of("x", "y"), names(parent));
    assertEquals("old", Files.readString(parent.resolve("x")));
  }

  /** A name longer than any file system takes stands for a disk that fails after some files. */
  @Test
  void write_diskFailsInBetween_changesNothing() throws IOException {
    Files.writeString(parent.resolve("x"), "old");
    InputException e = assertThrows(InputException.class,
        () -> new OutputFolder(parent).write(List.of(file("x", 7), file("y".repeat(400), 7))));
    assertEquals("out", e.faults().get(0).parameter());
    assertEquals(List.of("x"), names(parent));
    assertEquals("old", Files.readString(parent.resolve("x")));
  }

  @Test
  void write_diskFailsInANewFolder_takesTheFolderBack() {
    Path folder = parent.resolve("a/b");
    assertThrows(InputException.class,
        () -> new OutputFolder(folder).write(List.of(file("x", 7), file("y".repeat(400), 7))));
    assertFalse(Files.exists(parent.resolve("a")));
  }

  @Test
  void write_fileInPlaceOfTheFolder_isRefused() throws IOException {
    Path inPlace = Files.writeString(parent.resolve("a"), "kept");
    assertThrows(InputException.class, () -> new OutputFolder(inPlace).write(List.of(file("x", 7))));
    assertThrows(InputException.class, () -> new OutputFolder(inPlace.resolve("b")).write(List.of(file("x", 7))));
    assertEquals("kept", Files.readString(inPlace));
  }
}
