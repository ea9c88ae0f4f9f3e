package wherefrom.ui.sample;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import wherefrom.job.Logbook;
import wherefrom.job.LogbookCondition;
import wherefrom.job.LogbookException;
import wherefrom.job.LoggedEntry;
import wherefrom.job.entry.JobEntry;

/** A logbook in memory, which can be made to fail as a full disk does. */
public final class PaperLogbook implements Logbook {
  private final List<LoggedEntry> entries = new ArrayList<>();
  private String failure = "";

  /** From now on nothing can be written, with this sentence; with an empty one it can again. */
  public void fail(String sentence) {
    failure = sentence;
  }

  @Override
  public Path folder() {
    return Path.of("sample-job");
  }

  @Override
  public List<LoggedEntry> entries() {
    return List.copyOf(entries);
  }

  @Override
  public LoggedEntry append(Instant time, JobEntry entry) {
    if (!failure.isEmpty()) {
      throw new LogbookException(failure);
    }
    LoggedEntry logged = new LoggedEntry(entries.size() + 1L, time, entry);
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
