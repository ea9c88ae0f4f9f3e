package wherefrom.job.record;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wherefrom.job.Days;
import wherefrom.job.EntryFold;
import wherefrom.job.LoggedEntry;
import wherefrom.job.OpenJob;
import wherefrom.job.entry.PutInService;
import wherefrom.job.entry.RecordReopened;
import wherefrom.job.entry.RunInGauge;
import wherefrom.job.entry.RunInNoted;
import wherefrom.job.pages.RecordSection;
import wherefrom.job.pages.RecordTable;
import wherefrom.job.running.RunIn;
import wherefrom.job.running.RunInAlarm;
import wherefrom.job.running.ServiceBook;
import wherefrom.quantity.Amount;
import wherefrom.text.Words;

/** The run-in, what was run since, and service, in the build record. */
final class RunRecord {
  private static final EntryFold<RunRecord> CLOSING =
      EntryFold.<RunRecord>none()
          .at(PutInService.class, RunRecord::closed)
          .at(RecordReopened.class, RunRecord::opened);

  private final Days days;
  private final List<RecordSection.Row> rows = new ArrayList<>();

  private RunRecord(OpenJob job) {
    this.days = job.days();
  }

  /** None where the engine has not run yet. */
  static RecordSection section(OpenJob job) {
    RunRecord record = new RunRecord(job);
    record.runs(RunIn.all(job.state()));
    ServiceBook service = ServiceBook.of(job.state());
    if (service.hasRunIn()) {
      service.lines().forEach(record::line);
      record.usage(service);
    }
    job.state().standing().forEach(logged -> CLOSING.take(record, logged));
    return new RecordSection(
        RecordTable.RUNNING,
        List.of("what", "when", "figures", "words"),
        record.rows,
        "The run-in: NOT CHECKED here.");
  }

  private void closed(PutInService put, LoggedEntry logged) {
    String words = put.words().isEmpty() ? "record closed" : "record closed: " + put.words();
    row(false, "Put in service", days.time(logged.time()), "", words);
  }

  private void opened(RecordReopened again, LoggedEntry logged) {
    row(false, "Record opened again", days.time(logged.time()), "", again.why());
  }

  private void row(boolean open, String... cells) {
    rows.add(new RecordSection.Row(List.of(cells), open));
  }

  /** One that was done since makes up for what was broken off before it. */
  private void runs(List<RunIn> runs) {
    for (int at = 0; at < runs.size(); at++) {
      boolean madeUp =
          runs.subList(at + 1, runs.size()).stream()
              .anyMatch(run -> run.state() == RunIn.State.DONE);
      run(runs.get(at), !madeUp);
    }
  }

  private void run(RunIn run, boolean counts) {
    String anyway = run.anyway().isEmpty() ? "" : "; begun although: " + run.anyway();
    row(
        counts && run.state() != RunIn.State.DONE,
        "Run-in, " + word(run.state()),
        days.time(run.stretches().get(0).from()),
        run.plan().words(),
        "from: " + run.plan().source() + anyway);
    for (int at = 0; at < run.stretches().size(); at++) {
      boolean last = at == run.stretches().size() - 1;
      stretch(run.stretches().get(at), counts && last);
    }
    for (RunInGauge gauge : RunInGauge.values()) {
      gauge(run, gauge, counts);
    }
  }

  private static String word(RunIn.State state) {
    return switch (state) {
      case RUNNING -> "on";
      case STOPPED -> "stopped";
      case DONE -> "done";
    };
  }

  /** A fault is open until it was put right and the engine ran again. */
  private void stretch(RunIn.Stretch stretch, boolean open) {
    String from = days.time(stretch.from());
    String before = stretch.words().isEmpty() ? "" : "put right before: " + stretch.words() + "; ";
    stretch
        .end()
        .ifPresentOrElse(
            stop ->
                row(
                    open && stop.why().isFault(),
                    "Ran, then " + stop.why().words(),
                    from,
                    stop.seconds() / 60 + " min " + stop.seconds() % 60 + " s",
                    words(before + stop.words())),
            () -> row(open, "Runs", from, "", words(before)));
  }

  private static String words(String all) {
    return Words.withoutStop(all).replaceFirst("; $", "");
  }

  private void gauge(RunIn run, RunInGauge gauge, boolean counts) {
    List<Amount> read =
        run.notes().stream()
            .map(RunIn.Note::noted)
            .filter(noted -> noted.gauge() == gauge)
            .map(RunInNoted::reading)
            .toList();
    Comparator<Amount> bySize = Comparator.comparing(Amount::inBase);
    Optional<Amount> least = read.stream().min(bySize);
    Optional<Amount> most = read.stream().max(bySize);
    if (least.isPresent() && most.isPresent()) {
      String range = least.get().text() + " to " + most.get().text();
      String figures = least.equals(most) ? most.get().text() : range;
      row(
          counts && run.alarm(gauge).isPresent(),
          Words.capital(gauge.words()),
          "",
          figures,
          Words.count(read.size(), "reading") + past(run, gauge, read));
    }
  }

  private static String past(RunIn run, RunInGauge gauge, List<Amount> read) {
    long past =
        read.stream()
            .filter(amount -> RunInAlarm.find(gauge, amount, run.plan()).isPresent())
            .count();
    return past == 0 ? "" : ", " + past + " past what is usual";
  }

  private void line(ServiceBook.Line line) {
    boolean open = line.state() != ServiceBook.State.DONE;
    row(
        open && line.state() != ServiceBook.State.LATER,
        line.point().title(),
        line.state().word(),
        line.dueWords(),
        open ? "from: " + line.source() : line.words());
  }

  private void usage(ServiceBook service) {
    for (ServiceBook.Use use : service.uses()) {
      row(false, "Run in all", days.time(use.at()), use.run().text(), use.words());
    }
  }
}
