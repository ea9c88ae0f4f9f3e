package wherefrom.ui.inspect;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.ui.sample.SampleJob;

class LookCardModelTest {
  private final SampleJob sample = SampleJob.apart();
  private final Subject first = Subject.ofPart(sample.part("pushrod@3EX").item());
  private final Subject second = Subject.ofPart(sample.part("pushrod@5EX").item());
  private final LookCardModel model = new LookCardModel(sample.job, first, List.of(first, second));

  @Test
  void answeringGoesFromCardToCardAndThenToTheNextOfTheRound() {
    for (int card = 0; card < 3; card++) {
      assertThat(model.title()).isEqualTo("3 EX pushrod");
      model.answer(Look.PASS);
      assertThat(model.next()).isTrue();
    }
    assertThat(model.title()).isEqualTo("5 EX pushrod");
    assertThat(model.count()).isEqualTo("Test 1 of 3");
  }

  @Test
  void aPartOpensAtItsFirstOpenCard() {
    model.answer(Look.PASS);
    model.turnTo(first);
    assertThat(model.card().check().key()).isEqualTo("pushrod-ends");
  }

  @Test
  void aFailedAnswerSaysWhatFollowsWithItsRuleAndSource() {
    assertThat(model.answer(Look.FAIL)).isEmpty();
    assertThat(model.followed())
        .extracting(rule -> rule.consequence().ruleWords())
        .contains("rule 25");
    model.answer(Look.PASS);
    assertThat(model.followed()).isEmpty();
  }

  @Test
  void goingOnToAnotherPartNamesIt() {
    for (int card = 0; card < 2; card++) {
      model.answer(Look.PASS);
      assertThat(model.goOn()).isTrue();
      assertThat(model.said()).startsWith("Kept: pass. ").doesNotContain("another");
    }
    model.answer(Look.PASS);
    assertThat(model.goOn()).isTrue();
    assertThat(model.said()).isEqualTo("Kept: pass. Now look at another: 5 EX pushrod.");
  }

  @Test
  void takingTheAnswerBackOpensTheCardAgain() {
    model.answer(Look.PASS);
    sample.job.undo();
    assertThat(model.card().look()).isEqualTo(Look.NOT_LOOKED);
  }

  @Test
  void aFindingGivesWayToABetterAnswerOnlyWhenAskedFor() {
    assertThat(model.question(Look.PASS)).isEmpty();
    model.answer(Look.FAIL);
    assertThat(model.question(Look.PASS)).contains("Test 1 is FAIL. Change it to PASS?");
    assertThat(model.question(Look.SUSPECT)).contains("Test 1 is FAIL. Change it to SUSPECT?");
    assertThat(model.question(Look.NOT_LOOKED)).isPresent();
    assertThat(model.question(Look.FAIL)).isEmpty();
    model.answer(Look.SUSPECT);
    assertThat(model.question(Look.PASS)).isPresent();
    assertThat(model.question(Look.FAIL)).isEmpty();
    model.answer(Look.PASS);
    assertThat(model.question(Look.NOT_LOOKED)).contains("Test 1 is PASS. Undo that answer?");
  }

  @Test
  void passOnceMoreStaysAPassAndADoubtOnceMoreIsWrittenDown() {
    model.answer(Look.PASS);
    int before = sample.job.history().size();
    assertThat(model.answer(Look.PASS)).isEmpty();
    assertThat(model.card().look()).isEqualTo(Look.PASS);
    assertThat(sample.job.history()).hasSize(before);
    model.answer(Look.SUSPECT);
    model.answer(Look.SUSPECT);
    assertThat(sample.job.history()).hasSize(before + 2);
  }

  @Test
  void aNoteLeavesTheAnswerAsItIs() {
    model.answer(Look.SUSPECT);
    model.note("hops once a turn");
    assertThat(model.card().look()).isEqualTo(Look.SUSPECT);
    assertThat(model.card().note()).isEqualTo("hops once a turn");
  }

  @Test
  void behindTheLastOfTheRoundThereIsNone() {
    model.turnTo(second);
    for (int card = 0; card < 3; card++) {
      model.answer(Look.PASS);
      model.next();
    }
    for (int card = 0; card < 2; card++) {
      model.answer(Look.PASS);
      model.next();
    }
    model.answer(Look.PASS);
    assertThat(model.next()).isFalse();
  }
}
