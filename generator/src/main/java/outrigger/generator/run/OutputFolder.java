package outrigger.generator.run;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import outrigger.generator.param.Fault;
import outrigger.generator.param.InputException;
import outrigger.generator.param.Origin;

/**
 * A folder that files are written to, all or none: each as a temporary file beside its target, then all moved. A
 * program that is ended in between leaves no temporary file and no file half-written.
 */
final class OutputFolder {
  private final Path folder;
  private final List<Path> temporary = new ArrayList<>();
  private final List<Path> made = new ArrayList<>();
  /** Parts the temporary files of programs that write to the same folder. */
  private final String mark = Long.toString(System.nanoTime(), Character.MAX_RADIX);
  private boolean closed;

  OutputFolder(Path folder) {
    this.folder = folder;
  }

  /** @throws InputException if the folder or a file in it cannot be written; then nothing is changed */
  List<Path> write(List<OutputFile> files) {
    Thread cleaner = new Thread(this::discard, "outrigger-cleaner");
    Runtime.getRuntime().addShutdownHook(cleaner);
    try {
      refuseIfUnfit();
      makeFolder();
      files.forEach(this::refuseFolderInPlaceOf);
      for (OutputFile file : files) {
        writeTemporary(file);
      }
      return moveAll(files);
    } catch (IOException e) {
      throw refused(e);
    } finally {
      discard();
      forget(cleaner);
    }
  }

  private static void forget(Thread cleaner) {
    try {
      Runtime.getRuntime().removeShutdownHook(cleaner);
    } catch (IllegalStateException e) {
      // The program is being ended: the hook is running already.
    }
  }

  /**
   * Looks whether files can be written, before any work is done on them. Changes nothing.
   *
   * @throws InputException if a file stands in the folder's place or the folder may not be written
   */
  void refuseIfUnfit() {
    Path wanted = folder.toAbsolutePath().normalize();
    Path existing = wanted;
    while (existing.getParent() != null && !Files.exists(existing)) {
      existing = existing.getParent();
    }
    if (!Files.isDirectory(existing)) {
      throw new InputException(fault(existing.equals(wanted) ? "the output folder " + folder + " is a file"
          : "the output folder " + folder + " cannot be made, since " + existing.getFileName() + " is a file",
          "Give a folder with --out, or move that file away."));
    }
    if (!Files.isWritable(existing)) {
      throw refused(new AccessDeniedException(existing.toString()));
    }
  }

  private synchronized void makeFolder() throws IOException {
    List<Path> missing = new ArrayList<>();
    for (Path path = folder.toAbsolutePath().normalize(); !Files.exists(path); path = path.getParent()) {
      missing.add(0, path);
    }
    for (Path path : missing) {
      Files.createDirectory(path);
      made.add(path);
    }
  }

  private void refuseFolderInPlaceOf(OutputFile file) {
    if (Files.isDirectory(folder.resolve(file.name()))) {
      throw new InputException(fault("there is a folder named " + file.name() + " in " + folder
          + ", where a file is to be written", "Move it away or give another folder with --out."));
    }
  }

  private synchronized void writeTemporary(OutputFile file) throws IOException {
    refuseIfClosed();
    Path path = temporary(file);
    temporary.add(path);
    Files.write(path, file.bytes());
  }

  private Path temporary(OutputFile file) {
    return folder.resolve("." + file.name() + "." + mark + ".tmp");
  }

  private synchronized List<Path> moveAll(List<OutputFile> files) throws IOException {
    refuseIfClosed();
    List<Path> written = new ArrayList<>();
    for (OutputFile file : files) {
      Path target = folder.resolve(file.name());
      Files.move(temporary(file), target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
      written.add(target);
    }
    temporary.clear();
    made.clear();
    return written;
  }

  private void refuseIfClosed() throws IOException {
    if (closed) {
      throw new IOException("the program is being ended");
    }
  }

  /** Takes back everything that is not finished; afterwards nothing more is written. */
  private synchronized void discard() {
    closed = true;
    temporary.forEach(OutputFolder::deleteQuietly);
    for (int i = made.size() - 1; i >= 0; i--) {
      deleteQuietly(made.get(i));
    }
    temporary.clear();
    made.clear();
  }

  private static void deleteQuietly(Path path) {
    try {
      Files.deleteIfExists(path);
    } catch (IOException e) {
      // The fault that led here is told; a leftover of it is no second one.
    }
  }

  private InputException refused(IOException e) {
    String reason = e instanceof AccessDeniedException ? "access is denied"
        : e instanceof FileSystemException f && f.getReason() != null ? f.getReason() : String.valueOf(e.getMessage());
    return new InputException(fault("the output folder " + folder + " cannot be written (" + reason + ")",
        "Give a folder you may write to, with room on its disk, by --out."));
  }

  private Fault fault(String what, String advice) {
    return new Fault("", "out", what, folder.toString(), "", advice, Origin.option("--out"));
  }
}
