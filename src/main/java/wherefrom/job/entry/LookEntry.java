package wherefrom.job.entry;

import java.util.Optional;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;

/** A quick test was answered, of a part or of what carries no tag; the latest answer holds. */
public sealed interface LookEntry permits LookRecorded, FeatureLooked {
  /** What was looked at; empty where the logbook names what this program does not know. */
  Optional<Subject> findSubject();

  /** What was looked at, by its {@link Subject#key()}. */
  String subject();

  /** The check's key. */
  String check();

  Look look();

  /** In the person's words; may be empty. */
  String note();
}
