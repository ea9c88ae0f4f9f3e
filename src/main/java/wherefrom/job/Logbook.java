package wherefrom.job;

import java.util.List;
import java.util.Optional;

/**
 * The append-only record of one job, which several benches may write. It can be used by several
 * threads.
 */
public interface Logbook extends AutoCloseable {

  /** Every entry that could be read, oldest first. */
  List<LoggedEntry> entries();

  /** Those of them behind a sequence, as far as this program knows by now; nothing is asked. */
  default List<LoggedEntry> since(long sequence) {
    List<LoggedEntry> all = entries();
    return all.subList((int) Math.min(sequence, all.size()), all.size());
  }

  /**
   * Writes an entry behind the one with this sequence, and nowhere else: what was judged on the
   * history up to there is written only while that is all of the history. It is kept for good
   * before this returns. One act is one entry, so that one is all there is to write at once.
   *
   * @param expected the sequence of the last entry that was known when the act was judged; 0 for
   *     none
   * @throws UnsentException when the store was out of reach, and nobody knows whether it is written
   * @throws LogbookException when it could not be written, or the logbook is open for reading only;
   *     the entry then does not count
   */
  Appended append(long expected, NewEntry entry);

  /**
   * The entry of an act that was sent while the store was out of reach, where it was written after
   * all; it is then among {@link #since}.
   *
   * @throws UnsentException when the store is still out of reach
   */
  default Optional<LoggedEntry> find(long act) {
    return Optional.empty();
  }

  /** A number for an act, unlike that of any other act of this opening. */
  long newAct();

  /**
   * Takes a bench for as long as the logbook is open.
   *
   * @param wanted from 1
   * @return the one that was wanted, or where somebody else has it, the next that is free
   */
  int takeBench(int wanted);

  /** Lets go of a bench. */
  void leaveBench(int bench);

  /**
   * Calls when something was written that another bench may not know. It is called on any thread.
   */
  void watch(Runnable news);

  /** What was noticed when the logbook was opened. */
  LogbookCondition condition();

  /** Lets go of the lock. */
  @Override
  void close();
}
