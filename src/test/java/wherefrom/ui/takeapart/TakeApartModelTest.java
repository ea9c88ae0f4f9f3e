package wherefrom.ui.takeapart;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import wherefrom.job.Caution;
import wherefrom.parts.Action;
import wherefrom.parts.TagCode;
import wherefrom.parts.TagType;
import wherefrom.rules.Cue;
import wherefrom.ui.sample.SampleJob;

class TakeApartModelTest {
  private final SampleJob sample = SampleJob.whole();
  private final TakeApartModel model = new TakeApartModel(sample.job, SampleJob.NAMES);

  @Test
  void rockersComeOutFirstThenTheirPushrods() {
    assertThat(model.answer().lines()).containsExactly("1 IN rocker");
    assertThat(model.scan(sample.tag("rocker@1IN"))).contains(Cue.RIGHT);
    assertThat(model.answer().lines()).containsExactly("1 IN pushrod");
    assertThat(model.answer().small())
        .isEqualTo(
            "Out: cylinder 1, intake, rocker. Next, pushrod: Mark its top end before it comes out.");
    assertThat(model.progress()).isEqualTo("1 of 74 out");
  }

  @Test
  void aTapOnTheNextPlaceLogsItsPartOut() {
    assertThat(model.tap(sample.spot("1IN"))).contains(Cue.RIGHT);
    assertThat(sample.record("rocker@1IN").where().state()).isEqualTo("out");
  }

  @Test
  void aTapElsewhereAsksBeforeItLogs() {
    int before = sample.job.history().size();
    assertThat(model.tap(sample.spot("5EX"))).contains(Cue.ASK);
    assertThat(model.answer().lines()).containsExactly("5 EX rocker");
    assertThat(model.answer().small())
        .isEqualTo("Next out is 1 IN rocker. Is the 5 EX rocker out all the same?");
    assertThat(sample.job.history()).hasSize(before);
    model.dismiss();
    assertThat(model.answer().lines()).containsExactly("1 IN rocker");
    assertThat(model.confirm()).isEmpty();
    model.tap(sample.spot("5EX"));
    assertThat(model.act(Action.YES)).contains(Cue.RIGHT);
    assertThat(sample.record("rocker@5EX").where().state()).isEqualTo("out");
    assertThat(model.asked()).isEmpty();
  }

  @Test
  void aScanAnswersForItselfWhileATapIsAskedAbout() {
    model.tap(sample.spot("5EX"));
    model.scan(sample.tag("rocker@1IN"));
    assertThat(model.act(Action.YES)).isEmpty();
    assertThat(sample.record("rocker@5EX").where().state()).isNotEqualTo("out");
  }

  @Test
  void whatCannotBeWrittenHasItsOwnAnswer() {
    model.scan(sample.tag("rocker@1IN"));
    sample.logbook.fail("The disk is full. Make room, then scan again.");
    assertThat(model.scan(sample.tag("pushrod@1IN"))).contains(Cue.ASK);
    assertThat(model.answer().headline()).isEqualTo("Not kept");
    assertThat(model.answer().small()).isEqualTo("The disk is full. Make room, then scan again.");
  }

  @Test
  void aPartThatIsOutAlreadyIsSaidAndNotLoggedAgain() {
    model.scan(sample.tag("rocker@1IN"));
    int before = sample.job.history().size();
    assertThat(model.scan(sample.tag("rocker@1IN"))).isEmpty();
    assertThat(model.answer().small()).startsWith("Already out: cylinder 1, intake, rocker");
    assertThat(sample.job.history()).hasSize(before);
  }

  @Test
  void aSkippedPartComesBackWhenAllOthersAreOut() {
    model.act(Action.SKIP);
    assertThat(model.answer().lines()).containsExactly("1 IN pushrod");
    sample.job.state().parts().stream()
        .map(part -> part.part())
        .filter(part -> part.item() != 1)
        .toList()
        .forEach(part -> model.scan(part.code(SampleJob.ENGINE).digits()));
    assertThat(model.answer().lines()).containsExactly("1 IN rocker");
  }

  @Test
  void theLastStepIsTakenBack() {
    model.scan(sample.tag("rocker@1IN"));
    model.act(Action.UNDO);
    assertThat(model.answer().lines()).containsExactly("1 IN rocker");
    assertThat(model.answer().small()).startsWith("Taken back:");
  }

  @Test
  void aTagOfAnotherEngineStops() {
    String other = new TagCode(TagType.PART, SampleJob.OTHER_ENGINE, 7, 1).digits();
    assertThat(model.scan(other)).contains(Cue.STOP);
    assertThat(model.answer().small()).contains("Grey six");
  }

  @Test
  void notesAndPiecesAreOfThePartThatCameOutLast() {
    model.scan(sample.tag("pushrod@3EX"));
    assertThat(model.note("bent")).isEmpty();
    assertThat(model.pieces("2")).isEmpty();
    assertThat(model.pieces("")).isNotEmpty();
    assertThat(sample.record("pushrod@3EX").remarks()).hasSize(1);
    assertThat(sample.record("pushrod@3EX").part().pieces()).isEqualTo(2);
  }

  @Test
  void cautionsStandOnTheirStep() {
    assertThat(model.cautions()).contains(Caution.LIFTER_RISES).doesNotContain(Caution.HOIST);
    assertThat(model.cautionWords()).startsWith("Caution. ").contains(" more.");
  }
}
