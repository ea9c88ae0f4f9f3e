package wherefrom.job.running;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import wherefrom.engine.LifterType;
import wherefrom.engine.ReadyLayouts;
import wherefrom.inspection.Sources;
import wherefrom.job.MemoryLogbook;
import wherefrom.job.OpenJob;
import wherefrom.job.entry.AtAssembly;
import wherefrom.job.entry.BagFilled;
import wherefrom.job.entry.BagMoved;
import wherefrom.job.entry.BigPartMoved;
import wherefrom.job.entry.BigPartsNamed;
import wherefrom.job.entry.JobOpened;
import wherefrom.job.entry.PartOut;
import wherefrom.job.entry.RunInBegun;
import wherefrom.job.entry.RunInEnd;
import wherefrom.job.entry.RunInGauge;
import wherefrom.job.entry.RunInNoted;
import wherefrom.job.entry.RunInStopped;
import wherefrom.job.entry.RunInTakenUp;
import wherefrom.job.puttogether.StartList;
import wherefrom.job.puttogether.StartPoint;
import wherefrom.parts.BigPartKind;
import wherefrom.parts.BigPartName;
import wherefrom.parts.PartKind;
import wherefrom.parts.Whereabouts;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;
import wherefrom.quantity.UnitSystem;
import wherefrom.ui.sample.HandClock;

class RunInTest {
  private static final OptionalInt BY_THE_CLOCK = OptionalInt.empty();
  private static final RunInPlan PLAN = new RunInPlan(1_800, 2_400, 20, "sheet of the cam");

  private final HandClock watch = new HandClock();
  private final MemoryLogbook logbook = new MemoryLogbook();
  private OpenJob job;
  private RunInBook book;

  RunInTest() {
    logbook.append(
        Instant.EPOCH,
        JobOpened.of(
            "Test engine",
            1234567,
            ReadyLayouts.find("v8-odd-even").orElseThrow(),
            PartKind.alwaysOn(),
            UnitSystem.INCH));
    open();
  }

  /** The program starts again: nothing is known but the logbook. */
  private void open() {
    job = new OpenJob(logbook, watch);
    book = new RunInBook(job);
  }

  private void wait(int minutes, int seconds) {
    watch.pass(Duration.ofSeconds(60L * minutes + seconds));
  }

  private void tickAll() {
    StartList list = new StartList(job);
    list.lines().forEach(line -> list.tick(line.key(), "", true));
  }

  private void begin() {
    tickAll();
    assertThat(book.begin(PLAN, "")).isEmpty();
  }

  private RunIn run() {
    return book.find().orElseThrow();
  }

  private RunIn stop(RunInEnd why) {
    return book.stop(why, "", watch.instant(), BY_THE_CLOCK);
  }

  private String left() {
    return RunIn.clock(run().left(watch.instant()));
  }

  @Test
  void whatIsOpenBeforeTheFirstStartStopsItAndIsSaid() {
    job.record(new PartOut(1));
    StartList list = new StartList(job);
    assertThat(book.begin(PLAN, ""))
        .contains("Still to fit: 1 part.", "Not ticked: Prime the oil.")
        .contains("No oil seen yet at 16 rockers.");
    assertThat(book.find()).isEmpty();
    tickAll();
    list.tick("rocker-3EX", "", false);
    list.tick(StartPoint.SECOND.key(), "", false);
    assertThat(book.begin(PLAN, " "))
        .containsExactly("Still to fit: 1 part.", "No oil seen yet at 1 rocker.");
    assertThat(book.begin(PLAN, "its cover is off on purpose")).isEmpty();
    assertThat(run().anyway()).isEqualTo("its cover is off on purpose");
  }

  /** What has no part's tag holds the start too, wherever it lies. */
  @Test
  void aHeadAtTheMachineShopAndABagOfBoltsHoldTheStart() {
    tickAll();
    job.record(new BigPartsNamed(1, List.of(new BigPartName(BigPartKind.HEAD, "", ""))));
    assertThat(book.listOpen()).isEmpty();
    job.record(new BigPartMoved(1, Whereabouts.AT_SHOP, ""));
    job.record(new BagFilled(4, "head bolts", 1, "", 10, List.of(), "", AtAssembly.NOT_SAID));
    assertThat(book.listOpen()).containsExactly("Not on the engine: head.", "Not used up: 1 bag.");
    job.record(new BigPartMoved(1, Whereabouts.FITTED, ""));
    job.record(new BagMoved(4, Whereabouts.FITTED, 10, ""));
    assertThat(book.listOpen()).isEmpty();
  }

