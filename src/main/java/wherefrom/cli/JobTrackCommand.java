package wherefrom.cli;

import java.util.ArrayList;
import java.util.List;
import wherefrom.job.ports.Equipment;
import wherefrom.job.tags.Tracking;
import wherefrom.parts.PartKind;

/** Tracks more kinds of part in a job that is begun already. */
final class JobTrackCommand {
  private static final Option KINDS =
      Option.needed("--kinds", "KIND,…|all", "the kinds to track from now on");

  private JobTrackCommand() {}

  static Command of(Equipment equipment) {
    return new JobCommand(
        Usage.of("job track", "", "Tracks more kinds of part from now on.", Option.JOB, KINDS)
            .noting(
                "Their places get the next numbers. It cannot be taken back: tags may exist."
                    + " Then: tags --new."),
        JobTrackCommand::track,
        equipment);
  }

  private static Status track(Bench bench, Call call, Answer answer) throws BadInput {
    Tracking tracking = new Tracking(bench.job());
    List<PartKind> kinds = new ArrayList<>();
    for (String key : call.listed(KINDS.name())) {
      if (key.equals("all")) {
        kinds.addAll(tracking.offered().keySet());
      } else {
        kinds.add(JobNewCommand.kind(key));
      }
    }
    Tracking.Answer came = tracking.track(kinds);
    if (came instanceof Tracking.Answer.Refused refused) {
      throw new BadInput(refused.sentence());
    }
    Tracking.Answer.Tracked tracked = (Tracking.Answer.Tracked) came;
    answer.only(
        Fields.of("first", tracked.first()).and("parts", tracked.parts()), tracked.sentence());
    return Status.RIGHT;
  }
}
