package wherefrom.server;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import wherefrom.files.Folders;
import wherefrom.job.LogbookException;
import wherefrom.job.entry.JobOpened;
import wherefrom.job.ports.Archives;
import wherefrom.job.ports.Backups;
import wherefrom.job.ports.CheckFinding;
import wherefrom.job.ports.JobChecks;
import wherefrom.logbook.BackupFolder;
import wherefrom.logbook.FileChecks;
import wherefrom.logbook.JobArchives;
import wherefrom.logbook.LogLines;
import wherefrom.logbook.PhotoFiles;

/**
 * What is done with a job of the server as with a folder: it is brought to this machine whole, and
 * then exported, checked or copied there; what is imported goes to the server once it is whole
 * here.
 */
final class ServerFolders implements Archives, JobChecks, Backups {
  private final Mirror mirror;
  private final ServerPhotos photos;
  private final NewRows jobs;
  private final JobArchives archives = new JobArchives();

  ServerFolders(Database database, Mirror mirror, ServerPhotos photos) {
    this.mirror = mirror;
    this.photos = photos;
    this.jobs = new NewRows(database);
  }

  private Path whole(Path job) throws IOException {
    try {
      Mirror.Held held = mirror.get(job);
      mirror.refresh(held);
      Path folder = mirror.folder(held.name());
      photos.fetchAll(folder);
      return folder;
    } catch (LogbookException e) {
      throw new IOException(e.getMessage(), e);
    }
  }

  @Override
  public void export(Path job, Path file) throws IOException {
    archives.export(whole(job), file);
  }

  @Override
  public String text(Path job) throws IOException {
    return archives.text(whole(job));
  }

  @Override
  public Path restore(Path file, Path shelf) throws IOException {
    mirror.refresh(0);
    Path folder = archives.restore(file, mirror.folder());
    try {
      List<LogLines.Line> lines = LogLines.of(folder);
      jobs.add(Mirror.name(folder), engine(lines), lines, photographs(folder));
      return folder;
    } catch (IOException | LogbookException e) {
      Folders.remove(folder);
      throw new IOException(
          file.getFileName() + " was not imported: " + e.getMessage() + " Nothing was changed.", e);
    }
  }

  @Override
  public Optional<Path> findThere(Path file, Path shelf) throws IOException {
    mirror.refresh(0);
    return archives.findThere(file, mirror.folder());
  }

  private static int engine(List<LogLines.Line> lines) throws IOException {
    return LogLines.read(lines).entries().stream()
        .findFirst()
        .filter(first -> first.entry() instanceof JobOpened)
        .map(first -> ((JobOpened) first.entry()).engine())
        .orElseThrow(() -> new IOException("its logbook does not say which job it is."));
  }

  private static Map<String, byte[]> photographs(Path folder) throws IOException {
    Map<String, byte[]> photographs = new HashMap<>();
    Path there = folder.resolve(PhotoFiles.FOLDER);
    if (Files.isDirectory(there)) {
      try (Stream<Path> inside = Files.list(there)) {
        for (Path photograph : inside.toList()) {
          photographs.put(Mirror.name(photograph), Files.readAllBytes(photograph));
        }
      }
    }
    return photographs;
  }

  @Override
  public List<CheckFinding> check(Path job) {
    try {
      return new FileChecks().check(whole(job));
    } catch (IOException e) {
      throw new LogbookException(String.valueOf(e.getMessage()), e);
    }
  }

  @Override
  public Copied copy(Path job, Path second) throws IOException {
    return new BackupFolder().copy(whole(job), second);
  }
}
