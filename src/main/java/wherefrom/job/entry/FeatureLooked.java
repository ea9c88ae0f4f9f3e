package wherefrom.job.entry;

import java.util.Optional;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;

/**
 * A quick test of something that carries no tag was answered, such as a cam lobe; a later answer to
 * the same check there replaces an earlier one.
 *
 * @param subject the {@link Subject#key()}
 */
public record FeatureLooked(String subject, String check, Look look, String note)
    implements JobEntry, LookEntry {
  @Override
  public Optional<Subject> findSubject() {
    return Subject.find(subject);
  }
}
