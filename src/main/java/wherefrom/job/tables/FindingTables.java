package wherefrom.job.tables;

import wherefrom.inspection.Checks;
import wherefrom.inspection.Subject;
import wherefrom.job.EngineJob;
import wherefrom.job.EntryWords;
import wherefrom.job.LoggedEntry;
import wherefrom.job.entry.LookEntry;
import wherefrom.job.pages.TidyCell;
import wherefrom.job.pages.TidyTable;

/** What was seen, and everything that happened. */
final class FindingTables {
  private FindingTables() {}

  /** A row an answer that stands; a later one to the same question comes after it. */
  static TidyTable findings(EngineJob job) {
    Rows rows =
        new Rows(
            "findings",
            "sequence",
            "utc",
            "kind",
            "where",
            "subject",
            "check",
            "question",
            "answer",
            "note");
    for (LoggedEntry logged : job.standing()) {
      if (logged.entry() instanceof LookEntry look) {
        look.findSubject().ifPresent(at -> finding(job, rows, logged, at, look));
      }
    }
    return rows.table();
  }

  private static void finding(
      EngineJob job, Rows rows, LoggedEntry logged, Subject subject, LookEntry look) {
    rows.add(
        TidyCell.of(logged.sequence()),
        TidyCell.of(logged.time()),
        TidyCell.of(SubjectNames.kind(job, subject)),
        TidyCell.of(SubjectNames.where(job, subject)),
        TidyCell.of(SubjectNames.words(job, subject)),
        TidyCell.of(look.check()),
        TidyCell.of(Checks.find(look.check()).map(found -> found.title()).orElse("")),
        TidyCell.of(look.look().word()),
        TidyCell.of(look.note()));
  }

  /** A row an entry that stands. */
  static TidyTable events(EngineJob job) {
    Rows rows = new Rows("events", "sequence", "utc", "event", "words");
    for (LoggedEntry logged : job.standing()) {
      rows.add(
          TidyCell.of(logged.sequence()),
          TidyCell.of(logged.time()),
          TidyCell.of(EventNames.of(logged.entry().getClass())),
          TidyCell.of(EntryWords.of(job, logged.entry())));
    }
    return rows.table();
  }
}