  @Test
  void aReasonIsKeptOnlyWhereSomethingWasOpen() {
    tickAll();
    book.begin(PLAN, "no need");
    assertThat(run().anyway()).isEmpty();
  }

  @Test
  void theMinutesOfEachStretchAddUpAndThePauseDoesNotCount() {
    begin();
    wait(7, 30);
    stop(RunInEnd.FUEL_LEAK);
    assertThat(run().state()).isEqualTo(RunIn.State.STOPPED);
    wait(50, 0);
    assertThat(left()).isEqualTo("12:30");
    book.takeUp("line tightened");
    wait(12, 29);
    assertThat(left()).isEqualTo("0:01");
    wait(0, 1);
    stop(RunInEnd.TIME_UP);
    assertThat(run().state()).isEqualTo(RunIn.State.DONE);
    assertThat(run().ran(watch.instant())).isEqualTo(Duration.ofMinutes(20));
    assertThatThrownBy(() -> book.takeUp("more")).hasMessageContaining("done");
  }

  @Test
  void itGoesOnThroughARestartOfTheProgram() {
    begin();
    wait(3, 0);
    book.note(RunInGauge.OIL_PRESSURE, Amount.of("52", Unit.PSI));
    wait(2, 15);
    open();
    assertThat(run().isRunning()).isTrue();
    assertThat(left()).isEqualTo("14:45");
    assertThat(run().lastNote(RunInGauge.OIL_PRESSURE).orElseThrow().at())
        .isEqualTo(Duration.ofMinutes(3));
    assertThat(run().lastNote(RunInGauge.COOLANT)).isEqualTo(Optional.empty());
  }

  @Test
  void theMomentOfThePressCountsNotThatOfTheReason() {
    begin();
    wait(4, 0);
    Instant pressed = watch.instant();
    wait(3, 0);
    book.stop(RunInEnd.NOISE, "from the front", pressed, BY_THE_CLOCK);
    assertThat(run().ran(watch.instant())).isEqualTo(Duration.ofMinutes(4));
  }

  @Test
  void aClockThatWasLeftOnAsksForTheMinutes() {
    begin();
    wait(51, 0);
    assertThatThrownBy(() -> stop(RunInEnd.OTHER)).hasMessageContaining("51:00");
    assertThatThrownBy(() -> book.stop(RunInEnd.OTHER, "", watch.instant(), OptionalInt.of(52)))
        .hasMessageContaining("longer");
    book.stop(RunInEnd.OTHER, "forgot the clock", watch.instant(), OptionalInt.of(18));
    assertThat(left()).isEqualTo("2:00");
  }

  @Test
  void afterAFaultItIsSaidWhatWasPutRight() {
    begin();
    wait(1, 0);
    stop(RunInEnd.NO_OIL_PRESSURE);
    assertThatThrownBy(() -> book.takeUp(" ")).hasMessageContaining("put right");
    assertThatThrownBy(() -> book.note(RunInGauge.COOLANT, Amount.of("80", Unit.CELSIUS)))
        .hasMessage("No run-in is on.");
    book.takeUp("pump primed again");
    wait(1, 0);
    stop(RunInEnd.OTHER);
    book.takeUp("");
    assertThat(run().stretches()).hasSize(3);
  }

  @Test
  void undoOfAStopIsAsIfItHadRunOn() {
    begin();
    wait(2, 0);
    stop(RunInEnd.NOISE);
    wait(1, 0);
    job.undo();
    assertThat(left()).isEqualTo("17:00");
  }

  @Test
  void aClockThatWasSetBackCountsNothing() {
    begin();
    wait(-90, 0);
    assertThat(left()).isEqualTo("20:00");
    assertThat(RunIn.clock(Duration.ofSeconds(3_725))).isEqualTo("1:02:05");
  }

