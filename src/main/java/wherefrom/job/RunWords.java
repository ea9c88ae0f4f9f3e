package wherefrom.job;

import wherefrom.job.entry.EngineReopened;
import wherefrom.job.entry.PutInService;
import wherefrom.job.entry.RecordReopened;
import wherefrom.job.entry.RunInBegun;
import wherefrom.job.entry.RunInNoted;
import wherefrom.job.entry.RunInStopped;
import wherefrom.job.entry.RunInTakenUp;
import wherefrom.job.entry.ServiceDueTyped;
import wherefrom.job.entry.ServiceTicked;
import wherefrom.job.entry.UsageNoted;

/** Words of what happens from the first start on. */
final class RunWords {
  static final EntryRows<EntryWords, String> ROWS =
      EntryRows.<EntryWords, String>none()
          .on(RunInBegun.class, (words, begun) -> begun(begun))
          .on(RunInNoted.class, (words, note) -> noted(note))
          .on(RunInStopped.class, (words, stop) -> stopped(stop))
          .on(
              RunInTakenUp.class,
              (words, again) -> "run-in resumed" + EntryWords.behind(again.words()))
          .on(
              UsageNoted.class,
              (words, it) -> "run " + it.run().text() + EntryWords.behind(it.words()))
          .on(ServiceDueTyped.class, (words, due) -> due(due))
          .on(ServiceTicked.class, (words, tick) -> ticked(tick))
          .on(PutInService.class, (words, it) -> "put in service" + EntryWords.behind(it.words()))
          .on(
              RecordReopened.class,
              (words, it) -> "record opened again" + EntryWords.behind(it.why()))
          .on(
              EngineReopened.class,
              (words, it) -> "comes apart again" + EntryWords.behind(it.why()));

  private RunWords() {}

  private static String begun(RunInBegun begun) {
    return "run-in begun, "
        + begun.minutes()
        + " min at "
        + begun.lowRpm()
        + " to "
        + begun.highRpm()
        + " rpm"
        + EntryWords.behind(begun.anyway());
  }

  private static String noted(RunInNoted note) {
    return "run-in, " + note.gauge().words() + " " + note.reading().text();
  }

  private static String stopped(RunInStopped stop) {
    return "run-in stopped after "
        + stop.seconds() / 60
        + " min "
        + stop.seconds() % 60
        + " s: "
        + stop.why().words()
        + EntryWords.behind(stop.words());
  }

  private static String due(ServiceDueTyped due) {
    return "service "
        + due.point()
        + " due after "
        + due.after().text()
        + EntryWords.behind(due.source());
  }

  private static String ticked(ServiceTicked tick) {
    return "service "
        + tick.point()
        + (tick.done() ? ": done" : ": open again")
        + EntryWords.behind(tick.words());
  }
}
