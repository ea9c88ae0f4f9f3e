package wherefrom.job.photos;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wherefrom.inspection.Check;
import wherefrom.inspection.Checks;
import wherefrom.inspection.Subject;
import wherefrom.job.EngineJob;
import wherefrom.job.EntryRows;
import wherefrom.job.EntryTable;
import wherefrom.job.LoggedEntry;
import wherefrom.job.bags.BagBook;
import wherefrom.job.entry.PhotoAdded;
import wherefrom.job.entry.SubjectPhotographed;

/**
 * A photograph that is kept in the job.
 *
 * @param subject what it shows: a part, or what carries no tag; empty for the whole engine
 * @param check the key of the quick test that it belongs to; may be empty
 * @param file its name in the job's photo folder
 * @param caption what to see on it; may be empty
 * @param time when it was kept
 */
public record Photograph(
    Optional<Subject> subject, String check, String file, String caption, Instant time) {

  private static final EntryTable<LoggedEntry, Optional<Photograph>> KEPT =
      EntryRows.<LoggedEntry, Optional<Photograph>>none()
          .on(PhotoAdded.class, (logged, photo) -> Optional.of(ofPart(photo, logged)))
          .on(SubjectPhotographed.class, (logged, photo) -> Optional.of(ofSubject(photo, logged)))
          .others(Optional.empty());

  /** The photograph that an entry keeps. */
  public static Optional<Photograph> find(LoggedEntry logged) {
    return KEPT.of(logged, logged.entry());
  }

  private static Photograph ofPart(PhotoAdded photo, LoggedEntry logged) {
    Optional<Subject> part =
        photo.item() > 0 ? Optional.of(Subject.ofPart(photo.item())) : Optional.empty();
    return new Photograph(part, "", photo.file(), photo.caption(), logged.time());
  }

  private static Photograph ofSubject(SubjectPhotographed photo, LoggedEntry logged) {
    return new Photograph(
        Subject.find(photo.subject()), photo.check(), photo.file(), photo.caption(), logged.time());
  }

  /** Every photograph that stands, oldest first. */
  public static List<Photograph> listAll(EngineJob job) {
    return job.standing().stream().map(Photograph::find).flatMap(Optional::stream).toList();
  }

  /** Those of one part or one place, oldest first. */
  public static List<Photograph> listOf(EngineJob job, Subject subject) {
    return listAll(job).stream()
        .filter(photo -> photo.subject().filter(subject::equals).isPresent())
        .toList();
  }

  /** What it shows, in words: {@code cylinder 3, exhaust, cam lobe}. */
  public String words(EngineJob job) {
    return words(job, subject);
  }

  /** What a photograph of this shows, in words; empty means the whole engine. */
  public static String words(EngineJob job, Optional<Subject> subject) {
    return subject.map(of -> words(job, of)).orElse("the whole engine");
  }

  private static String words(EngineJob job, Subject subject) {
    return subject.match(
        part -> job.findPart(part.item()).map(one -> one.part().words()).orElse(subject.key()),
        Subject.AFeature::words,
        beside -> BagBook.of(job).words(beside));
  }

  /** Its caption and the question of the quick test that it belongs to; may be empty. */
  public String story() {
    String title = Checks.find(check).map(Check::title).orElse("");
    return caption.isEmpty() || title.isEmpty() ? caption + title : title + " " + caption;
  }
}
