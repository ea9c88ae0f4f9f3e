package wherefrom.logbook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import wherefrom.job.EngineJob;
import wherefrom.job.LogbookException;
import wherefrom.job.OpenJob;
import wherefrom.job.tags.TagBook;

/** The typed codes of the jobs on a shelf. A job is read again only where its logbook has grown. */
final class TypedCodes {
  private record Known(long size, int engine, String name, Set<String> codes) {}

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

  private Optional<Known> find(Path job) {
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
      Set<String> codes = new TagBook(state, engine -> Optional.empty()).typed();
      return new Known(size, state.engine(), state.name(), codes);
    }
  }
}
