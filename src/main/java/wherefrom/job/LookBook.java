package wherefrom.job;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import wherefrom.inspection.Subject;
import wherefrom.job.entry.LookEntry;

/** The answers to quick tests, by what was looked at. */
public final class LookBook {
  private final Map<String, List<LookEntry>> bySubject = new HashMap<>();

  LookBook(List<LoggedEntry> standing) {
    for (LoggedEntry logged : standing) {
      if (logged.entry() instanceof LookEntry look) {
        bySubject.computeIfAbsent(look.subject(), none -> new ArrayList<>()).add(look);
      }
    }
  }

  /** Those of a job. */
  public static LookBook of(EngineJob job) {
    return job.workedOut().lookBook();
  }

  /** Every answer about a subject, the oldest first. */
  public List<LookEntry> of(Subject subject) {
    return List.copyOf(bySubject.getOrDefault(subject.key(), List.of()));
  }
}
