package wherefrom.job.handling;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import wherefrom.job.puttogether.Fitting;
import wherefrom.job.tags.CodeLookup;
import wherefrom.job.tags.TagBook;
import wherefrom.parts.Part;
import wherefrom.parts.Whereabouts;
import wherefrom.rules.Verdict;
import wherefrom.ui.sample.SampleJob;

class HandlingTest {
  private final SampleJob sample = SampleJob.apart();
  private final Handling handling = new Handling(sample.job);
  private final int item = sample.part("pushrod@3EX").item();

  @Test
  void aPartGoesOffForWashingInItsBasketAndComesBack() {
    handling.offForWashing(item, 4);
    assertThat(sample.record("pushrod@3EX").where()).isEqualTo(Whereabouts.WASHING);
    assertThat(sample.record("pushrod@3EX").awayTo()).contains("basket 4");
    handling.backFromWashing(item);
    assertThat(sample.record("pushrod@3EX").where()).isEqualTo(Whereabouts.OUT);
  }

  @Test
  void aPartThatIsStillInTheEngineCannotGoOffForWashing() {
    SampleJob whole = SampleJob.whole();
    int before = whole.job.history().size();
    assertThat(new Handling(whole.job).offForWashing(1, 1))
        .isEqualTo(
            new HandlingOutcome.Refused(
                "Only a part that is out can go off for washing." + " This one is in the engine."));
    assertThat(whole.job.history()).hasSize(before);
  }

  @Test
  void aMissingPartIsFoundAgain() {
    handling.lost(item, "fell behind the bench");
    assertThat(sample.record("pushrod@3EX").note()).isEqualTo("fell behind the bench");
    handling.found(item);
    assertThat(sample.record("pushrod@3EX").where()).isEqualTo(Whereabouts.OUT);
    assertThat(handling.found(item)).isInstanceOf(HandlingOutcome.Refused.class);
  }

  @Test
  void aReplacedPartIsRetiredAndItsPlaceBelongsToTheNewOne() {
    HandlingOutcome done = handling.replace(item, "worn out");
    Part fresh = ((HandlingOutcome.Logged) done).part().part();
    assertThat(fresh.fresh()).isTrue();
    assertThat(fresh.item()).isEqualTo(75);
    assertThat(sample.part("pushrod@3EX")).isEqualTo(fresh);
    assertThat(sample.job.state().getPart(item).where()).isEqualTo(Whereabouts.RETIRED);
    assertThat(handling.replace(item, "worn out")).isInstanceOf(HandlingOutcome.Refused.class);
  }

  @Test
  void anOlderTagIsRetiredOnceTheTagIsPrintedAnew() {
    String older = sample.tag("pushrod@3EX");
    handling.reissue(item, "tag lost");
    TagBook book = new TagBook(sample.job.state(), SampleJob.NAMES);
    assertThat(book.find(older))
        .isInstanceOfSatisfying(
            CodeLookup.Refused.class,
            refused -> assertThat(refused.verdict()).isInstanceOf(Verdict.Retired.class));
    assertThat(book.find(sample.tag("pushrod@3EX"))).isInstanceOf(CodeLookup.APart.class);
  }

  @Test
  void aReasonIsWanted() {
    assertThat(handling.replace(item, " ")).isInstanceOf(HandlingOutcome.Refused.class);
    assertThat(handling.reissue(item, "")).isInstanceOf(HandlingOutcome.Refused.class);
    assertThat(handling.note(item, "  ")).isInstanceOf(HandlingOutcome.Refused.class);
  }

  @Test
  void aFittedPartCanBeTakenOutAgain() {
    new Fitting(sample.job).fit(sample.part("pushrod@3EX"), sample.spot("3EX"), false);
    handling.tookOut(item, "gasket forgotten");
    assertThat(sample.job.state().fitted()).isEmpty();
    assertThat(handling.tookOut(item, "again")).isInstanceOf(HandlingOutcome.Refused.class);
  }
}
