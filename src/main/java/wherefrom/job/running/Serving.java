package wherefrom.job.running;

import java.util.Optional;
import wherefrom.job.NextLife;
import wherefrom.job.OpenJob;
import wherefrom.job.entry.PutInService;
import wherefrom.job.entry.RecordReopened;
import wherefrom.job.entry.ServiceDueTyped;
import wherefrom.job.entry.ServiceTicked;
import wherefrom.job.entry.UsageNoted;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Dimension;

/** Noting what the engine has run and what was done for it, and closing the record. */
public final class Serving {
  private final OpenJob job;

  public Serving(OpenJob job) {
    this.job = job;
  }

  public ServiceBook book() {
    return ServiceBook.of(job.state());
  }

  /**
   * Keeps how long or how far it has run in all since the first start.
   *
   * @throws IllegalArgumentException with a plain sentence where it is no such figure, or less than
   *     before
   */
  public void note(Amount run, String words) {
    job.inOne(() -> noteOnce(run, words));
  }

  private void noteOnce(Amount run, String words) {
    requireUsage(run);
    Optional<Amount> before = book().findRun(run.dimension());
    if (before.filter(last -> last.inBase().compareTo(run.inBase()) > 0).isPresent()) {
      throw new IllegalArgumentException(
          "It had run " + before.get().text() + " before. Type what it has run in all.");
    }
    job.record(new UsageNoted(run, words.strip()));
  }

  private static void requireUsage(Amount run) {
    boolean usage =
        run.dimension() == Dimension.RUNNING_TIME || run.dimension() == Dimension.DISTANCE;
    if (!usage || run.number().signum() < 0) {
      throw new IllegalArgumentException("Type hours (h), miles (mi) or kilometers (km).");
    }
  }

  /**
   * Keeps that a point was seen to, or is open again.
   *
   * @throws IllegalArgumentException with a plain sentence where there is no such point
   */
  public ServiceBook.Line tick(String key, String words, boolean done) {
    return job.asOne(() -> tickOnce(key, words, done));
  }

  private ServiceBook.Line tickOnce(String key, String words, boolean done) {
    ServicePoint point = point(key);
    job.record(new ServiceTicked(point.key(), words.strip(), done));
    return line(point);
  }

  /**
   * Keeps when a point is due in this engine.
   *
   * @throws IllegalArgumentException with a plain sentence where there is no such point, the figure
   *     is none of hours or distance, or the source is missing
   */
  public ServiceBook.Line typeDue(String key, Amount after, String source) {
    return job.asOne(() -> typeDueOnce(key, after, source));
  }

  private ServiceBook.Line typeDueOnce(String key, Amount after, String source) {
    ServicePoint point = point(key);
    requireUsage(after);
    if (source.isBlank()) {
      throw new IllegalArgumentException("Name where the figure comes from.");
    }
    job.record(new ServiceDueTyped(point.key(), after, source.strip()));
    return line(point);
  }

  private static ServicePoint point(String key) {
    return ServicePoint.find(key)
        .orElseThrow(
            () -> new IllegalArgumentException("There is no point of service \"" + key + "\"."));
  }

  private ServiceBook.Line line(ServicePoint point) {
    return book().lines().stream().filter(one -> one.point() == point).findFirst().orElseThrow();
  }

  /**
   * The engine is in service: the record of its build is closed.
   *
   * @throws IllegalArgumentException with a plain sentence where it is already, or runs in
   */
  public void putInService(String words) {
    job.inOne(() -> putInServiceOnce(words));
  }

  private void putInServiceOnce(String words) {
    if (job.state().service().since().isPresent()) {
      throw new IllegalArgumentException("It is in service already.");
    }
    if (RunIn.find(job.state()).filter(RunIn::isRunning).isPresent()) {
      throw new IllegalArgumentException("The run-in is on. Stop it first.");
    }
    job.record(new PutInService(words.strip()));
  }

  /**
   * The engine comes apart again: a next life begins, with every part known where it sits.
   *
   * @throws IllegalArgumentException with a plain sentence where it is not in service, no reason is
   *     given, or a part sits in the place of another that is out
   */
  public void comesApartAgain(String why) {
    job.inOne(() -> comesApartOnce(why));
  }

  private void comesApartOnce(String why) {
    if (job.state().service().since().isEmpty()) {
      throw new IllegalArgumentException("Put it in service first: that closes its record.");
    }
    if (why.isBlank()) {
      throw new IllegalArgumentException("Say why it comes apart again.");
    }
    if (!NextLife.isPossible(job.state())) {
      throw new IllegalArgumentException(
          "A part sits in the place of another that is out. Open the record and sort it out.");
    }
    job.record(NextLife.entry(job.state(), why.strip()));
  }

  /**
   * Opens the record again.
   *
   * @throws IllegalArgumentException with a plain sentence where it is open, or no reason is given
   */
  public void reopen(String why) {
    job.inOne(() -> reopenOnce(why));
  }

  private void reopenOnce(String why) {
    if (job.state().service().since().isEmpty()) {
      throw new IllegalArgumentException("The record is open.");
    }
    if (why.isBlank()) {
      throw new IllegalArgumentException("Say why the record is opened again.");
    }
    job.record(new RecordReopened(why.strip()));
  }
}
