package wherefrom.job.phone;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import wherefrom.inspection.Subject;
import wherefrom.job.LogbookException;
import wherefrom.job.OpenJob;
import wherefrom.job.entry.PartUnfitted;
import wherefrom.job.photos.Photograph;
import wherefrom.job.takeapart.OutOrder;
import wherefrom.parts.Place;
import wherefrom.parts.Whereabouts;
import wherefrom.rules.Cue;
import wherefrom.ui.sample.SampleJob;

/** What a phone shows and does, as a bench of its own. */
class PhoneBenchTest {
  private static final AtomicInteger ACTS = new AtomicInteger();

  private static PhoneBench bench(SampleJob sample) {
    return bench(sample, sample.job);
  }

  private static PhoneBench bench(SampleJob sample, OpenJob job) {
    return new PhoneBench(job, SampleJob.NAMES, () -> OutOrder.CYLINDER);
  }

  private static String fresh() {
    return "act-" + ACTS.incrementAndGet();
  }

  private static PhoneView act(PhoneBench bench, PhoneDeed deed, String with) {
    return bench.act(fresh(), deed, with);
  }

  private static PhoneView scan(PhoneBench bench, String digits) {
    return act(bench, PhoneDeed.CODE, digits);
  }

  private static String typed(SampleJob sample, String place) {
    return sample.part(place).code(SampleJob.ENGINE).typed().replace(" ", "");
  }

  private static PhoneKey key(List<PhoneKey> keys, PhoneDeed deed) {
    return keys.stream().filter(one -> one.deed() == deed).findFirst().orElseThrow();
  }

  // Taking apart.

  @Test
  void anEngineThatIsWholeIsTakenApartFirst() {
    SampleJob sample = SampleJob.whole();
    PhoneBench bench = bench(sample);
    assertThat(bench.work()).isEqualTo(PhoneWork.TAKE_APART);
    assertThat(bench.view().headline()).isEqualTo("Next out");
    PhoneView out = scan(bench, sample.tag("rocker@1IN"));
    assertThat(out.cue()).contains(Cue.RIGHT);
    assertThat(out.headline()).isEqualTo("OUT");
    assertThat(out.place() + " " + out.what()).isEqualTo("1 IN rocker");
    assertThat(out.next()).isEqualTo("Next: 1 IN pushrod");
    assertThat(sample.record("rocker@1IN").where()).isEqualTo(Whereabouts.OUT);
  }

  @Test
  void thePartThatTheKeyNamedIsOutEvenWhereAnotherIsNextByNow() {
    SampleJob sample = SampleJob.whole();
    PhoneBench bench = bench(sample);
    PhoneKey isOut = key(bench.view().keys(), PhoneDeed.OUT);
    int named = Integer.parseInt(isOut.with());
    sample.job.record(new wherefrom.job.entry.PartOut(sample.part("rocker@8EX").item()));
    act(bench, PhoneDeed.OUT, isOut.with());
    assertThat(sample.job.state().getPart(named).where()).isEqualTo(Whereabouts.OUT);
  }

  @Test
  void allPartsOfAPictureAreOutAtOnce() {
    SampleJob sample = SampleJob.whole();
    PhoneBench bench = bench(sample);
    List<String> codes = List.of(sample.tag("rocker@1IN"), sample.tag("rocker@1EX"));
    PhoneView which = bench.read(fresh(), codes, "");
    assertThat(which.headline()).isEqualTo("2 tags: which one?");
    PhoneKey all = key(which.choices(), PhoneDeed.ALL_OUT);
    assertThat(all.words()).isEqualTo("All 2 are out");
    PhoneView out = act(bench, all.deed(), all.with());
    assertThat(out.place() + " " + out.what()).isEqualTo("2 parts");
    assertThat(sample.record("rocker@1EX").where()).isEqualTo(Whereabouts.OUT);
    assertThat(act(bench, all.deed(), all.with()).small()).endsWith("2 out before.");
  }

  @Test
  void whatIsLeftForLaterComesAfterTheOthers() {
    SampleJob sample = SampleJob.whole();
    PhoneBench bench = bench(sample);
    String first = bench.view().place();
    PhoneKey later = key(bench.view().keys(), PhoneDeed.SKIP);
    assertThat(act(bench, later.deed(), later.with()).place()).isNotEqualTo(first);
  }

