package wherefrom.job.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import wherefrom.engine.ReadyLayouts;
import wherefrom.job.MemoryLogbook;
import wherefrom.job.OpenJob;
import wherefrom.job.entry.JobOpened;
import wherefrom.job.entry.PutInService;
import wherefrom.job.entry.RecordReopened;
import wherefrom.job.entry.RunInEnd;
import wherefrom.job.entry.RunInGauge;
import wherefrom.job.pages.RecordSection;
import wherefrom.job.running.RunInBook;
import wherefrom.job.running.RunInPlan;
import wherefrom.parts.PartKind;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;
import wherefrom.quantity.UnitSystem;
import wherefrom.ui.sample.HandClock;

/** What of a run-in is open in the build record. */
class RunRecordTest {
  private final HandClock watch = new HandClock();
  private final OpenJob job;
  private final RunInBook book;

  RunRecordTest() {
    MemoryLogbook logbook = new MemoryLogbook();
    logbook.append(
        Instant.EPOCH,
        JobOpened.of(
            "Test engine",
            1234567,
            ReadyLayouts.find("v8-odd-even").orElseThrow(),
            PartKind.alwaysOn(),
            UnitSystem.INCH));
    job = new OpenJob(logbook, watch);
    book = new RunInBook(job);
  }

  private void begin() {
    book.begin(new RunInPlan(1_800, 2_400, 20, "sheet of the cam"), "for the test");
  }

  private void stopAfter(int minutes, RunInEnd why) {
    watch.pass(Duration.ofMinutes(minutes));
    book.stop(why, "", watch.instant(), OptionalInt.empty());
  }

  private List<RecordSection.Row> rows() {
    return RunRecord.section(job).rows();
  }

  private List<String> open() {
    return rows().stream()
        .filter(RecordSection.Row::open)
        .map(row -> row.cells().get(0))
        .filter(what -> what.startsWith("R"))
        .toList();
  }

  @Test
  void aFaultIsOpenUntilItWasPutRightAndTheEngineRuns() {
    begin();
    stopAfter(5, RunInEnd.NOISE);
    assertThat(open()).containsExactly("Run-in, stopped", "Ran, then a noise");
    book.takeUp("rocker set");
    assertThat(open()).containsExactly("Run-in, on", "Runs");
    assertThat(rows())
        .filteredOn(row -> row.cells().get(0).equals("Runs"))
        .singleElement()
        .satisfies(row -> assertThat(row.cells()).last().isEqualTo("put right before: rocker set"));
    stopAfter(15, RunInEnd.TIME_UP);
    assertThat(open()).isEmpty();
  }

  @Test
  void aFaultThatEndedAllTheMinutesStaysOpenUntilAnotherRunIsDone() {
    begin();
    stopAfter(20, RunInEnd.OIL_LEAK);
    assertThat(open()).containsExactly("Ran, then an oil leak");
    begin();
    stopAfter(20, RunInEnd.TIME_UP);
    assertThat(open()).isEmpty();
  }

  /** The first page says it as well: a run-in that was stopped, a gauge past what is usual. */
  @Test
  void theFirstPageAndTheGaugesRowAreOpenUntilTheFaultIsGone() {
    begin();
    book.note(RunInGauge.OIL_PRESSURE, Amount.of("2", Unit.PSI));
    stopAfter(5, RunInEnd.SMOKE_OR_FIRE);
    assertThat(inShort()).contains("Run-in");
    assertThat(rows())
        .filteredOn(RecordSection.Row::open)
        .extracting(row -> row.cells().get(0))
        .contains("Oil pressure");
    book.takeUp("line tightened");
    book.note(RunInGauge.OIL_PRESSURE, Amount.of("40", Unit.PSI));
    stopAfter(15, RunInEnd.TIME_UP);
    assertThat(inShort()).doesNotContain("Run-in");
    assertThat(rows())
        .filteredOn(row -> row.cells().get(0).equals("Oil pressure"))
        .allMatch(row -> !row.open() && row.cells().get(3).contains("1 past what is usual"));
  }

  @Test
  void whatWasSaidAsTheRecordWasClosedAndOpenedAgainStandsThere() {
    begin();
    stopAfter(20, RunInEnd.TIME_UP);
    job.record(new PutInService("in the truck"));
    job.record(new RecordReopened("a wrong torque"));
    job.record(new PutInService(""));
    assertThat(rows().stream().map(row -> row.cells().get(0) + ", " + row.cells().get(3)))
        .containsSubsequence(
            "Put in service, record closed: in the truck",
            "Record opened again, a wrong torque",
            "Put in service, record closed");
  }

  private List<String> inShort() {
    return new RecordSummary(job)
        .section().rows().stream()
            .filter(RecordSection.Row::open)
            .map(row -> row.cells().get(0))
            .toList();
  }
}
