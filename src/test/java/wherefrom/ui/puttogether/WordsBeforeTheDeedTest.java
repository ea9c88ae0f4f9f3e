package wherefrom.ui.puttogether;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import wherefrom.inspection.Decision;
import wherefrom.job.decide.Deciding;
import wherefrom.job.puttogether.FitMode;
import wherefrom.job.shelf.NextDeed;
import wherefrom.job.shelf.Standing;
import wherefrom.job.takeapart.OutOrder;
import wherefrom.parts.Place;
import wherefrom.rules.Cue;
import wherefrom.ui.sample.SampleJob;

/** What is said before a part goes in is what then happens. */
class WordsBeforeTheDeedTest {
  private final SampleJob sample = SampleJob.apart();
  private final PutTogetherModel model = new PutTogetherModel(sample.job);

  private void scan(String part) {
    model.scan(sample.read(sample.tag(part)));
  }

  private static Place place(String key) {
    return Place.find(key).orElseThrow();
  }

  /** The page of any cylinder asks so, and a wrong place stops. */
  @Test
  void aTapTriesThePartAndPromisesNoFit() {
    scan("rocker@1EX");
    assertThat(model.dueHalves().question()).isEqualTo("A tap tries the 1 EX rocker");
  }

  @Test
  void thePlaceThatWasTappedIsTheOneThatIsLit() {
    model.tap(place("rocker@1IN"));
    assertThat(model.here()).contains(place("rocker@1IN"));
    model.tap(place("pushrod@3EX"));
    assertThat(model.here()).contains(place("pushrod@3EX"));
  }

  /** The first screen's next part is named and ringed here, too. */
  @Test
  void theNextPartIsTheSameEverywhere() {
    NextDeed home = NextDeed.of(sample.job, Standing.of(sample.job), OutOrder.CYLINDER);
    Place next = home.place().orElseThrow();
    assertThat(model.here()).contains(next);
    model.choose(FitMode.FOLLOW_THE_LIST);
    assertThat(model.here()).contains(next);
  }

  @Test
  void theModeThatIsOnKeepsThePartInTheHand() {
    scan("rocker@1EX");
    model.choose(FitMode.SCAN_BOTH);
    assertThat(model.dueHalves().held()).contains(sample.part("rocker@1EX"));
  }

  @Test
  void anotherModeSaysWhichPartItLetsGo() {
    scan("rocker@1EX");
    assertThat(model.choose(FitMode.WHERE_DOES_THIS_GO)).contains(Cue.ASK);
    assertThat(model.trouble()).isEqualTo("Let go: 1 EX rocker.");
  }

  @Test
  void whyAPartCannotGoInIsSaidAtOnceWithTheReason() {
    new Deciding(sample.job)
        .decide(sample.part("rocker@1EX").item(), Decision.REPLACE, "the tip is worn");
    scan("rocker@1EX");
    assertThat(model.dueHalves().place().large()).isEqualTo("Not yet: to be replaced");
    assertThat(model.dueHalves().place().small()).contains("the tip is worn");
  }

  /** One form of words for which end is up, before it goes in, when it is in and where it stops. */
  @Test
  void theTaggedEndIsNamedBeforeAndAfter() {
    scan("pushrod@3EX");
    assertThat(model.dueHalves().place().bold()).isEqualTo("tagged end up");
    model.scan(sample.read(sample.card("3EX")));
    assertThat(model.answer().small()).isEqualTo("The tagged end goes up.");
  }

  @Test
  void theListSaysWhatAScanDoes() {
    model.choose(FitMode.FOLLOW_THE_LIST);
    assertThat(model.dueHalves().place().small()).isEqualTo("a scan fits it: no card proves it");
  }

  /** What lies under a part is named before it goes in, and not only once it is in the way. */
  @Test
  void whatHasToBeInFirstIsSaidBeforeThePartGoesIn() {
    scan("pushrod@3EX");
    assertThat(model.halves().orElseThrow().place().small()).isEqualTo("Not in yet: lifter.");
  }

  /** A ring without a word is read as the place that the question is about. */
  @Test
  void aQuestionRingsNothingThatItDoesNotSpeakOf() {
    assertThat(model.here()).isPresent();
    model.scan(sample.read("0012 47"));
    assertThat(model.answer().cue()).contains(Cue.ASK);
    assertThat(model.here()).isEmpty();
  }
}
