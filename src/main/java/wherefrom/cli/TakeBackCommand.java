package wherefrom.cli;

import java.util.Optional;
import wherefrom.job.EngineJob;
import wherefrom.job.EntryWords;
import wherefrom.job.Equipment;
import wherefrom.job.LoggedEntry;
import wherefrom.job.OpenJob;

/** Takes the last step back. */
final class TakeBackCommand implements Command {
  private final Equipment equipment;

  TakeBackCommand(Equipment equipment) {
    this.equipment = equipment;
  }

  @Override
  public Usage usage() {
    return Usage.of(
        "take-back",
        "",
        "Takes the last step back, a stop that stands before all; nothing is erased.",
        Option.JOB);
  }

  @Override
  public Status run(Call call, Answer answer) throws BadInput {
    try (Bench bench = Bench.open(equipment, call, answer)) {
      OpenJob job = bench.job();
      EngineJob before = job.state();
      Optional<LoggedEntry> back = job.takeBackStop().or(job::takeBack);
      if (back.isEmpty()) {
        throw new BadInput("There is nothing left to take back.");
      }
      String step = EntryWords.of(before, back.get().entry());
      answer.only(
          Fields.of("takenBack", step).and("sequence", back.get().sequence()),
          "Taken back: " + step + ".");
      return Status.RIGHT;
    }
  }
}
