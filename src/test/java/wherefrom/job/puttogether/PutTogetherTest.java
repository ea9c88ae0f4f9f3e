package wherefrom.job.puttogether;

import static org.assertj.core.api.Assertions.assertThat;
import static wherefrom.job.Benches.card;
import static wherefrom.job.Benches.part;
import static wherefrom.job.Benches.place;
import static wherefrom.job.Benches.spot;
import static wherefrom.job.Benches.tag;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import wherefrom.job.Benches;
import wherefrom.job.EngineJob;
import wherefrom.job.OpenJob;
import wherefrom.job.Undone;
import wherefrom.job.entry.PartReplaced;
import wherefrom.job.entry.PartSort;
import wherefrom.job.entry.TagReissued;
import wherefrom.job.tags.CodeLookup;
import wherefrom.job.tags.JobNames;
import wherefrom.job.tags.TagBook;
import wherefrom.parts.Action;
import wherefrom.parts.CheckDigits;
import wherefrom.parts.TagCode;
import wherefrom.parts.TagType;

class PutTogetherTest {
  private final OpenJob job = Benches.apart();
  private final JobNames names =
      engine -> engine == 42 ? Optional.of("Blue tractor") : Optional.empty();
  private final PutTogether together = new PutTogether(job);

  private CodeLookup read(String digits) {
    return new TagBook(job.state(), names).find(digits);
  }

  private String word(FitOutcome step) {
    assertThat(step).isInstanceOf(FitOutcome.Judged.class);
    return ((FitOutcome.Judged) step).verdict().word();
  }

  @Test
  void partAndPlaceCardInEitherOrder() {
    assertThat(together.scan(read(tag(job, "pushrod@3EX"))))
        .isInstanceOf(FitOutcome.WaitingForSpot.class);
    assertThat(word(together.scan(read(card(job, "3EX"))))).isEqualTo("right place");
    assertThat(together.scan(read(card(job, "5EX")))).isInstanceOf(FitOutcome.WaitingForPart.class);
    assertThat(word(together.scan(read(tag(job, "lifter@5EX"))))).isEqualTo("right place");
  }

  @Test
  void aSecondPartReplacesTheHalfThatWaits() {
    together.scan(read(tag(job, "pushrod@3EX")));
    assertThat(together.scan(read(tag(job, "pushrod@5EX"))))
        .isInstanceOfSatisfying(
            FitOutcome.WaitingForSpot.class, waiting -> assertThat(waiting.replaced()).isTrue());
    assertThat(word(together.scan(read(card(job, "5EX"))))).isEqualTo("right place");
  }

  @Test
  void aStopStandsUntilTheRightPartIsScanned() {
    together.scan(read(tag(job, "pushrod@3EX")));
    assertThat(word(together.scan(read(card(job, "5EX"))))).isEqualTo("wrong place");
    assertThat(word(together.scan(read(tag(job, "pushrod@1IN"))))).isEqualTo("wrong place");
    assertThat(together.stop()).isPresent();
    assertThat(word(together.scan(read(tag(job, "pushrod@5EX"))))).isEqualTo("right place");
    assertThat(together.stop()).isEmpty();
    assertThat(job.state().standingStop()).isEmpty();
  }

  @Test
  void aStopIsSolvedByGoingToThePartsOwnPlace() {
    together.scan(read(tag(job, "pushrod@3EX")));
    together.scan(read(card(job, "5EX")));
    assertThat(word(together.scan(read(card(job, "3EX"))))).isEqualTo("right place");
  }

  @Test
  void aStopStandsAfterTheProgramIsStartedAgain() {
    together.scan(read(tag(job, "pushrod@3EX")));
    together.scan(read(card(job, "5EX")));
    PutTogether again = new PutTogether(job);
    assertThat(again.stop()).isPresent();
    assertThat(again.scan(read(tag(job, "pushrod@5EX"))))
        .isInstanceOf(FitOutcome.WaitingForSpot.class);
    assertThat(word(again.scan(read(card(job, "5EX"))))).isEqualTo("right place");
  }

