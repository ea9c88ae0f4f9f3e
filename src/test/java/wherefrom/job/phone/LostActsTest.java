package wherefrom.job.phone;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import wherefrom.inspection.Subject;
import wherefrom.job.By;
import wherefrom.job.OpenJob;
import wherefrom.job.UnsentException;
import wherefrom.job.entry.PartFitted;
import wherefrom.job.entry.PartOut;
import wherefrom.job.entry.PartUnfitted;
import wherefrom.job.entry.StopGiven;
import wherefrom.job.photos.Photograph;
import wherefrom.job.takeapart.OutOrder;
import wherefrom.parts.Place;
import wherefrom.rules.Cue;
import wherefrom.ui.sample.PaperLogbook.Away;
import wherefrom.ui.sample.SampleJob;

/** The store goes while a phone's act is sent: it is written once, and no other is told as done. */
class LostActsTest {
  private SampleJob sample = SampleJob.apart();
  private PhoneBench bench = joined(sample);

  private static PhoneBench joined(SampleJob sample) {
    OpenJob job = sample.job.beside(new By(2, ""));
    return new PhoneBench(job, SampleJob.NAMES, () -> OutOrder.CYLINDER);
  }

  private void takeApart() {
    sample = SampleJob.whole();
    bench = joined(sample);
  }

  private void lost(Away how, Runnable act) {
    sample.logbook.away(how);
    assertThatThrownBy(act::run).isInstanceOf(UnsentException.class);
    sample.logbook.away(Away.NO);
  }

  private PhoneView scan(String act, String digits) {
    return bench.act(act, PhoneDeed.CODE, digits);
  }

  private long entries(Class<?> kind) {
    sample.job.catchUp();
    return sample.job.history().stream().filter(it -> kind.isInstance(it.entry())).count();
  }

  private boolean isFitted(String place) {
    sample.job.catchUp();
    return sample.job.state().findFitted(Place.find(place).orElseThrow()).isPresent();
  }

  // The same act again.

  @Test
  void aRightPlaceWhoseAnswerWasLostIsShownAndWrittenOnce() {
    scan("hand", sample.tag("pushrod@3EX"));
    lost(Away.UNHEARD, () -> scan("card", sample.card("3EX")));
    PhoneView shown = scan("card", sample.card("3EX"));
    assertThat(shown.cue()).contains(Cue.RIGHT);
    assertThat(shown.place()).isEqualTo("3 EX");
    assertThat(entries(PartFitted.class)).isEqualTo(1);
  }

  @Test
  void aRightPlaceThatDidNotArriveIsWrittenWhenItIsSentAgain() {
    scan("hand", sample.tag("pushrod@3EX"));
    lost(Away.UNSENT, () -> scan("card", sample.card("3EX")));
    assertThat(isFitted("pushrod@3EX")).isFalse();
    assertThat(scan("card", sample.card("3EX")).cue()).contains(Cue.RIGHT);
    assertThat(entries(PartFitted.class)).isEqualTo(1);
  }

  @Test
  void aStopWhoseAnswerWasLostStandsAndIsWrittenOnce() {
    scan("hand", sample.tag("pushrod@3EX"));
    lost(Away.UNHEARD, () -> scan("card", sample.card("5EX")));
    PhoneView stop = scan("card", sample.card("5EX"));
    assertThat(stop.cue()).contains(Cue.STOP);
    assertThat(stop.facts()).hasSize(3);
    assertThat(entries(StopGiven.class)).isEqualTo(1);
    assertThat(bench.refresh().cue()).contains(Cue.STOP);
    assertThat(bench.act("undo", PhoneDeed.UNDO, "").small()).startsWith("Taken back:");
    assertThat(sample.job.catchUp()).isTrue();
    assertThat(sample.job.state().stops().waiting()).isEmpty();
  }

  @Test
  void aForeignTagWhileTakingApartIsLoggedOnce() {
    takeApart();
    String strange =
        new wherefrom.parts.TagCode(wherefrom.parts.TagType.PART, SampleJob.OTHER_ENGINE, 12, 1)
            .digits();
    lost(Away.UNHEARD, () -> scan("strange", strange));
    assertThat(scan("strange", strange).cue()).contains(Cue.STOP);
    assertThat(entries(StopGiven.class)).isEqualTo(1);
  }

