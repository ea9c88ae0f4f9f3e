package wherefrom.cli;

import java.util.Optional;
import wherefrom.job.EngineJob;
import wherefrom.job.EntryWords;
import wherefrom.job.LoggedEntry;
import wherefrom.job.OpenJob;
import wherefrom.job.Undone;
import wherefrom.job.ports.Equipment;

/** Takes the last step back. */
final class TakeBackCommand implements Command {
  private static final Option BEFORE =
      Option.flag("--before", "take back the step before one that cannot be taken back");

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
            Option.JOB,
            BEFORE)
        .noting("What is printed cannot be taken back: it says so, with status 1.");
  }

  @Override
  public Status run(Call call, Answer answer) throws BadInput {
    try (Bench bench = Bench.open(equipment, call, answer)) {
      OpenJob job = bench.job();
      EngineJob before = job.state();
      Optional<LoggedEntry> stop = job.takeBackStop();
      if (stop.isPresent()) {
        return tookBack(stop.get(), EntryWords.of(before, stop.get().entry()), answer);
      }
      Undone undone = call.has(BEFORE) ? job.undoBefore() : job.undo();
      if (undone instanceof Undone.TookBack back) {
        return tookBack(back.step(), back.words(), answer);
      }
      if (undone instanceof Undone.Kept kept) {
        answer.only(
            Fields.of("takenBack", "").and("sentence", kept.why()).and("before", kept.before()),
            kept.why() + " With --before it takes back the step before: " + kept.before() + ".");
        return Status.STOPPED;
      }
      throw new BadInput(undone.sentence());
    }
  }

  private static Status tookBack(LoggedEntry step, String words, Answer answer) {
    answer.only(
        Fields.of("takenBack", words).and("sequence", step.sequence()),
        "Taken back: " + words + ".");
    return Status.RIGHT;
  }
}