  // Putting together.

  @Test
  void aPartThenItsCardIsARightPlace() {
    SampleJob sample = SampleJob.apart();
    PhoneBench bench = bench(sample);
    PhoneView hand = scan(bench, sample.tag("pushrod@3EX"));
    assertThat(hand.headline()).isEqualTo("Part in hand");
    assertThat(hand.cue()).isEmpty();
    PhoneView right = scan(bench, sample.card("3EX"));
    assertThat(right.cue()).contains(Cue.RIGHT);
    assertThat(right.headline()).isEqualTo("right place");
    assertThat(right.place() + " " + right.what()).isEqualTo("3 EX pushrod");
    assertThat(right.next()).startsWith("15 pushrods to fit.");
  }

  @Test
  void aWrongPlaceStopsWithTheThreeLinesOfTheWindow() {
    SampleJob sample = SampleJob.apart();
    PhoneBench bench = bench(sample);
    scan(bench, sample.tag("pushrod@3EX"));
    PhoneView stop = scan(bench, sample.card("5EX"));
    assertThat(stop.cue()).contains(Cue.STOP);
    assertThat(stop.facts())
        .extracting(fact -> fact.label())
        .containsExactly("From", "Here", "Right part");
    assertThat(stop.tag().orElseThrow().words()).isEqualTo("Scan the right part");
    assertThat(sample.job.state().findFitted(Place.find("pushrod@5EX").orElseThrow())).isEmpty();
    PhoneView still = scan(bench, "not a tag");
    assertThat(still.facts()).isEqualTo(stop.facts());
    assertThat(still.small()).contains("not one of our tags");
    assertThat(act(bench, PhoneDeed.UNDO, "").small()).startsWith("Taken back:");
    assertThat(bench.view().facts()).isEmpty();
  }

  @Test
  void aStopThatAFitHadEndedDoesNotComeUpWhenThatIsTakenBack() {
    SampleJob sample = SampleJob.apart();
    PhoneBench bench = bench(sample);
    scan(bench, sample.tag("pushrod@3EX"));
    scan(bench, sample.card("5EX"));
    assertThat(scan(bench, sample.tag("pushrod@5EX")).cue()).contains(Cue.RIGHT);
    PhoneView back = act(bench, PhoneDeed.UNDO, "");
    assertThat(back.small()).startsWith("Taken back:");
    assertThat(back.cue()).isEmpty();
    assertThat(back.facts()).isEmpty();
    assertThat(sample.job.stops().findWaiting()).isPresent();
  }

  @Test
  void aCodeThatTheStopShowsIsAskedAboutWhenItIsTyped() {
    SampleJob sample = SampleJob.apart();
    PhoneBench bench = bench(sample);
    scan(bench, sample.tag("pushrod@3EX"));
    scan(bench, sample.card("5EX"));
    PhoneView asked = scan(bench, typed(sample, "pushrod@5EX"));
    assertThat(asked.headline()).isEqualTo("Is this tag on the part in your hand?");
    PhoneKey yes = key(asked.choices(), PhoneDeed.CODE);
    assertThat(act(bench, yes.deed(), yes.with()).cue()).contains(Cue.RIGHT);
  }

  /** Neither a question nor the poll takes it off the glass. */
  @Test
  void whatIsAskedWhileAStopStandsIsAskedUnderTheStop() {
    SampleJob sample = SampleJob.apart();
    PhoneBench bench = bench(sample);
    scan(bench, sample.tag("pushrod@3EX"));
    PhoneView stop = scan(bench, sample.card("5EX"));
    PhoneView why = act(bench, key(stop.keys(), PhoneDeed.ON_PURPOSE).deed(), "");
    assertThat(why.cue()).contains(Cue.STOP);
    assertThat(bench.refresh()).isEqualTo(why);
    PhoneView which =
        bench.read(fresh(), List.of(sample.tag("pushrod@3EX"), sample.card("3EX")), "");
    assertThat(which.choices()).isNotEmpty();
    assertThat(which.cue()).contains(Cue.STOP);
    assertThat(act(bench, PhoneDeed.DUE, "").facts()).isEqualTo(stop.facts());
  }

