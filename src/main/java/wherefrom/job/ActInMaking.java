package wherefrom.job;

import java.time.Instant;
import java.util.List;
import wherefrom.job.entry.Act;

/**
 * An act that is being judged and done.
 *
 * @param id the act's number in the logbook
 * @param time of all that is done in it
 * @param expected the sequence of the last entry that it was judged on
 */
record ActInMaking(long id, Instant time, By by, long expected) {

  /** The sequence that it has once it is written. */
  long sequence() {
    return expected + 1;
  }

  /** All that was done in it, as one entry. */
  NewEntry whole(List<LoggedEntry> done) {
    return new NewEntry(id, time, by, Act.of(done.stream().map(LoggedEntry::entry).toList()));
  }
}
