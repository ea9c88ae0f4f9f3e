package wherefrom.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import wherefrom.job.LoggedEntry;
import wherefrom.job.OpenJob;
import wherefrom.job.PlaceState;
import wherefrom.job.entry.RunInBegun;
import wherefrom.job.entry.RunInEnd;
import wherefrom.job.running.RunIn;
import wherefrom.job.running.ServiceBook;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.home.JobHomeScreen;
import wherefrom.ui.record.RecordScreen;
import wherefrom.ui.running.RunInPlanScreen;
import wherefrom.ui.running.RunInScreen;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/** From the run-in to service, in the window. */
class ServiceFlowTest {
  private final SampleJob sample = SampleJob.whole();

  private SampleWindow open(OpenJob job, ScreenId id) {
    SampleWindow window = new SampleWindow(96, 100);
    window.shell.context().open(job);
    window.shell.context().navigator().show(id);
    window.layOut();
    return window;
  }

  /** A run-in that was begun so many minutes ago, as after a restart of the program. */
  private OpenJob begun(int minutes) {
    Instant before = SampleJob.CLOCK.instant().minus(Duration.ofMinutes(minutes));
    sample.logbook.append(before, new RunInBegun(1_500, 2_500, 20, "sheet", "on paper"));
    return new OpenJob(sample.logbook, SampleJob.CLOCK);
  }

  private static RunIn run(OpenJob job) {
    return RunIn.find(job.state()).orElseThrow();
  }

  private static void press(SampleWindow window, String... words) {
    for (String one : words) {
      window.press(one);
    }
  }

  @Test
  void whatIsOpenIsShownInsteadAndAReasonBeginsIt() {
    Toolkit.on(
        () -> {
          SampleWindow window = open(sample.job, ScreenId.RUN_IN);
          press(window, "See what is open");
          assertThat(window.words()).contains("Do not start it yet", "Not ticked: Prime the oil.");
          press(window, "Begin anyway", "Done");
          assertThat(RunIn.find(sample.job.state())).isEmpty();
          press(window, "B", "Done");
          assertThat(RunIn.find(sample.job.state())).as("begins by a press of its own").isEmpty();
          press(window, "The engine runs");
          assertThat(run(sample.job).anyway()).isEqualTo("B");
          assertThat(window.words()).contains("20:00", "STOP: ignition off", "Note it now");
          press(window, "Back");
          assertThat(window.words()).contains("Back to the clock");
          return window;
        });
  }

  @Test
  void theClockGoesOnFromTheLogbookAndAStopSaysWhy() {
    Toolkit.on(
        () -> {
          OpenJob job = begun(8);
          SampleWindow window = open(job, ScreenId.RUN_IN);
          assertThat(window.words()).contains("12:00");
          press(window, "Oil pressure", "4", "5", "Done");
          assertThat(window.words()).contains("Oil pressure: 45 psi", "at 8:00");
          press(window, "STOP: ignition off", "A fuel leak");
          assertThat(window.words()).contains("12:00", "left when stopped: a fuel leak");
          press(window, "Oil pressure");
          assertThat(run(job).notes()).hasSize(1);
          assertThat(window.words()).doesNotContain("Engine is running again");
          press(window, "Say what was put right", "L", "Done");
          assertThat(run(job).isRunning()).as("goes on by a press of its own").isFalse();
          press(window, "Engine is running again");
          assertThat(run(job).isRunning()).isTrue();
          assertThat(run(job).stretches().get(1).words()).isEqualTo("L");
          assertThat(window.words()).contains("STOP: ignition off");
          return window;
        });
  }

  @Test
  void aGaugeAtNothingIsKeptAndAsksAtOnceWhyItWasStopped() {
    Toolkit.on(
        () -> {
          OpenJob job = begun(1);
          SampleWindow window = open(job, ScreenId.RUN_IN);
          press(window, "Oil pressure", "0", "Done");
          assertThat(run(job).notes()).hasSize(1);
          assertThat(window.words()).contains("Engine off. Why?", "Ignition off now");
          press(window, "Oil pressure low or gone");
          assertThat(run(job).isRunning()).isFalse();
          return window;
        });
  }

  @Test
  void tooLittleOilAndTooMuchHeatStandThereUntilTheEngineIsOff() {
    Toolkit.on(
        () -> {
          OpenJob job = begun(1);
          SampleWindow window = open(job, ScreenId.RUN_IN);
          press(window, "Oil pressure", "2", "Done");
          assertThat(window.words()).contains("Oil pressure low", "Engine off. Why?");
          press(window, "Back");
          assertThat(window.words()).contains("STOP", "Ignition off now").doesNotContain("19:00");
          assertThat(isOnRed(window)).isTrue();
          press(window, "Oil pressure", "5", "0", "Done", "Coolant", "2", "6", "0", "Done");
          assertThat(window.words()).contains("Coolant too hot", "Engine off. Why?");
          press(window, "Too hot");
          assertThat(isOnRed(window)).isFalse();
          assertThat(window.words()).contains("Let it cool");
          return window;
        });
  }

  /** Whether the word STOP stands on the ground of every other stop. */
  private static boolean isOnRed(SampleWindow window) {
    return window.scene.getRoot().lookup(".card-stop") != null;
  }

  /** Minutes that are up do not hide a fault. */
  @Test
  void anAlarmAfterTheTimeIsUpAsksWhyAllTheSame() {
    Toolkit.on(
        () -> {
          OpenJob job = begun(21);
          SampleWindow window = open(job, ScreenId.RUN_IN);
          press(window, "Oil pressure", "2", "Done");
          assertThat(run(job).isRunning()).isTrue();
          press(window, "Oil pressure low or gone");
          assertThat(run(job).findStop().orElseThrow().why()).isEqualTo(RunInEnd.NO_OIL_PRESSURE);
          return window;
        });
  }

