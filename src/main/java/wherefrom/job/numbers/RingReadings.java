package wherefrom.job.numbers;

import java.util.List;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Subject;
import wherefrom.job.LoggedEntry;
import wherefrom.job.OpenJob;
import wherefrom.job.entry.ReadingsTaken;
import wherefrom.job.entry.TakenReading;
import wherefrom.quantity.Amount;

/** The readings of one ring in the logbook: a set is logged anew with each reading of any ring. */
final class RingReadings {
  private final OpenJob job;

  RingReadings(OpenJob job) {
    this.job = job;
  }

  /** The sequence of the entry since which a ring reads as it does now; 0 where it was not read. */
  long since(Ring ring, String where) {
    String subject = new Subject.AFeature(Feature.RINGS, where).key();
    List<Amount> last = List.of();
    long since = 0;
    for (LoggedEntry logged : job.state().standing()) {
      if (logged.entry() instanceof ReadingsTaken taken
          && taken.subject().equals(subject)
          && taken.plan().equals(ring.plan())) {
        List<Amount> now = of(taken, ring);
        since = now.equals(last) ? since : logged.sequence();
        last = now;
      }
    }
    return since;
  }

  private static List<Amount> of(ReadingsTaken taken, Ring ring) {
    return taken.readings().stream()
        .filter(reading -> reading.station().equals(ring.id()))
        .map(TakenReading::reading)
        .toList();
  }
}
