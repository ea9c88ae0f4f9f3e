package wherefrom.job;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import wherefrom.job.entry.JobEntry;

/** A logbook without a file, for tests of what follows from entries. */
public final class MemoryLogbook implements Logbook {
  private final List<LoggedEntry> entries = new ArrayList<>();

  @Override
  public Path folder() {
    return Path.of("memory");
  }

  @Override
  public List<LoggedEntry> entries() {
    return List.copyOf(entries);
  }

  @Override
  public LoggedEntry append(Instant time, JobEntry entry) {
    LoggedEntry logged = new LoggedEntry(entries.size() + 1, time, entry);
    entries.add(logged);
    return logged;
  }

  @Override
  public LogbookCondition condition() {
    return new LogbookCondition.Sound();
  }

  @Override
  public void close() {}
}
