package wherefrom.cli;

import wherefrom.job.ports.CheckFinding;
import wherefrom.job.ports.JobChecks;

/** Looks whether a job's files are sound. */
final class CheckCommand implements Command {
  private final JobChecks checks;

  CheckCommand(JobChecks checks) {
    this.checks = checks;
  }

  @Override
  public Usage usage() {
    return Usage.of("check", "", "Looks whether a job's files are sound; only reads.", Option.JOB)
        .noting("Exit status: 0 when nothing is damaged, 1 when something is.");
  }

  @Override
  public Status run(Call call, Answer answer) throws BadInput {
    boolean damaged = false;
    for (CheckFinding finding : checks.check(call.path("--job"))) {
      damaged |= finding.severity() == CheckFinding.Severity.DAMAGED;
      answer.row(
          Fields.of("severity", finding.severity().word())
              .and("sentence", finding.sentence())
              .and("remedy", finding.remedy()),
          Answer.cells(
              finding.severity().word(), (finding.sentence() + " " + finding.remedy()).strip()));
    }
    return Status.stoppedIf(damaged);
  }
}