  @Test
  void aStopIsOverruledOnlyWithAReasonThatIsHeld() {
    SampleJob sample = SampleJob.apart();
    PhoneBench bench = bench(sample);
    scan(bench, sample.tag("pushrod@3EX"));
    PhoneView stop = scan(bench, sample.card("5EX"));
    PhoneView why = act(bench, key(stop.keys(), PhoneDeed.ON_PURPOSE).deed(), "");
    PhoneKey matched = why.choices().get(1);
    PhoneView told = act(bench, matched.deed(), matched.with());
    assertThat(told.small()).startsWith("Then no longer mated");
    PhoneKey fit = key(told.choices(), PhoneDeed.FIT);
    assertThat(fit.deed().isHeld()).isTrue();
    assertThatThrownBy(() -> act(bench, PhoneDeed.FIT, " "))
        .isInstanceOf(IllegalArgumentException.class);
    assertThat(act(bench, fit.deed(), fit.with()).headline()).isEqualTo("Fitted on purpose");
    assertThat(sample.job.state().findFitted(Place.find("pushrod@5EX").orElseThrow()))
        .contains(sample.part("pushrod@3EX"));
  }

  @Test
  void whatStandsInTheWayIsTakenOut() {
    SampleJob sample = SampleJob.apart();
    PhoneBench bench = bench(sample);
    scan(bench, sample.tag("pushrod@3EX"));
    scan(bench, sample.card("3EX"));
    scan(bench, sample.tag("pushrod@3EX"));
    PhoneView moved = scan(bench, sample.card("5EX"));
    assertThat(moved.cue()).contains(Cue.STOP);
    assertThat(act(bench, PhoneDeed.PUT_AWAY, "").cue()).isEmpty();
    assertThat(sample.job.state().stops().waiting()).isEmpty();
  }

  @Test
  void theListNamesThePlaceAndItsPart() {
    SampleJob sample = SampleJob.apart();
    PhoneBench bench = bench(sample);
    PhoneView next = act(bench, PhoneDeed.WORK, PhoneWork.FOLLOW_THE_LIST.key());
    assertThat(next.headline()).isEqualTo("Next place");
    assertThat(next.place()).isEqualTo("main 1, upper");
    assertThat(next.small()).startsWith("Its part: ");
    PhoneView later = act(bench, PhoneDeed.SKIP, "");
    assertThat(later.place()).isNotEqualTo(next.place());
  }

  @Test
  void whereAPartGoesIsShownAndNothingIsWritten() {
    SampleJob sample = SampleJob.apart();
    PhoneBench bench = bench(sample);
    long before = sample.job.sequence();
    act(bench, PhoneDeed.WORK, PhoneWork.WHERE_DOES_THIS_GO.key());
    PhoneView goes = scan(bench, sample.tag("pushrod@3EX"));
    assertThat(goes.headline()).isEqualTo("It goes here");
    assertThat(goes.place()).isEqualTo("3 EX");
    assertThat(sample.job.sequence()).isEqualTo(before);
  }

  @Test
  void otherEnginesAndForeignCodesAreTold() {
    SampleJob sample = SampleJob.apart();
    PhoneBench bench = bench(sample);
    PhoneView foreign = scan(bench, "https://elsewhere.example");
    assertThat(foreign.cue()).contains(Cue.ASK);
    assertThat(foreign.headline()).isEqualTo("not one of ours");
    PhoneView other =
        scan(
            bench,
            new wherefrom.parts.TagCode(wherefrom.parts.TagType.PART, SampleJob.OTHER_ENGINE, 12, 1)
                .digits());
    assertThat(other.cue()).contains(Cue.STOP);
    assertThat(other.facts().get(0).line()).isEqualTo("Tag of: Gray six");
  }

  // Pictures.

