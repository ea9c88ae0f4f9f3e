package wherefrom.logbook;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import wherefrom.files.AtomicFile;
import wherefrom.job.LogbookException;
import wherefrom.job.ports.Archives;

/** Jobs as single ZIP files with a manifest of sums, and back. */
public final class JobArchives implements Archives {
  private final AtomicFile files;

  public JobArchives() {
    this(new AtomicFile());
  }

  /**
   * @param files writes archives, and the files of jobs that are brought back
   */
  public JobArchives(AtomicFile files) {
    this.files = files;
  }

  @Override
  public void export(Path jobFolder, Path file) throws IOException {
    if (Files.exists(file)) {
      throw new IOException(file + " exists already. Choose another name.");
    }
    try {
      FileChecks.requireJob(jobFolder);
      if (LogScan.of(jobFolder, new RealDisk()).isUnused()) {
        throw new LogbookException(FolderScan.unused(jobFolder));
      }
    } catch (LogbookException e) {
      throw new IOException(e.getMessage(), e);
    }
    try {
      new JobExport(jobFolder, files).to(file);
    } catch (IOException e) {
      throw new IOException("The job could not be exported: " + DiskErrors.andRemedy(e) + ".", e);
    }
  }

  @Override
  public Path restore(Path file, Path shelfFolder) throws IOException {
    return read(file, () -> importing(shelfFolder).from(file));
  }

  @Override
  public Optional<Path> findThere(Path file, Path shelfFolder) throws IOException {
    return read(file, () -> importing(shelfFolder).findThere(file));
  }

  private JobRestore importing(Path shelfFolder) {
    return new JobRestore(shelfFolder.toAbsolutePath().normalize(), files);
  }

  /** What is done with an exported file. */
  private interface Reading<T> {
    T read() throws IOException;
  }

  private static <T> T read(Path file, Reading<T> reading) throws IOException {
    if (!Files.isRegularFile(file)) {
      throw new IOException("There is no file " + file + ".");
    }
    try {
      return reading.read();
    } catch (IOException | IllegalArgumentException e) {
      String reason =
          e instanceof IOException io ? DiskErrors.andRemedy(io) : String.valueOf(e.getMessage());
      throw new IOException(
          file.getFileName() + " was not imported: " + ended(reason) + " Nothing was changed.", e);
    }
  }

  @Override
  public String text(Path jobFolder) throws IOException {
    StringBuilder text = new StringBuilder();
    for (Path file : LogFiles.in(jobFolder, new RealDisk()).values()) {
      text.append('\n').append(file.getFileName()).append('\n');
      text.append(new String(HeldFiles.read(file), StandardCharsets.UTF_8));
    }
    return text.toString();
  }

  private static String ended(String reason) {
    return reason.endsWith(".") ? reason : reason + ".";
  }
}