  @Test
  void aClockThatWasSetBackAsksForTheMinutesAndTakesThem() {
    begin();
    wait(-90, 0);
    assertThatThrownBy(() -> stop(RunInEnd.TIME_UP)).hasMessageContaining("set back");
    assertThatThrownBy(() -> book.stop(RunInEnd.TIME_UP, "", watch.instant(), OptionalInt.of(241)))
        .hasMessageContaining("240 minutes");
    book.stop(RunInEnd.TIME_UP, "", watch.instant(), OptionalInt.of(20));
    assertThat(run().state()).isEqualTo(RunIn.State.DONE);
  }

  /** As another bench leaves it that takes back what these followed. */
  @Test
  void anEntryWithoutItsCounterpartChangesNoOtherRun() {
    begin();
    wait(5, 0);
    job.record(new RunInTakenUp("of another run"));
    assertThat(run().stretches()).hasSize(1);
    stop(RunInEnd.NOISE);
    job.record(new RunInStopped(RunInEnd.OTHER, "of another run", 900));
    job.record(new RunInNoted(RunInGauge.OIL_PRESSURE, Amount.of("52", Unit.PSI)));
    assertThat(left()).isEqualTo("15:00");
    assertThat(run().findStop().orElseThrow().why()).isEqualTo(RunInEnd.NOISE);
    assertThat(run().notes()).isEmpty();
  }

  @Test
  void aRunWhoseStopWasTakenBackEndsWhereTheNextBegins() {
    begin();
    wait(5, 0);
    RunInBegun next = new RunInBegun(1_800, 2_400, 20, "sheet of the cam", "");
    job.record(next);
    wait(90, 0);
    job.record(next);
    List<RunIn> runs = RunIn.all(job.state());
    assertThat(runs).extracting(RunIn::isRunning).containsExactly(false, false, true);
    assertThat(runs)
        .extracting(one -> one.ran(watch.instant()))
        .containsExactly(Duration.ofMinutes(5), Duration.ZERO, Duration.ZERO);
  }

  @Test
  void aGaugeTakesItsOwnUnitsAlone() {
    begin();
    assertThatThrownBy(() -> book.note(RunInGauge.COOLANT, Amount.of("52", Unit.PSI)))
        .hasMessageContaining("not a temperature");
    assertThatThrownBy(() -> book.note(RunInGauge.OIL_PRESSURE, Amount.of("-1", Unit.PSI)))
        .isInstanceOf(IllegalArgumentException.class);
    assertThat(run().notes()).isEmpty();
  }

  /** At 1,800 rpm 18 psi are usual: common practice, 10 psi for each 1,000 rpm. */
  @Test
  void aGaugePastWhatIsUsualAsksForTheSwitchAtOnce() {
    begin();
    assertThat(book.note(RunInGauge.OIL_PRESSURE, Amount.of("18", Unit.PSI))).isEmpty();
    assertThat(book.note(RunInGauge.OIL_PRESSURE, Amount.of("125", Unit.KILOPASCAL))).isEmpty();
    assertThat(end(RunInGauge.OIL_PRESSURE, "17", Unit.PSI)).contains(RunInEnd.NO_OIL_PRESSURE);
    assertThat(end(RunInGauge.OIL_PRESSURE, "14", Unit.KILOPASCAL))
        .contains(RunInEnd.NO_OIL_PRESSURE);
    assertThat(end(RunInGauge.OIL_PRESSURE, "0.1", Unit.MEGAPASCAL))
        .contains(RunInEnd.NO_OIL_PRESSURE);
    assertThat(run().findAlarm().orElseThrow().sentence()).contains("1800 rpm: 0.124 MPa");
    assertThat(end(RunInGauge.COOLANT, "229", Unit.FAHRENHEIT)).isEmpty();
    assertThat(end(RunInGauge.COOLANT, "230", Unit.FAHRENHEIT)).contains(RunInEnd.TOO_HOT);
    assertThat(end(RunInGauge.COOLANT, "127", Unit.CELSIUS)).contains(RunInEnd.TOO_HOT);
    assertThat(run().alarm(RunInGauge.COOLANT)).isPresent();
    assertThat(run().notes()).hasSize(8);
  }

