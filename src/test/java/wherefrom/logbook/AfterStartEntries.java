package wherefrom.logbook;

import java.util.List;
import wherefrom.engine.LifterType;
import wherefrom.job.entry.EngineReopened;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.entry.PutInService;
import wherefrom.job.entry.RecordReopened;
import wherefrom.job.entry.RunInBegun;
import wherefrom.job.entry.RunInEnd;
import wherefrom.job.entry.RunInGauge;
import wherefrom.job.entry.RunInNoted;
import wherefrom.job.entry.RunInStopped;
import wherefrom.job.entry.RunInTakenUp;
import wherefrom.job.entry.ServiceDueTyped;
import wherefrom.job.entry.ServiceTicked;
import wherefrom.job.entry.UsageNoted;
import wherefrom.parts.Place;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;

/** One example of every kind of entry from the first start on. */
final class AfterStartEntries {
  private AfterStartEntries() {}

  static List<JobEntry> all() {
    return List.of(
        new RunInBegun(1_500, 2_500, 20, "sheet of the cam", "the second person comes later"),
        new RunInNoted(RunInGauge.COOLANT, Amount.of("185", Unit.FAHRENHEIT)),
        new RunInStopped(RunInEnd.FUEL_LEAK, "at the pump", 482),
        new RunInTakenUp("line tightened"),
        new UsageNoted(Amount.of("35.5", Unit.MILE), "round the block"),
        new ServiceDueTyped("oil-again", Amount.of("10", Unit.HOUR), "sheet of the oil"),
        new ServiceTicked("oil", "filter clean", true),
        new PutInService("in the old truck"),
        new RecordReopened("it smokes"));
  }

  /** It comes apart again. */
  static List<JobEntry> again() {
    return List.of(
        new EngineReopened(
            "it smokes",
            LifterType.ROLLER,
            List.of(1, 76),
            List.of(
                Place.find("pushrod@1EX").orElseThrow(),
                Place.find("rod-shell@R2L").orElseThrow())));
  }
}
