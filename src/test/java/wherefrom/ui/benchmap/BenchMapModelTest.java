package wherefrom.ui.benchmap;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import wherefrom.drawing.Holder;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.job.PlaceState;
import wherefrom.job.inspect.Inspecting;
import wherefrom.job.puttogether.Fitting;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.parts.TagCode;
import wherefrom.parts.TagType;
import wherefrom.rules.Cue;
import wherefrom.ui.app.ReadTwice;
import wherefrom.ui.sample.SampleJob;

class BenchMapModelTest {
  private final SampleJob sample = SampleJob.apart();
  private final AtomicLong nanos = new AtomicLong();
  private final BenchMapModel model = new BenchMapModel(sample.job, nanos::get);

  @Test
  void aScannedPartOpensItsPageOnce() {
    model.scan(sample.read(sample.tag("pushrod@3EX")));
    assertThat(model.takeOpened()).contains(sample.part("pushrod@3EX").item());
    assertThat(model.takeOpened()).isEmpty();
  }

  @Test
  void afterABasketPartsGoOffForWashingAndComeBack() {
    model.scan(sample.read(new TagCode(TagType.BASKET, SampleJob.ENGINE, 4, 1).digits()));
    assertThat(model.scan(sample.read(sample.tag("pushrod@3EX")))).contains(Cue.RIGHT);
    assertThat(model.said()).isEqualTo("cylinder 3, exhaust, pushrod: in basket 4.");
    assertThat(sample.state("pushrod@3EX")).isEqualTo(PlaceState.WASHING);
    nanos.addAndGet(ReadTwice.NANOS);
    assertThat(model.scan(sample.read(sample.tag("pushrod@3EX")))).contains(Cue.RIGHT);
    assertThat(sample.state("pushrod@3EX")).isEqualTo(PlaceState.OUT);
  }

  /** The scanner's second read of the tag in the hand is not the part coming back. */
  @Test
  void aTagThatIsReadTwiceGoesOffForWashingOnce() {
    model.wash(4);
    model.scan(sample.read(sample.tag("pushrod@3EX")));
    nanos.addAndGet(ReadTwice.NANOS - 1);
    assertThat(model.scan(sample.read(sample.tag("pushrod@3EX")))).isEmpty();
    assertThat(sample.state("pushrod@3EX")).isEqualTo(PlaceState.WASHING);
    assertThat(model.scan(sample.read(sample.tag("pushrod@5EX")))).contains(Cue.RIGHT);
    assertThat(sample.state("pushrod@5EX")).isEqualTo(PlaceState.WASHING);
  }

  /** What sits in its place is no less put back because something stands against it. */
  @Test
  void aPartThatIsFittedCountsWhateverStandsAgainstIt() {
    model.show(PartKind.PUSHROD);
    Part pushrod = sample.part("pushrod@3EX");
    new Fitting(sample.job).fit(pushrod, sample.spot("3EX"), false);
    Subject looked = Subject.ofPart(pushrod.item());
    new Inspecting(sample.job).answer(looked, "pushrod-roll", Look.FAIL, "");
    assertThat(sample.state("pushrod@3EX")).isEqualTo(PlaceState.FITTED_BUT);
    assertThat(model.aside()).isEqualTo("1 fitted, not cleared");
    assertThat(BenchTitle.brief(model))
        .as("large letters leave the words beside the title no room")
        .isEqualTo(new BenchTitle("1 fitted, not cleared", "Bench: 16 pushrods"));
  }

  @Test
  void aPartInTheEngineCannotBeWashed() {
    SampleJob whole = SampleJob.whole();
    BenchMapModel map = new BenchMapModel(whole.job, nanos::get);
    map.wash(4);
    assertThat(map.scan(whole.read(whole.tag("pushrod@3EX")))).contains(Cue.ASK);
    assertThat(map.said()).contains("in the engine");
  }

  @Test
  void everyPlaceIsCountedOnceByItsState() {
    model.wash(4);
    model.scan(sample.read(sample.tag("pushrod@3EX")));
    model.show(PartKind.PUSHROD);
    assertThat(model.lying(Holder.BASKET)).extracting(Place::key).containsExactly("pushrod@3EX");
    assertThat(model.lying(Holder.BENCH))
        .hasSize(15)
        .doesNotContain(model.lying(Holder.BASKET).get(0));
  }

  /** With the counts of the holders they are all the places of the kind. */
  @Test
  void whatNoHolderCountsIsSaidBesideTheTitle() {
    model.show(PartKind.PUSHROD);
    assertThat(model.aside()).isEqualTo("none fitted");
    new Fitting(sample.job)
        .fitOnPurpose(sample.part("pushrod@5EX"), sample.spot("3EX"), "matched pair");
    assertThat(model.lying(Holder.BENCH)).hasSize(14);
    assertThat(model.aside()).isEqualTo("1 fitted, 1 open, !\u00a02 not mated");
    model.show(PartKind.LIFTER);
    assertThat(model.aside()).isEqualTo("none fitted, !\u00a02 not mated");
  }

  @Test
  void aTappedPlaceOpensThePartOfTheKindThatIsShown() {
    model.show(PartKind.LIFTER);
    model.tap(sample.spot("3EX"));
    assertThat(model.takeOpened()).contains(sample.part("lifter@3EX").item());
  }

  @Test
  void thePlacesOfAFitOnPurposeAreFlaggedForEveryKindThatIsMated() {
    new Fitting(sample.job)
        .fitOnPurpose(sample.part("pushrod@5EX"), sample.spot("3EX"), "matched pair");
    for (PartKind mated : List.of(PartKind.PUSHROD, PartKind.ROCKER, PartKind.LIFTER)) {
      model.show(mated);
      assertThat(model.notMated())
          .filteredOn(place -> place.kind() == mated)
          .extracting(Place::spot)
          .as(mated.word())
          .containsExactlyInAnyOrder(sample.spot("3EX"), sample.spot("5EX"));
    }
    assertThat(model.notMated()).noneMatch(place -> place.kind() == PartKind.MAIN_SHELL);
    assertThat(model.flags()).isEqualTo(6);
    assertThat(sample.state("main-shell@M1U")).isEqualTo(PlaceState.OUT);
    model.show(PartKind.PUSHROD);
    assertThat(sample.state("pushrod@5EX")).isEqualTo(PlaceState.OPEN);
  }
}
