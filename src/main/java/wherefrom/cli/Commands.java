package wherefrom.cli;

import java.io.BufferedReader;
import java.util.List;
import wherefrom.job.Backups;
import wherefrom.job.Equipment;
import wherefrom.job.JobChecks;

/** Every command, in the order of the job. */
final class Commands {
  private Commands() {}

  static List<Command> all(
      Equipment equipment, JobChecks checks, Backups backups, BufferedReader in) {
    return List.of(new LayoutsCommand(equipment));
  }
}
