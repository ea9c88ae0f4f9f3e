package wherefrom.job.numbers;

import wherefrom.job.LoggedEntry;
import wherefrom.job.OpenJob;
import wherefrom.ui.sample.PaperLogbook;

/** A job's entries in a logbook of their own, as after a restart. */
final class SampleJobLog {
  private SampleJobLog() {}

  static PaperLogbook of(OpenJob job) {
    PaperLogbook log = new PaperLogbook();
    for (LoggedEntry logged : job.history()) {
      log.append(logged.time(), logged.entry());
    }
    return log;
  }
}
