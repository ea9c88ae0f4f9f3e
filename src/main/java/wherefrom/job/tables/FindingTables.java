package wherefrom.job.tables;

import java.util.Optional;
import wherefrom.inspection.Checks;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.job.EngineJob;
import wherefrom.job.EntryWords;
import wherefrom.job.LoggedEntry;
import wherefrom.job.entry.FeatureLooked;
import wherefrom.job.entry.LookRecorded;
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
      if (logged.entry() instanceof LookRecorded look) {
        Subject of = Subject.ofPart(look.item());
        finding(job, rows, logged, of, look.check(), look.look(), look.note());
      } else if (logged.entry() instanceof FeatureLooked look) {
        Optional<Subject> of = Subject.find(look.subject());
        of.ifPresent(at -> finding(job, rows, logged, at, look.check(), look.look(), look.note()));
      }
    }
    return rows.table();
  }

  private static void finding(
      EngineJob job,
      Rows rows,
      LoggedEntry logged,
      Subject subject,
      String check,
      Look look,
      String note) {
    rows.add(
        TidyCell.of(logged.sequence()),
        TidyCell.of(logged.time()),
        TidyCell.of(SubjectNames.kind(job, subject)),
        TidyCell.of(SubjectNames.where(job, subject)),
        TidyCell.of(SubjectNames.words(job, subject)),
        TidyCell.of(check),
        TidyCell.of(Checks.find(check).map(found -> found.title()).orElse("")),
        TidyCell.of(look.word()),
        TidyCell.of(note));
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
