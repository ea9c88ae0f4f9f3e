package wherefrom.cli;

import java.io.IOException;
import wherefrom.job.ports.Backups;

/** Brings the copy of a job in a second folder up to date. */
final class BackupCommand implements Command {
  private final Backups backups;

  BackupCommand(Backups backups) {
    this.backups = backups;
  }

  @Override
  public Usage usage() {
    return Usage.of(
            "backup",
            "",
            "Brings the copy of a job on a USB drive or another disk up to date.",
            Option.JOB,
            Option.needed("--to", "FOLDER", "the folder that holds the copies"))
        .noting(
            "Exit status: 1 when the job is damaged; a damaged logbook is copied to a folder of its",
            "own, and no older copy is written over.");
  }

  @Override
  public Status run(Call call, Answer answer) throws BadInput, IOException {
    Backups.Copied copied = backups.copy(call.path("--job"), call.path("--to"));
    answer.only(
        Fields.of("folder", copied.folder().toString())
            .and("files", copied.files())
            .and("upTo", copied.upTo())
            .and("damage", copied.damage())
            .and("safeToPullOut", copied.settled()),
        "Copied to " + copied.folder() + ": files written " + copied.files() + ".",
        copied.settled()
            ? "Everything is on it: safe to pull out."
            : "Eject it before you pull it out: this system does not say when all is on it.");
    copied.damage().forEach(answer::say);
    return Status.stoppedIf(!copied.damage().isEmpty());
  }
}
