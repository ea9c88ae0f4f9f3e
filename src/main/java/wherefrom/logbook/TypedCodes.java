package wherefrom.logbook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import wherefrom.job.EngineJob;
import wherefrom.job.LogbookException;
import wherefrom.job.LoggedEntry;
import wherefrom.job.OpenJob;
import wherefrom.job.tags.TagBook;
import wherefrom.parts.TagCode;

/**
 * The typed codes and printed tags of the jobs on a shelf. A job is read again only where its
 * logbook has grown.
 */
final class TypedCodes {
  private record Known(
      long size, int engine, String name, Set<String> codes, List<TagCode> printed, Instant last) {}

  private final Clock clock;
  private final Map<Path, Known> known = new HashMap<>();

  TypedCodes(Clock clock) {
    this.clock = clock;
  }

  /** The names of the jobs among these that have this typed code, this engine's left out. */
  List<String> list(List<Path> jobs, String digits, int engine) {
    return jobs.stream()
        .flatMap(job -> find(job).stream())
        .filter(job -> job.engine() != engine && job.codes().contains(digits))
        .map(Known::name)
        .distinct()
        .toList();
  }

  /** The tags of the jobs among these, the job that was last worked on first, one left out. */
  List<TagCode> listPrinted(List<Path> jobs, int engine) {
    return jobs.stream()
        .flatMap(job -> find(job).stream())
        .filter(job -> job.engine() != engine)
        .sorted(Comparator.comparing(Known::last).reversed())
        .flatMap(job -> job.printed().stream())
        .distinct()
        .toList();
  }

  private synchronized Optional<Known> find(Path job) {
    try {
      long size = size(job);
      Known before = known.get(job);
      if (before == null || before.size() != size) {
        known.put(job, read(job, size));
      }
      return Optional.ofNullable(known.get(job));
    } catch (IOException | LogbookException e) {
      // A job that cannot be read is said elsewhere; its tags are not known.
      return Optional.empty();
    }
  }

  private static long size(Path job) throws IOException {
    long size = 0;
    for (Path file : LogFiles.in(job, new RealDisk()).values()) {
      size += Files.size(file);
    }
    return size;
  }

  private Known read(Path job, long size) {
    try (OpenJob open = new OpenJob(LogbookFile.read(job), clock)) {
      EngineJob state = open.state();
      TagBook book = new TagBook(state, engine -> Optional.empty());
      // Action cards are no job's own.
      List<TagCode> printed =
          book.issued().stream().filter(code -> code.engine() == state.engine()).toList();
      List<LoggedEntry> entries = state.standing();
      Instant last = entries.isEmpty() ? Instant.EPOCH : entries.get(entries.size() - 1).time();
      return new Known(size, state.engine(), state.name(), book.typed(), printed, last);
    }
  }
}