  /** The clock has nothing to show any more, a second later as little. */
  @Test
  void aRunInThatIsTakenBackLeavesTheClock() {
    Toolkit.on(
        () -> {
          OpenJob job = begun(1);
          SampleWindow window = open(job, ScreenId.RUN_IN);
          press(window, "UNDO", "UNDO");
          assertThat(RunIn.find(job.state())).isEmpty();
          assertThat(window.shell.current()).isInstanceOf(RunInPlanScreen.class);
          assertThat(window.words()).contains("The run-in was taken back.");
          press(window, "Back");
          assertThat(window.shell.current()).isInstanceOf(JobHomeScreen.class);
          return window;
        });
  }

  @Test
  void aRunInTakenBackUnderAQuestionLeavesTheClockToo() {
    Toolkit.on(
        () -> {
          OpenJob job = begun(1);
          SampleWindow window = open(job, ScreenId.RUN_IN);
          press(window, "Oil pressure");
          job.undo();
          press(window, "Back");
          assertThat(window.shell.current()).isInstanceOf(RunInPlanScreen.class);
          return window;
        });
  }

  @Test
  void anotherRunInLeavesOneClock() {
    Toolkit.on(
        () -> {
          OpenJob job = begun(21);
          SampleWindow window = open(job, ScreenId.RUN_IN);
          press(window, "Engine is off", "Run in again", "See what is open");
          press(window, "Begin anyway", "B", "Done", "The engine runs");
          assertThat(window.shell.current()).isInstanceOf(RunInScreen.class);
          assertThat(window.words()).contains("20:00");
          press(window, "Back");
          assertThat(window.shell.current()).isInstanceOf(JobHomeScreen.class);
          return window;
        });
  }

  @Test
  void onceTheTimeIsUpOnePressEndsItAndLeadsToWhatIsDue() {
    Toolkit.on(
        () -> {
          OpenJob job = begun(21);
          SampleWindow window = open(job, ScreenId.RUN_IN);
          assertThat(window.words()).contains("0:00", "Time is up");
          press(window, "Engine is off");
          assertThat(run(job).state()).isEqualTo(RunIn.State.DONE);
          press(window, "After the run-in");
          assertThat(window.words()).contains("Due, after the run-in", "4 due");
          return window;
        });
  }

  @Test
  void aClockThatWasLeftOnAsksHowLongItRan() {
    Toolkit.on(
        () -> {
          OpenJob job = begun(600);
          SampleWindow window = open(job, ScreenId.RUN_IN);
          press(window, "Engine is off");
          assertThat(window.words()).contains("left on");
          press(window, "1", "8", "Done", "The time is up");
          assertThat(run(job).left(Instant.now())).isEqualTo(Duration.ofMinutes(2));
          return window;
        });
  }

  @Test
  void aPointIsTickedMilesAreNotedAndInServiceNothingElseIsTaken() {
    Toolkit.on(
        () -> {
          SampleWindow window = open(sample.job, ScreenId.SERVICE);
          press(window, "Hours or miles", "Miles", "1", "2", "Done");
          assertThat(window.words()).contains("It has run 12 mi", "4 overdue");
          press(window, "Levels and leaks", "It is done", "Done");
          assertThat(ServiceBook.of(sample.job.state()).count(ServiceBook.State.DONE)).isEqualTo(1);
          press(window, "Put in service", "Close the record", "T", "Done");
          assertThat(window.words()).contains("in service", "Reopen");
          List<LoggedEntry> before = sample.job.history();
          window.shell.context().navigator().show(ScreenId.TAKE_APART);
          window.scan(sample.tag("pushrod@3EX"));
          window.layOut();
          assertThat(window.words()).contains("record is closed");
          assertThat(sample.job.history()).isEqualTo(before);
          return window;
        });
  }

  @Test
  void itComesApartAgainWithEveryPartInItsPlace() {
    Toolkit.on(
        () -> {
          SampleWindow window = open(sample.job, ScreenId.SERVICE);
          press(window, "Put in service", "Close the record", "Done");
          press(window, "Reopen", "It comes apart again");
          assertThat(window.words()).contains("Print the record first");
          press(window, "It is printed, it comes apart", "S", "Done");
          assertThat(window.shell.current()).isInstanceOf(JobHomeScreen.class);
          assertThat(window.words()).doesNotContain("In service");
          window.shell.context().navigator().show(ScreenId.TAKE_APART);
          window.scan(sample.tag("pushrod@3EX"));
          assertThat(sample.state("pushrod@3EX")).isEqualTo(PlaceState.OUT);
          return window;
        });
  }

  @Test
  void theRecordIsOpenedAgainForAReason() {
    Toolkit.on(
        () -> {
          SampleWindow window = open(sample.job, ScreenId.SERVICE);
          press(window, "Put in service", "Close the record", "Done");
          assertThat(sample.job.state().service().since()).isPresent();
          press(window, "Reopen", "Open the record", "S", "Done");
          assertThat(sample.job.state().service().since()).isEmpty();
          return window;
        });
  }

  /** Once it is apart, nobody can print the record of this build any more. */
  @Test
  void beforeItComesApartItsRecordCanBePrinted() {
    Toolkit.on(
        () -> {
          SampleWindow window = open(sample.job, ScreenId.SERVICE);
          press(window, "Put in service", "Close the record", "Done");
          press(window, "Reopen", "It comes apart again", "Print the record");
          assertThat(window.shell.current()).isInstanceOf(RecordScreen.class);
          return window;
        });
  }
}
