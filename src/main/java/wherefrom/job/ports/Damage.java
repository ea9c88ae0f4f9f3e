package wherefrom.job.ports;

import java.nio.file.Path;
import java.util.List;
import wherefrom.job.LogbookException;

/** What is damaged in a job: to be said by whoever copies it, lest the copy be taken for sound. */
public final class Damage {
  private Damage() {}

  /**
   * A sentence for each damage, with what to do; empty when the job is sound.
   *
   * @throws LogbookException when there is no job in the folder
   */
  public static List<String> of(JobChecks checks, Path job) {
    return among(checks.check(job));
  }

  /** The same of what was found already. */
  public static List<String> among(List<CheckFinding> findings) {
    return findings.stream()
        .filter(finding -> finding.severity() == CheckFinding.Severity.DAMAGED)
        .map(finding -> (finding.sentence() + " " + finding.remedy()).strip())
        .toList();
  }
}
