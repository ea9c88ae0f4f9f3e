package wherefrom.job.entry;

import java.util.Optional;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;

/**
 * A quick test was answered. The check is named by its key; a later answer to the same check
 * replaces an earlier one.
 */
public record LookRecorded(int item, String check, Look look, String note)
    implements JobEntry, LookEntry {
  @Override
  public Optional<Subject> findSubject() {
    return Optional.of(Subject.ofPart(item));
  }

  @Override
  public String subject() {
    return Subject.ofPart(item).key();
  }
}
