package wherefrom.job.tables;

import java.util.List;
import java.util.function.Predicate;
import wherefrom.job.OpenJob;
import wherefrom.job.entry.RunInStopped;
import wherefrom.job.pages.TidyCell;
import wherefrom.job.pages.TidyTable;
import wherefrom.job.running.RunIn;
import wherefrom.job.running.RunInPlan;
import wherefrom.job.running.ServiceBook;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Dimension;

/** The run-in, what the engine has run since, and what is due, as tables. */
final class RunTables {
  private RunTables() {}

  /** A row a stretch that the engine ran without a break. */
  static TidyTable stretches(OpenJob job) {
    Rows rows =
        new Rows(
            "run-in",
            "run",
            "low_rpm",
            "high_rpm",
            "minutes_wanted",
            "source",
            "begun_although",
            "from",
            "seconds_ran",
            "stopped",
            "words",
            "put_right_before");
    List<RunIn> runs = RunIn.all(job.state());
    for (int at = 0; at < runs.size(); at++) {
      for (RunIn.Stretch stretch : runs.get(at).stretches()) {
        stretch(rows, at + 1, runs.get(at), stretch);
      }
    }
    return rows.table();
  }

  private static void stretch(Rows rows, int number, RunIn run, RunIn.Stretch stretch) {
    RunInPlan plan = run.plan();
    rows.add(
        TidyCell.of(number),
        TidyCell.of(plan.lowRpm()),
        TidyCell.of(plan.highRpm()),
        TidyCell.of(plan.minutes()),
        TidyCell.of(plan.source()),
        TidyCell.of(run.anyway()),
        TidyCell.of(stretch.from()),
        stretch.end().map(stop -> TidyCell.of(stop.seconds())).orElse(TidyCell.NONE),
        TidyCell.of(stretch.end().map(stop -> stop.why().key()).orElse("")),
        TidyCell.of(stretch.end().map(RunInStopped::words).orElse("")),
        TidyCell.of(stretch.words()));
  }

  /** A row a reading of a gauge while it ran in. */
  static TidyTable gauges(OpenJob job) {
    Rows rows = new Rows("run-in-readings", "run", "seconds_ran", "gauge", "reading", "unit");
    List<RunIn> runs = RunIn.all(job.state());
    for (int at = 0; at < runs.size(); at++) {
      for (RunIn.Note note : runs.get(at).notes()) {
        Amount reading = note.noted().reading();
        rows.add(
            TidyCell.of(at + 1),
            TidyCell.of(note.at().toSeconds()),
            TidyCell.of(note.noted().gauge().key()),
            TidyCell.of(reading.number()),
            TidyCell.of(reading.unit().symbol()));
      }
    }
    return rows.table();
  }

  /** A row a point of service, due or not. */
  static TidyTable service(OpenJob job) {
    Rows rows =
        new Rows(
            "service",
            "point",
            "title",
            "state",
            "due_hours",
            "due_distance",
            "unit",
            "source",
            "words");
    for (ServiceBook.Line line : ServiceBook.of(job.state()).lines()) {
      List<Amount> due = line.due().stream().map(ServiceBook.Due::after).toList();
      Predicate<Amount> far = one -> one.dimension() == Dimension.DISTANCE;
      rows.add(
          TidyCell.of(line.point().key()),
          TidyCell.of(line.point().title()),
          TidyCell.of(line.state().word()),
          TidyCell.of(due.stream().filter(far.negate()).map(Amount::number).findFirst()),
          TidyCell.of(due.stream().filter(far).map(Amount::number).findFirst()),
          TidyCell.of(
              due.stream().filter(far).map(it -> it.unit().symbol()).findFirst().orElse("")),
          TidyCell.of(line.source()),
          TidyCell.of(line.words()));
    }
    return rows.table();
  }

  /** A row a note of what it has run in all. */
  static TidyTable usage(OpenJob job) {
    Rows rows = new Rows("usage", "time", "run", "unit", "words");
    for (ServiceBook.Use use : ServiceBook.of(job.state()).uses()) {
      rows.add(
          TidyCell.of(use.at()),
          TidyCell.of(use.run().number()),
          TidyCell.of(use.run().unit().symbol()),
          TidyCell.of(use.words()));
    }
    return rows.table();
  }
}
