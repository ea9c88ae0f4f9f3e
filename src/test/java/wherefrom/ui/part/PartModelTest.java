package wherefrom.ui.part;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.job.handling.HandlingOutcome;
import wherefrom.job.handling.NewPart;
import wherefrom.job.inspect.Inspecting;
import wherefrom.job.puttogether.Fitting;
import wherefrom.ui.sample.SampleJob;

class PartModelTest {
  private final SampleJob sample = SampleJob.apart();
  private final int item = sample.part("pushrod@3EX").item();
  private final PartModel model = new PartModel(sample.job, SampleJob.CLOCK, item);

  @Test
  void itsWholeHistoryIsToldLatestFirst() {
    model.wash("4");
    model.back();
    assertThat(model.more())
        .extracting(PartModel.Line::words)
        .containsSubsequence(
            "0012 cylinder 3, exhaust, pushrod back from washing.",
            "0012 cylinder 3, exhaust, pushrod off for washing, basket 4.",
            "0012 cylinder 3, exhaust, pushrod came out.");
  }

  @Test
  void onlyWhatCanBeDoneIsOffered() {
    assertThat(model.deeds()).contains(Deed.WASH, Deed.LOST).doesNotContain(Deed.BACK, Deed.FOUND);
    model.lost("");
    assertThat(model.deeds()).contains(Deed.FOUND).doesNotContain(Deed.WASH);
    model.replace("lost", NewPart.LIKE_THE_OLD);
    assertThat(model.deeds()).containsExactly(Deed.NOTE, Deed.PHOTO);
  }

  @Test
  void theReplacementIsANewPartOfTheSamePlace() {
    HandlingOutcome done = model.replace("worn out", NewPart.LIKE_THE_OLD);
    int fresh = ((HandlingOutcome.Logged) done).part().part().item();
    assertThat(new PartModel(sample.job, SampleJob.CLOCK, fresh).title())
        .isEqualTo("3 EX new pushrod");
  }

  /** The answer stands first; what somebody wrote of it is said to be a note. */
  @Test
  void theNoteOfATestIsNotTakenForItsAnswer() {
    new Inspecting(sample.job)
        .answer(Subject.ofPart(item), "pushrod-roll", Look.SUSPECT, "light flickers under it");
    assertThat(model.matter()).isEqualTo("Is it straight? suspect. Note: light flickers under it");
  }

  @Test
  void whatHappensTwiceInADayIsOneKnotOfItsLife() {
    model.note("rust below the cup");
    model.note("rust below the cup");
    assertThat(model.life())
        .extracting(LifeEvent::words)
        .containsExactly("came out", "note on 3 EX pushrod: rust below the cup, 2 times");
  }

  @Test
  void aNoteStandsOnItsPage() {
    model.note("rust below the cup");
    assertThat(model.more())
        .contains(new PartModel.Line("Note, 4 May 2026, today", "rust below the cup"));
  }

  @Test
  void aMateOfAPartThatSitsElsewhereSaysSo() {
    new Fitting(sample.job)
        .fitOnPurpose(sample.part("pushrod@5EX"), sample.spot("3EX"), "matched pair");
    String told =
        "The pushrod from 5 EX is fitted at 3 EX on purpose: matched pair. Check the parts at both"
            + " places as new mates.";
    for (String mate : List.of("rocker@3EX", "lifter@5EX", "pushrod@3EX", "pushrod@5EX")) {
      PartModel page = new PartModel(sample.job, SampleJob.CLOCK, sample.part(mate).item());
      assertThat(page.first()).as(mate).contains(new PartModel.Line("No longer mated", told));
    }
    PartModel other = new PartModel(sample.job, SampleJob.CLOCK, sample.part("rocker@3IN").item());
    assertThat(other.first()).extracting(PartModel.Line::heading).doesNotContain("No longer mated");
  }

  @Test
  void atPuttingTogetherAPartOnTheBenchGoesBackAndItsStopIsNamed() {
    assertThat(model.goesBack()).isTrue();
    new Fitting(sample.job).fit(sample.part("pushrod@3EX"), sample.spot("5EX"), false);
    assertThat(model.where()).startsWith("A stop waits for it. ");
    model.wash("4");
    assertThat(model.goesBack()).isFalse();
    assertThat(model.where()).doesNotContain("A stop waits");
  }
}