  /** Another bench took it out meanwhile: judged again it would go in a second time. */
  @Test
  void whatOthersHaveChangedSinceIsNotDoneAgain() {
    scan("hand", sample.tag("pushrod@3EX"));
    lost(Away.UNHEARD, () -> scan("card", sample.card("3EX")));
    sample.job.catchUp();
    sample.job.record(new PartUnfitted(sample.part("pushrod@3EX").item(), "moved"));
    assertThat(scan("card", sample.card("3EX")).small()).isEqualTo("It is done.");
    assertThat(entries(PartFitted.class)).isEqualTo(1);
    assertThat(isFitted("pushrod@3EX")).isFalse();
  }

  @Test
  void aPictureThatWasReadUnheardIsWrittenOnce() {
    scan("hand", sample.card("3EX"));
    List<String> seen = List.of(sample.tag("pushrod@3EX"));
    lost(Away.UNHEARD, () -> bench.read("picture", seen, ""));
    assertThat(bench.read("picture", seen, "").cue()).contains(Cue.RIGHT);
    assertThat(entries(PartFitted.class)).isEqualTo(1);
  }

  @Test
  void aPhotographThatWasFiledUnheardIsFiledOnce() {
    scan("hand", sample.tag("pushrod@3EX"));
    Subject subject = bench.require(bench.subject().orElseThrow().key());
    lost(Away.UNHEARD, () -> bench.keep("photo", subject, "abc.jpg"));
    assertThat(bench.keep("photo", subject, "abc.jpg").small()).startsWith("Kept with");
    sample.job.catchUp();
    assertThat(Photograph.listOf(sample.job.state(), subject)).hasSize(1);
  }

  /** All of them or none: where the answer is lost half of them cannot be out. */
  @Test
  void allPartsOfAPictureAreOutOrNoneIs() {
    takeApart();
    String all = sample.tag("rocker@1IN") + " " + sample.tag("rocker@1EX");
    long before = sample.job.sequence();
    lost(Away.UNHEARD, () -> bench.act("all", PhoneDeed.ALL_OUT, all));
    assertThat(bench.act("all", PhoneDeed.ALL_OUT, all).small()).isEqualTo("It is done.");
    assertThat(entries(PartOut.class)).isEqualTo(2);
    assertThat(sample.job.sequence()).as("one step").isEqualTo(before + 1);
  }

  /** It is taken back and stopped as two entries: the stop comes though the first was unheard. */
  @Test
  void aPartThatIsInTurnedStopsThoughTheAnswerWasLost() {
    scan("hand", sample.tag("pushrod@3EX"));
    scan("card", sample.card("3EX"));
    lost(Away.UNHEARD, () -> bench.act("turned", PhoneDeed.TURNED, ""));
    assertThat(isFitted("pushrod@3EX")).isFalse();
    assertThat(bench.act("turned", PhoneDeed.TURNED, "").cue()).contains(Cue.STOP);
    assertThat(entries(StopGiven.class)).isEqualTo(1);
  }

  // Another act in its place.

  @Test
  void anotherActIsNotToldAsDoneInItsPlace() {
    takeApart();
    lost(Away.UNHEARD, () -> out("first", "rocker@1IN"));
    PhoneView second = out("second", "rocker@1EX");
    assertThat(second.headline()).isEqualTo("OUT");
    assertThat(second.next()).startsWith("Kept after all: ");
    assertThat(entries(PartOut.class)).isEqualTo(2);
    assertThat(out("first", "rocker@1IN").small()).isEqualTo("It is done.");
    assertThat(entries(PartOut.class)).isEqualTo(2);
  }

  private PhoneView out(String act, String place) {
    return bench.act(act, PhoneDeed.OUT, Integer.toString(sample.part(place).item()));
  }

  @Test
  void whatDidNotArriveIsNotDoneForAnothersSake() {
    takeApart();
    lost(Away.UNSENT, () -> out("first", "rocker@1IN"));
    assertThat(out("second", "rocker@1EX").headline()).isEqualTo("OUT");
    assertThat(entries(PartOut.class)).isEqualTo(1);
  }

  @Test
  void whileTheStoreIsAwayNothingIsToldAsDone() {
    takeApart();
    sample.logbook.away(Away.UNHEARD);
    PhoneView before = bench.view();
    assertThatThrownBy(() -> out("first", "rocker@1IN")).isInstanceOf(UnsentException.class);
    assertThatThrownBy(() -> out("first", "rocker@1IN")).isInstanceOf(UnsentException.class);
    assertThatThrownBy(() -> out("second", "rocker@1EX")).isInstanceOf(UnsentException.class);
    assertThat(bench.view()).isEqualTo(before);
    sample.logbook.away(Away.NO);
    assertThat(out("second", "rocker@1EX").headline()).isEqualTo("OUT");
    assertThat(entries(PartOut.class)).isEqualTo(2);
  }
}