  @Test
  void aPictureWithoutATagSaysWhatToDo() {
    PhoneBench bench = bench(SampleJob.apart());
    assertThat(bench.read(fresh(), List.of(), "").small())
        .isEqualTo("Closer, tilted, with more light. Or type the code.");
    assertThat(bench.read(fresh(), List.of(), "Glare on the tag. Tilt it.").small())
        .isEqualTo("Glare on the tag. Tilt it. Or type the code.");
  }

  @Test
  void aPictureWithoutATagLeavesTheStopStanding() {
    SampleJob sample = SampleJob.apart();
    PhoneBench bench = bench(sample);
    scan(bench, sample.tag("pushrod@3EX"));
    scan(bench, sample.card("5EX"));
    PhoneView unread = bench.read(fresh(), List.of(), "");
    assertThat(unread.cue()).contains(Cue.STOP);
    assertThat(unread.small()).startsWith("Not read.");
  }

  @Test
  void aPictureIsFiledWithThePartThatWasScannedLast() {
    SampleJob sample = SampleJob.apart();
    PhoneBench bench = bench(sample);
    assertThat(bench.subject()).isEmpty();
    assertThatThrownBy(() -> bench.require("")).isInstanceOf(IllegalArgumentException.class);
    scan(bench, sample.tag("pushrod@3EX"));
    Subject subject = bench.require(bench.subject().orElseThrow().key());
    assertThat(bench.keep(fresh(), subject, "abc.jpg").small())
        .startsWith("Kept with the cylinder 3");
    assertThat(Photograph.listOf(sample.job.state(), subject)).hasSize(1);
  }

  // Others at work.

  @Test
  void aRightPlaceThatAnotherBenchUndidStandsNoLonger() {
    SampleJob sample = SampleJob.apart();
    PhoneBench bench = bench(sample);
    scan(bench, sample.tag("pushrod@3EX"));
    scan(bench, sample.card("3EX"));
    assertThat(bench.refresh().cue()).contains(Cue.RIGHT);
    sample.job.record(new PartUnfitted(sample.part("pushrod@3EX").item(), "moved"));
    assertThat(bench.refresh().cue()).isEmpty();
  }

  @Test
  void whatCannotBeWrittenIsNotShownAsDone() {
    SampleJob sample = SampleJob.apart();
    PhoneBench bench = bench(sample);
    PhoneView hand = scan(bench, sample.tag("pushrod@3EX"));
    sample.logbook.fail("The disk is full.");
    assertThatThrownBy(() -> scan(bench, sample.card("3EX")))
        .isInstanceOf(LogbookException.class)
        .hasMessageContaining("The disk is full.");
    assertThat(bench.view()).isEqualTo(hand);
    sample.logbook.fail("");
    assertThat(scan(bench, sample.card("3EX")).cue()).contains(Cue.RIGHT);
  }

  /** As where a line of another bench is damaged: told before the next scan, not by it. */
  @Test
  void aLogbookThatTurnsOutDamagedIsToldByItself() {
    SampleJob sample = SampleJob.apart();
    PhoneBench bench = bench(sample);
    sample.logbook.damage("Entry 9 is damaged.");
    PhoneView told = bench.refresh();
    assertThat(told.cue()).contains(Cue.ASK);
    assertThat(told.headline()).isEqualTo("Nothing can be written");
    assertThat(told.small()).isEqualTo("Entry 9 is damaged.");
  }

  @Test
  void aStopStandsBesideWhatIsToldOfADamagedLogbook() {
    SampleJob sample = SampleJob.apart();
    PhoneBench bench = bench(sample);
    scan(bench, sample.tag("pushrod@3EX"));
    PhoneView stop = scan(bench, sample.card("5EX"));
    sample.logbook.damage("Entry 9 is damaged.");
    PhoneView told = bench.refresh();
    assertThat(told.cue()).contains(Cue.STOP);
    assertThat(told.facts()).isEqualTo(stop.facts());
    assertThat(told.small()).isEqualTo("Entry 9 is damaged.");
  }

  @Test
  void everyKeyOfAViewIsADeedThatIsKnown() {
    for (PhoneDeed deed : PhoneDeed.values()) {
      assertThat(PhoneDeed.find(deed.key())).isEqualTo(Optional.of(deed));
    }
    assertThat(PhoneDeed.find("no such")).isEmpty();
  }
}
