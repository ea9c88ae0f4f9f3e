package wherefrom.logbook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.job.LogbookException;
import wherefrom.job.OpenJob;
import wherefrom.job.shelf.Resume;
import wherefrom.job.shelf.Shelf;

/**
 * What a list says of a job, kept in a small file beside its logbook. It counts only while the
 * logbook's files are those that it was made of, and this very program made it; else the logbook is
 * read. It is never copied, exported or read when a job is opened.
 */
final class JobIndex {
  static final String FILE = "logbook.index";
  static final String PART = ".logbook-index.part";
  private static final String FORMAT = "wherefrom-index 3";

  private final Path job;
  private final Clock clock;
  private final String program;

  /**
   * @param program tells this version of the program from every other: each counts and words in its
   *     own way
   */
  JobIndex(Path job, Clock clock, String program) {
    this.job = job;
    this.clock = clock;
    this.program = program;
  }

  /** What there is to say of the job, read anew where it has changed; empty where it is no job. */
  Optional<Shelf.Entry> find() {
    try {
      List<String> stamp = FileStamp.of(job);
      return stamp.isEmpty() ? Optional.empty() : find(stamp).or(() -> Optional.of(read(stamp)));
    } catch (NotDirectoryException | NoSuchFileException e) {
      return Optional.empty();
    } catch (IOException e) {
      return Optional.of(nameless(job + " cannot be read: " + DiskErrors.of(e) + "."));
    }
  }

  private Shelf.Entry read(List<String> stamp) {
    Shelf.Entry read = read();
    keep(stamp, read);
    return read;
  }

  private Shelf.Entry read() {
    try {
      FolderScan scanned = JobFolder.scan(job);
      return scanned.isUnused() ? nameless(FolderScan.unused(job)) : read(scanned);
    } catch (LogbookException e) {
      return nameless(String.valueOf(e.getMessage()));
    }
  }

  private Shelf.Entry read(FolderScan scanned) {
    try (OpenJob open = new OpenJob(LogbookFile.of(job, scanned), clock)) {
      return new Shelf.Entry(
          job, open.state().name(), Optional.of(Resume.of(open)), scanned.sentence());
    } catch (LogbookException e) {
      // Where it is damaged, that is why it makes no job.
      return nameless(
          scanned.trouble().isPresent() ? scanned.sentence() : String.valueOf(e.getMessage()));
    }
  }

  private Shelf.Entry nameless(String trouble) {
    return new Shelf.Entry(job, String.valueOf(job.getFileName()), Optional.empty(), trouble);
  }

  private Optional<Shelf.Entry> find(List<String> stamp) {
    List<String> wanted = head(stamp);
    try {
      return SealedLines.find(Files.readAllBytes(job.resolve(FILE)))
          .filter(lines -> lines.size() > wanted.size() + 1)
          .filter(lines -> lines.subList(0, wanted.size()).equals(wanted))
          .map(lines -> entry(lines.subList(wanted.size(), lines.size())));
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /** What an index of this logbook by this program begins with. */
  private List<String> head(List<String> stamp) {
    List<String> head = new ArrayList<>(List.of(FORMAT, program, String.valueOf(stamp.size())));
    head.addAll(stamp);
    return head;
  }

  private Shelf.Entry entry(List<String> lines) {
    List<String> resume = lines.subList(2, lines.size());
    return new Shelf.Entry(
        job,
        lines.get(0),
        resume.isEmpty() ? Optional.empty() : Optional.of(ResumeLines.read(resume)),
        lines.get(1));
  }

  /** Where it cannot be kept, as on a USB drive that is write-protected, the list takes longer. */
  private void keep(List<String> stamp, Shelf.Entry entry) {
    List<String> lines = head(stamp);
    lines.add(entry.name());
    lines.add(entry.trouble());
    entry.resume().map(ResumeLines::of).ifPresent(lines::addAll);
    try {
      Path part = job.resolve(PART);
      Files.write(part, SealedLines.seal(lines));
      Files.move(part, job.resolve(FILE), StandardCopyOption.REPLACE_EXISTING);
    } catch (IOException e) {
      // Nothing rests on it.
    }
  }
}
