package wherefrom.job.photos;

import java.util.Optional;
import wherefrom.inspection.Subject;
import wherefrom.job.LogbookException;
import wherefrom.job.OpenJob;
import wherefrom.job.bags.BagBook;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.entry.PhotoAdded;
import wherefrom.job.entry.SubjectPhotographed;

/** Keeping photographs of parts, of what carries no tag, and of the whole engine. */
public final class Photographing {
  private final OpenJob job;

  public Photographing(OpenJob job) {
    this.job = job;
  }

  /** Why there can be no photograph of this here, in a sentence; empty where there can. */
  public Optional<String> findFault(Subject subject) {
    return subject.match(
        part ->
            fault(
                job.state().findPart(part.item()).isPresent(),
                "This job has no part " + part.item() + "."),
        at ->
            fault(
                at.feature().where(job.state().layout()).contains(at.where()),
                "This engine has no " + at.words() + "."),
        beside ->
            fault(BagBook.of(job.state()).has(beside), "This job has no " + beside.words() + "."));
  }

  private static Optional<String> fault(boolean known, String sentence) {
    return known ? Optional.empty() : Optional.of(sentence);
  }

  /**
   * To be asked before the file is put into the job's folder: what cannot be recorded is not put
   * there either.
   *
   * @throws LogbookException when the job is open for reading only
   * @throws IllegalArgumentException with a sentence when the job has no such part or place
   */
  public void require(Optional<Subject> subject) {
    job.requireWritable();
    Optional<String> fault = subject.flatMap(this::findFault);
    if (fault.isPresent()) {
      throw new IllegalArgumentException(fault.get());
    }
  }

  /**
   * Records a photograph that lies in the job's folder already.
   *
   * @param subject what it shows; empty for the whole engine
   * @param check the key of the quick test it belongs to; may be empty
   * @param file its name there
   * @param caption may be empty
   * @throws IllegalArgumentException with a sentence when the job has no such part or place
   */
  public void add(Optional<Subject> subject, String check, String file, String caption) {
    job.inOne(() -> addOnce(subject, check, file, caption));
  }

  private void addOnce(Optional<Subject> subject, String check, String file, String caption) {
    require(subject);
    job.record(entry(subject, check, file, caption.strip()));
  }

  private static JobEntry entry(
      Optional<Subject> subject, String check, String file, String caption) {
    if (subject.isEmpty()) {
      return new PhotoAdded(0, file, caption);
    }
    return subject.get() instanceof Subject.APart part && check.isEmpty()
        ? new PhotoAdded(part.item(), file, caption)
        : new SubjectPhotographed(subject.get().key(), check, file, caption);
  }
}