  /** The question may be left and asked again: the gauge's moment counts all the same. */
  @Test
  void theMomentOfTheGaugeCountsWhereItAsksForTheSwitch() {
    begin();
    wait(3, 0);
    book.note(RunInGauge.COOLANT, Amount.of("235", Unit.FAHRENHEIT));
    Instant noted = watch.instant();
    wait(2, 0);
    open();
    assertThat(run().findAlarmed()).contains(noted);
    book.stop(RunInEnd.TOO_HOT, "", run().findAlarmed().orElseThrow(), BY_THE_CLOCK);
    assertThat(run().findStop().orElseThrow().seconds()).isEqualTo(180);
    assertThat(run().findAlarmed()).isEmpty();
  }

  @Test
  void aGaugeThatIsNotedAnewAsksForNothing() {
    begin();
    book.note(RunInGauge.COOLANT, Amount.of("235", Unit.FAHRENHEIT));
    book.note(RunInGauge.COOLANT, Amount.of("195", Unit.FAHRENHEIT));
    assertThat(run().findAlarmed()).isEmpty();
  }

  /** What was put right is no longer what the gauge showed before. */
  @Test
  void anAlarmOfBeforeStandsNoMoreOnceTheEngineRunsAgain() {
    begin();
    book.note(RunInGauge.OIL_PRESSURE, Amount.of("2", Unit.PSI));
    stop(RunInEnd.NO_OIL_PRESSURE);
    book.takeUp("pickup tube put in");
    assertThat(run().isRunning()).isTrue();
    assertThat(run().findAlarm()).isEmpty();
    assertThat(run().lastNote(RunInGauge.OIL_PRESSURE)).as("it is still shown").isPresent();
    book.note(RunInGauge.OIL_PRESSURE, Amount.of("3", Unit.PSI));
    assertThat(run().findAlarm()).isPresent();
  }

  private Optional<RunInEnd> end(RunInGauge gauge, String number, Unit unit) {
    return book.note(gauge, Amount.of(number, unit)).map(RunInAlarm::end);
  }

  @Test
  void everyFaultSaysWhatToSeeToFirst() {
    for (RunInEnd end : RunInEnd.values()) {
      assertThat(end.first().isEmpty()).as(end.key()).isNotEqualTo(end.isFault());
    }
  }

  @Test
  void theUsualFiguresAreMarkedAndShorterForRollers() {
    assertThat(book.lifters()).isEqualTo(LifterType.FLAT);
    RunInPlan flat = RunInPlan.usual(LifterType.FLAT);
    RunInPlan roller = RunInPlan.usual(LifterType.ROLLER);
    assertThat(List.of(flat.source(), roller.source())).containsOnly(Sources.PRACTICE);
    assertThat(roller.minutes()).isLessThan(flat.minutes());
    assertThat(roller.highRpm()).isLessThanOrEqualTo(flat.lowRpm());
  }

  @Test
  void aSpeedIsReadAsItIsTyped() {
    assertThat(RunInPlan.read(" 1,800 - 2,400 rpm", 20, "sheet of the cam")).isEqualTo(PLAN);
    assertThat(RunInPlan.read("2000", 20, "sheet").speed()).isEqualTo("2000 rpm");
    for (String wrong : List.of("", "fast", "1-2-3", "2400-1800", "100-200", "9000")) {
      assertThatThrownBy(() -> RunInPlan.read(wrong, 20, "sheet"))
          .as(wrong)
          .isInstanceOf(IllegalArgumentException.class);
    }
    assertThatThrownBy(() -> RunInPlan.read("2000", 0, "sheet")).hasMessageContaining("minutes");
    assertThatThrownBy(() -> RunInPlan.read("2000", 20, " ")).hasMessageContaining("come from");
  }

  @Test
  void beginningTwiceIsRefusedAndAnotherRunCountsFromNothing() {
    begin();
    assertThatThrownBy(() -> book.begin(PLAN, "")).hasMessageContaining("on already");
    wait(5, 0);
    stop(RunInEnd.NOISE);
    book.begin(RunInPlan.usual(LifterType.FLAT), "");
    assertThat(left()).isEqualTo("20:00");
    assertThat(RunIn.all(job.state())).hasSize(2);
    assertThat(job.history()).filteredOn(it -> it.entry() instanceof RunInBegun).hasSize(2);
  }
}
