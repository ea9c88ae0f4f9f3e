package wherefrom.job.timing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.job.OpenJob;
import wherefrom.job.numbers.WorkingBook;
import wherefrom.job.pages.RecordPlot;
import wherefrom.job.pages.RecordSection;
import wherefrom.job.pages.RecordTable;
import wherefrom.workings.Result;
import wherefrom.workings.ResultValue;
import wherefrom.workings.Working;
import wherefrom.workings.catalogue.timing.CamSlack;
import wherefrom.workings.catalogue.timing.ChainDeflection;
import wherefrom.workings.timing.Comparison;

/** The timing check in the build record. */
public final class TimingRecord {

  private final OpenJob job;
  private final TimingBook book;
  private final TimingCheck check;
  private final List<RecordSection.Row> rows = new ArrayList<>();

  private TimingRecord(OpenJob job) {
    this.job = job;
    this.book = new TimingBook(job);
    this.check = new TimingCheck(book);
  }

  /** Chain, slack, and each cylinder's values beside the card's. */
  public static RecordSection section(OpenJob job) {
    TimingRecord record = new TimingRecord(job);
    record.working("Deflection of the timing chain", new ChainDeflection());
    record.working("Slack from crank to cam", new CamSlack());
    record.book.cylinders().forEach(record::cylinder);
    if (record.book.lobes().isEmpty()) {
      record.row(true, "Cam timing with the degree wheel", RecordSection.NOT_CHECKED, "", "", "");
    }
    return new RecordSection(
        RecordTable.TIMING,
        List.of("what", "found", "card", "beside the card", "card from"),
        record.rows,
        "");
  }

  /** The lift of every lobe that was read. */
  public static List<RecordPlot> plots(OpenJob job) {
    TimingBook book = new TimingBook(job);
    TimingCheck check = new TimingCheck(book);
    return book.lobes().stream()
        .flatMap(lobe -> check.plot(lobe).map(it -> new RecordPlot(it, check.words(lobe))).stream())
        .toList();
  }

  private void working(String what, Working working) {
    Optional<ResultValue> found = value(job, working);
    row(
        found.isEmpty(),
        what,
        found.map(ResultValue::text).orElse(RecordSection.NOT_CHECKED),
        "",
        "",
        "");
  }

  /** The first result of a working with the figures that the job keeps; empty where they miss. */
  public static Optional<ResultValue> value(OpenJob job, Working working) {
    return new WorkingBook(working, Optional.of(job)).answer() instanceof Result result
        ? Optional.of(result.values().get(0))
        : Optional.empty();
  }

  private void cylinder(int cylinder) {
    String lead = "cylinder " + cylinder + " at " + check.atLift();
    for (String open : check.open(cylinder)) {
      row(true, lead, RecordSection.NOT_CHECKED, "", open, "");
    }
    for (Comparison each : check.compare(cylinder)) {
      String source = each.card().isPresent() ? book.cardSource() : "";
      row(
          each.differs(),
          lead + ", " + each.value().words(),
          each.foundWords(),
          each.cardWords(),
          each.verdict(),
          source);
    }
  }

  private void row(boolean open, String... cells) {
    rows.add(new RecordSection.Row(List.of(cells), open));
  }
}