  @Test
  void undoTakesTheStoppedScanBackThenTheFitBefore() {
    together.scan(read(tag(job, "pushrod@1IN")));
    together.scan(read(card(job, "1IN")));
    together.scan(read(tag(job, "pushrod@3EX")));
    together.scan(read(card(job, "5EX")));
    together.scan(read(Action.UNDO.code().digits()));
    assertThat(together.stop()).isEmpty();
    assertThat(job.state().standingStop()).isEmpty();
    assertThat(job.state().fitted()).hasSize(1);
    assertThat(together.isHalf()).as("the part is in the hand again").isTrue();
    together.scan(read(Action.UNDO.code().digits()));
    together.scan(read(Action.UNDO.code().digits()));
    assertThat(job.state().fitted()).isEmpty();
  }

  @Test
  void takingBackGoesOnToTheFirstStepAndErasesNothing() {
    int before = job.history().size();
    int steps = 0;
    while (job.undo() instanceof Undone.TookBack) {
      steps++;
    }
    assertThat(steps).isEqualTo(74);
    assertThat(job.history()).hasSize(before + 74);
    assertThat(job.state().parts()).allSatisfy(p -> assertThat(p.where().state()).isEqualTo("in"));
  }

  @Test
  void noCardChoosesAReasonOrFitsOnPurpose() {
    together.scan(read(tag(job, "pushrod@3EX")));
    together.scan(read(card(job, "5EX")));
    assertThat(together.scan(read(Action.YES.code().digits())))
        .isInstanceOfSatisfying(
            FitOutcome.Said.class,
            said -> assertThat(said.sentence()).contains("Nothing is fitted."));
    assertThat(job.state().fitted()).isEmpty();
    together.scan(read(Action.NEXT.code().digits()));
    assertThat(together.reason()).isEmpty();
    together.chooseReason("matched pair");
    together.scan(read(Action.YES.code().digits()));
    assertThat(job.state().fitted()).isEmpty();
    together.fitOnPurpose("matched pair");
    assertThat(job.state().onPurpose())
        .singleElement()
        .satisfies(fitted -> assertThat(fitted.onPurpose()).isEqualTo("matched pair"));
  }

  @Test
  void followingTheListTakesTheScannedPartForTheNamedPlace() {
    together.choose(FitMode.FOLLOW_THE_LIST);
    assertThat(together.target()).contains(place("main-shell@M1U"));
    assertThat(word(together.scan(read(tag(job, "main-shell@M1U"))))).isEqualTo("right place");
    assertThat(together.target()).contains(place("main-shell@M1L"));
    assertThat(word(together.scan(read(tag(job, "main-shell@M1L"))))).isEqualTo("right place");
    assertThat(word(together.scan(read(tag(job, "main-shell@M3U"))))).isEqualTo("wrong place");
  }

  @Test
  void skippingLeavesAPlaceForLater() {
    together.choose(FitMode.FOLLOW_THE_LIST);
    together.scan(read(Action.SKIP.code().digits()));
    assertThat(together.target()).contains(place("main-shell@M1L"));
    assertThat(new ToFit(job).places()).hasSize(74);
  }

  @Test
  void askingWhereAPartGoesWritesNothing() {
    together.choose(FitMode.WHERE_DOES_THIS_GO);
    int before = job.history().size();
    assertThat(together.scan(read(tag(job, "lifter@7IN"))))
        .isInstanceOfSatisfying(
            FitOutcome.Shown.class,
            shown -> assertThat(shown.sentence()).contains("cylinder 7, intake, lifter"));
    together.scan(read("1234123412341234"));
    together.scan(read(card(job, "3EX")));
    assertThat(job.history()).hasSize(before);
  }

