package wherefrom.job.phone;

import java.util.concurrent.Callable;

/** Lets several work on one job, one after the other. */
@FunctionalInterface
public interface JobTurn {
  /**
   * Does something with the job when it is this one's turn, and gives what came of it.
   *
   * @throws wherefrom.job.LogbookException when it could not be written, or the turn did not come
   *     in time; nothing was done then
   */
  <T> T take(Callable<T> deed) throws Exception;
}
