package wherefrom.cli;

import java.io.BufferedReader;
import java.util.List;
import wherefrom.job.Equipment;

/** Every command, in the order of the job. */
final class Commands {
  private Commands() {}

  static List<Command> all(Equipment equipment, BufferedReader in) {
    return List.of(new LayoutsCommand(equipment));
  }
}
