package wherefrom.job;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import wherefrom.job.entry.NoteAdded;
import wherefrom.parts.Action;
import wherefrom.parts.TagCode;
import wherefrom.parts.TagType;
import wherefrom.rules.Verdict;
import wherefrom.ui.sample.SampleJob;

class PutTogetherStopsTest {
  private final SampleJob sample = SampleJob.apart();
  private final PutTogether together = new PutTogether(sample.job, SampleJob.NAMES);

  private Verdict verdict(Step step) {
    assertThat(step).isInstanceOf(Step.Judged.class);
    return ((Step.Judged) step).verdict();
  }

  @Test
  void aTagOfAnotherEngineStopsAndNoPlaceScansThrough() {
    String other = new TagCode(TagType.PART, SampleJob.OTHER_ENGINE, 7, 1).digits();
    assertThat(verdict(together.scan(other)).word()).isEqualTo("other engine");
    assertThat(verdict(together.scan(sample.card("3EX"))).word()).isEqualTo("other engine");
    assertThat(together.stop()).isPresent();
    assertThat(verdict(together.scan(sample.tag("pushrod@3EX"))).word()).isEqualTo("right place");
    assertThat(together.stop()).isEmpty();
    assertThat(sample.job.state().standingStop()).isEmpty();
  }

  @Test
  void aStopIsTakenBackEvenWhenANoteWasWrittenSince() {
    together.scan(sample.tag("pushrod@3EX"));
    together.scan(sample.card("5EX"));
    sample.job.record(new NoteAdded(3, "wipe"));
    assertThat(together.act(Action.UNDO)).isInstanceOf(Step.TookBack.class);
    assertThat(sample.job.state().standingStop()).isEmpty();
    assertThat(sample.job.state().getPart(3).remarks()).hasSize(1);
  }

  @Test
  void aFilledPlaceIsFreedWhenItsPartIsTakenOut() {
    together.scan(sample.tag("pushrod@5EX"));
    together.scan(sample.card("3EX"));
    together.fitOnPurpose("matched pair");
    together.scan(sample.tag("pushrod@3EX"));
    assertThat(verdict(together.scan(sample.card("3EX"))).word()).isEqualTo("place taken");
    assertThat(verdict(together.tookOut()).word()).isEqualTo("right place");
    assertThat(sample.record("pushrod@5EX").where().state()).isEqualTo("out");
  }

  @Test
  void aPartThatMovedIsJudgedAnewWhereItIs() {
    together.scan(sample.tag("pushrod@5EX"));
    together.scan(sample.card("3EX"));
    together.fitOnPurpose("matched pair");
    together.scan(sample.tag("pushrod@5EX"));
    assertThat(verdict(together.scan(sample.card("5EX"))).word()).isEqualTo("already fitted");
    assertThat(verdict(together.tookOut()).word()).isEqualTo("right place");
    assertThat(sample.job.state().fitted()).hasSize(1);
  }

  @Test
  void aStopEndsWhenTheRightPartIsFoundToSitThereAlready() {
    together.scan(sample.tag("pushrod@3EX"));
    together.scan(sample.card("3EX"));
    together.scan(sample.tag("pushrod@5EX"));
    together.scan(sample.card("3EX"));
    assertThat(verdict(together.scan(sample.tag("pushrod@3EX"))).word())
        .isEqualTo("already fitted");
    assertThat(together.stop()).isEmpty();
    assertThat(sample.job.state().standingStop()).isEmpty();
    assertThat(sample.job.state().fitted()).hasSize(1);
  }

  @Test
  void nothingIsTakenOutWhereNothingStandsInTheWay() {
    assertThat(together.tookOut()).isInstanceOf(Step.Said.class);
  }
}
