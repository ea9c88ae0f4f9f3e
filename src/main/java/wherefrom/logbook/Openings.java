package wherefrom.logbook;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import wherefrom.job.LogbookException;
import wherefrom.job.LoggedEntry;
import wherefrom.job.entry.JobOpened;

/** The first entries of jobs: their names and engine numbers. */
final class Openings {
  private Openings() {}

  /** How a job was opened; empty when that cannot be read. */
  static Optional<JobOpened> find(Path job) {
    try {
      return Optional.of(get(job));
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /**
   * How a job was opened.
   *
   * @throws IOException with a plain sentence when that cannot be read
   */
  static JobOpened get(Path job) throws IOException {
    Optional<JobOpened> first = OpeningLine.of(job).flatMap(OpeningLine::find);
    return first.isPresent() ? first.get() : fromAll(job);
  }

  /** How the job with this engine number was opened; empty when this is another job. */
  static Optional<JobOpened> find(Path job, int engine) {
    return find(job, OpeningLine.of(job), engine);
  }

  static Optional<JobOpened> find(Path job, Optional<OpeningLine> line, int engine) {
    boolean another = line.isPresent() && !line.get().mayBeOf(engine);
    return another ? Optional.empty() : find(job).filter(opened -> opened.engine() == engine);
  }

  private static JobOpened fromAll(Path job) throws IOException {
    try (LogbookFile logbook = LogbookFile.read(job)) {
      return logbook.entries().stream()
          .findFirst()
          .map(LoggedEntry::entry)
          .filter(JobOpened.class::isInstance)
          .map(JobOpened.class::cast)
          .orElseThrow(() -> new IOException("The logbook does not say which job it is."));
    } catch (LogbookException e) {
      throw new IOException(Objects.requireNonNullElse(e.getMessage(), "No job is there."), e);
    }
  }
}
