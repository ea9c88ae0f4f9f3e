package wherefrom.ui;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wherefrom.job.OpenJob;
import wherefrom.job.entry.PartOut;
import wherefrom.parts.Whereabouts;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.sample.PaperLogbook.Away;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/**
 * The server is away while parts are scanned: it is said, nothing is done twice, nothing is lost.
 */
class LostServerFlowTest {
  private static final String AWAY =
      "No connection to the shared server bench-pc. Nothing is shown as done.";

  private final SampleJob sample = SampleJob.whole();
  private SampleWindow window;

  @BeforeEach
  void open() {
    window =
        Toolkit.on(
            () -> {
              SampleWindow opened = new SampleWindow(96, 100);
              opened.shell.context().open(sample.job);
              opened.shell.context().navigator().show(ScreenId.TAKE_APART);
              opened.layOut();
              return opened;
            });
  }

  /** What is put off to a later moment has been done when the next is. */
  private String scan(String place) {
    Toolkit.on(
        () -> {
          window.scan(sample.tag(place));
          window.layOut();
          return 0;
        });
    return message();
  }

  private String message() {
    return Toolkit.on(() -> window.shell.message());
  }

  private String comesBack() {
    Toolkit.on(
        () -> {
          sample.logbook.away(Away.NO);
          return 0;
        });
    return message();
  }

  private long outs(String place) {
    int item = sample.part(place).item();
    return Toolkit.on(
        () ->
            sample.job.history().stream()
                .filter(it -> it.entry() instanceof PartOut out && out.item() == item)
                .count());
  }

  @Test
  void aScanThatDidNotArriveIsSentAgainOnce() {
    sample.logbook.away(Away.UNSENT);
    assertThat(scan("pushrod@3EX"))
        .isEqualTo(AWAY + " What you did is sent again when it is back.");
    assertThat(sample.record("pushrod@3EX").where()).isEqualTo(Whereabouts.IN_ENGINE);
    assertThat(scan("pushrod@5EX")).isEqualTo(AWAY + " Wait until it is back.");
    comesBack();
    assertThat(outs("pushrod@3EX")).isEqualTo(1);
    assertThat(outs("pushrod@5EX")).as("it was never sent").isZero();
    scan("pushrod@5EX");
    assertThat(outs("pushrod@5EX")).isEqualTo(1);
  }

  @Test
  void aScanWhoseAnswerWasLostIsNotWrittenTwice() {
    sample.logbook.away(Away.UNHEARD);
    assertThat(scan("pushrod@3EX")).startsWith(AWAY);
    assertThat(outs("pushrod@3EX")).as("nothing is shown as done").isZero();
    assertThat(comesBack()).startsWith("Kept: ");
    assertThat(outs("pushrod@3EX")).isEqualTo(1);
    assertThat(sample.record("pushrod@3EX").where()).isEqualTo(Whereabouts.OUT);
  }

  @Test
  void aPartThatWasPutToItsPlaceIsFittedOnceTheServerIsBack() {
    Toolkit.on(
        () -> {
          sample.job.state().parts().stream()
              .map(part -> part.part().item())
              .toList()
              .forEach(item -> sample.job.record(new PartOut(item)));
          window.shell.context().navigator().show(ScreenId.PUT_TOGETHER);
          window.layOut();
          window.scan(sample.tag("lifter@3EX"));
          window.layOut();
          sample.logbook.away(Away.UNSENT);
          window.scan(sample.card("3EX"));
          window.layOut();
          return 0;
        });
    assertThat(message()).startsWith(AWAY);
    assertThat(sample.record("lifter@3EX").where()).isEqualTo(Whereabouts.OUT);
    comesBack();
    assertThat(sample.record("lifter@3EX").where()).isEqualTo(Whereabouts.FITTED);
  }

  @Test
  void aLogbookInWhichADamagedLineComesInIsSaidAtOnceAndOnce() {
    String damaged = "The logbook on the server is damaged: entry 3, its check sum does not agree.";
    Toolkit.on(
        () -> {
          sample.logbook.damage(damaged);
          return 0;
        });
    assertThat(message()).isEqualTo(damaged);
    Toolkit.on(
        () -> {
          window.shell.context().say("Something else.");
          sample.logbook.damage(damaged);
          return 0;
        });
    assertThat(message()).as("what was said is not said anew").isEqualTo("Something else.");
  }

  /** What came over the wire without an answer must not be done a second time in any job. */
  @Test
  void whatWaitsForAJobIsNotDoneOnAnother() {
    SampleJob other = SampleJob.whole();
    sample.logbook.away(Away.UNSENT);
    scan("pushrod@3EX");
    bench(other.job);
    assertThat(message()).startsWith("Your last step in ").contains("may not be written.");
    long before = written(other.job);
    Toolkit.on(
        () -> {
          other.logbook.away(Away.NO);
          return 0;
        });
    comesBack();
    assertThat(written(other.job)).isEqualTo(before);
  }

  @Test
  void aJobThatIsOpenedAgainHasItsLastStepOnce() {
    sample.logbook.away(Away.UNHEARD);
    scan("pushrod@3EX");
    bench(SampleJob.whole().job);
    comesBack();
    OpenJob again = new OpenJob(sample.logbook, SampleJob.CLOCK);
    bench(again);
    long before = written(again);
    comesBack();
    assertThat(written(again)).isEqualTo(before);
  }

  private void bench(OpenJob job) {
    Toolkit.on(
        () -> {
          window.shell.context().open(job);
          window.layOut();
          return 0;
        });
  }

  private static long written(OpenJob job) {
    return Toolkit.on(
        () -> {
          job.catchUp();
          return (long) job.history().size();
        });
  }
}
