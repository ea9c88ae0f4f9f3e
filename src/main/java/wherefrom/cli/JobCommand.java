package wherefrom.cli;

import java.io.IOException;
import wherefrom.job.ports.Equipment;

/** A command that does one thing with an open job. */
record JobCommand(Usage usage, Deed deed, Equipment equipment) implements Command {

  /** What is done. */
  interface Deed {
    Status with(Bench bench, Call call, Answer answer) throws BadInput, IOException;
  }

  @Override
  public Status run(Call call, Answer answer) throws BadInput, IOException {
    try (Bench bench = Bench.open(equipment, call, answer)) {
      return deed.with(bench, call, answer);
    }
  }
}