  @Test
  void aTurnedPushrodIsStoppedAfterwards() {
    together.scan(read(tag(job, "pushrod@3EX")));
    together.scan(read(card(job, "3EX")));
    assertThat(word(together.turned())).isEqualTo("wrong end");
    assertThat(job.state().fitted()).isEmpty();
    assertThat(word(together.scan(read(tag(job, "pushrod@3EX"))))).isEqualTo("right place");
  }

  @Test
  void codesThatStandForNothingHereAreAnswered() {
    TagCode other = new TagCode(TagType.PART, 42, 3, 1);
    assertThat(word(together.scan(read(other.digits())))).isEqualTo("wrong engine");
    assertThat(((FitOutcome.Judged) together.last()).verdict().sentence()).contains("Blue tractor");
    TagCode unknown = new TagCode(TagType.PART, Benches.ENGINE, 999, 1);
    assertThat(word(together.scan(read(unknown.digits())))).isEqualTo("not one of ours");
    assertThat(word(together.scan(read("https://example.org")))).isEqualTo("not one of ours");
    String good = tag(job, "pushrod@3EX");
    char wrong = good.charAt(9) == '5' ? '6' : '5';
    assertThat(word(together.scan(read(good.substring(0, 9) + wrong + good.substring(10)))))
        .isEqualTo("digits do not agree");
  }

  @Test
  void anOlderIssueAndAReplacedPartAreRetired() {
    String old = tag(job, "pushrod@3EX");
    job.record(new TagReissued(part(job, "pushrod@3EX").item(), 2, "lost"));
    assertThat(word(together.scan(read(old)))).isEqualTo("retired");
    String replaced = tag(job, "lifter@3EX");
    job.record(
        new PartReplaced(
            part(job, "lifter@3EX").item(),
            job.nextItem(),
            "worn",
            Optional.empty(),
            PartSort.SAME));
    together.scan(read(replaced));
    assertThat(word(together.scan(read(card(job, "3EX"))))).isEqualTo("retired");
  }

  @Test
  void theTypedCodeServesForEveryPart() {
    TagBook book = new TagBook(job.state(), names);
    for (TagCode code : book.issued().stream().filter(it -> it.type() == TagType.PART).toList()) {
      assertThat(book.find(code.typed())).as(code.toString()).isEqualTo(book.find(code));
    }
    String typed = book.of(part(job, "pushrod@3EX")).typed().replace(" ", "");
    int check = Integer.parseInt(typed.substring(4));
    assertThat(book.find(typed.substring(0, 4) + String.format("%02d", check % 97 + 1)))
        .isNotEqualTo(book.find(typed));
    assertThat(CheckDigits.agree(book.of(spot("3EX")).digits())).isTrue();
  }

  @Test
  void aSectionClosesOnlyWhenEveryPlaceIsFilledOrExcused() {
    ToFit missing = new ToFit(job);
    var mains = wherefrom.engine.Section.MAINS;
    assertThat(missing.finish(mains)).isFalse();
    missing
        .places(mains)
        .subList(1, 10)
        .forEach(
            p -> new Fitting(job).fit(job.state().findOwner(p).orElseThrow(), p.spot(), false));
    assertThat(missing.places(mains)).hasSize(1);
    missing.leave(missing.places(mains).get(0), "new shell on order");
    assertThat(missing.finish(mains)).isTrue();
    assertThat(job.state().closedSections()).containsExactly("mains");
  }

  @Test
  void replayingTheEntriesGivesTheSameState() {
    together.scan(read(tag(job, "pushrod@3EX")));
    together.scan(read(card(job, "5EX")));
    together.scan(read(Action.UNDO.code().digits()));
    together.scan(read(tag(job, "pushrod@3EX")));
    together.scan(read(card(job, "3EX")));
    EngineJob replayed = EngineJob.of(job.history());
    assertThat(replayed.fitted()).isEqualTo(job.state().fitted());
    assertThat(replayed.parts().stream().toList()).isEqualTo(job.state().parts().stream().toList());
    assertThat(replayed.standing()).isEqualTo(job.state().standing());
  }
}
