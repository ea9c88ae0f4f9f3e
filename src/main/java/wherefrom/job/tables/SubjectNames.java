package wherefrom.job.tables;

import wherefrom.inspection.Subject;
import wherefrom.job.EngineJob;
import wherefrom.job.bags.BagBook;

/** What subjects are called in the tables. */
final class SubjectNames {
  private SubjectNames() {}

  /** {@code cylinder 3, exhaust, pushrod}. */
  static String words(EngineJob job, Subject subject) {
    return subject.match(
        part -> job.findPart(part.item()).map(one -> one.part().words()).orElse(subject.key()),
        at -> at.words(),
        beside -> BagBook.of(job).words(beside));
  }

  /** The kind's or the feature's key, such as {@code pushrod} or {@code lobe}. */
  static String kind(EngineJob job, Subject subject) {
    return subject.match(
        part -> job.findPart(part.item()).map(one -> one.part().kind().key()).orElse(""),
        at -> at.feature().key(),
        beside -> beside.type().word().replace(' ', '-'));
  }

  /** The spot's key, such as {@code 3EX}; of a part that of its home. */
  static String where(EngineJob job, Subject subject) {
    return subject.match(
        part -> job.findPart(part.item()).map(one -> one.part().home().spot().key()).orElse(""),
        at -> at.where(),
        beside -> "");
  }
}
