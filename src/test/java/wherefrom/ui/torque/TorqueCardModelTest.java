package wherefrom.ui.torque;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import wherefrom.job.torque.CardTyped;
import wherefrom.job.torque.TorqueBook;
import wherefrom.parts.Action;
import wherefrom.rules.Cue;
import wherefrom.ui.sample.SampleJob;
import wherefrom.workings.torque.BoltPattern;

class TorqueCardModelTest {
  private final SampleJob sample = SampleJob.apart();
  private final AtomicLong nanos = new AtomicLong();
  private final TorqueCardModel model = begin();

  private TorqueCardModel begin() {
    new TorqueBook(sample.job)
        .begin(
            new CardTyped(
                "main caps",
                1,
                3,
                BoltPattern.ofRectangle(1, 3).positions(),
                "",
                "oiled",
                List.of("20 N·m", "40 N·m"),
                "manual, p. 3"));
    return again();
  }

  private TorqueCardModel again() {
    return new TorqueCardModel(sample.job, 1, nanos::get);
  }

  private void scan(Action action) {
    nanos.addAndGet(2 * TorqueCardModel.TWICE_NANOS);
    model.scan(sample.read(sample.action(action)));
  }

  private String line() {
    return model.answer(false).lines().get(0);
  }

  @Test
  void theNextCardTicksTheBoltInTurnAndASecondReadAtOnceDoesNot() {
    model.person("A. B.");
    scan(Action.NEXT);
    assertThat(line()).isEqualTo("Bolt 2 to 20 N·m");
    nanos.addAndGet(TorqueCardModel.TWICE_NANOS - 1);
    model.scan(sample.read(sample.action(Action.NEXT)));
    assertThat(line()).isEqualTo("Bolt 2 to 20 N·m");
    assertThat(model.answer(false).small()).contains("twice");
    scan(Action.NEXT);
    assertThat(line()).isEqualTo("Bolt 3 to 20 N·m");
    scan(Action.UNDO);
    assertThat(line()).isEqualTo("Bolt 2 to 20 N·m");
    assertThat(model.answer(false).small()).contains("Undone: bolt 2");
  }

  @Test
  void aWrongBoltIsQuestionedAndNextDoesNotAnswerForThePerson() {
    model.person("A. B.");
    assertThat(model.tick(3)).contains(Cue.ASK);
    assertThat(model.answer(false).lines().get(0)).isEqualTo("Bolt 1 is next, not\u00a03");
    assertThat(model.face(3)).contains(new BoltFace("3", BoltFace.Look.ASKED));
    scan(Action.NEXT);
    assertThat(model.card().ticks()).isEmpty();
    scan(Action.UNDO);
    assertThat(model.question()).isEmpty();
    model.tick(3);
    scan(Action.YES);
    assertThat(model.card().ticks()).hasSize(1);
    assertThat(model.card().ticks().get(0).outOfTurn()).isTrue();
    scan(Action.YES);
    assertThat(model.card().ticks()).as("YES alone ticks nothing").hasSize(1);
  }

  @Test
  void theNameIsAskedForAgainForTheCheckAndComesBackWithTheCard() {
    assertThat(model.wantsPerson()).isTrue();
    model.person("A. B.");
    for (int tick = 0; tick < 5; tick++) {
      scan(Action.NEXT);
    }
    assertThat(again().person()).as("after a restart in the same round").isEqualTo("A. B.");
    scan(Action.NEXT);
    assertThat(model.isCheck()).isTrue();
    assertThat(model.wantsPerson()).isTrue();
    assertThat(again().person()).isEmpty();
    model.person("a. b.");
    assertThat(model.done()).contains(Cue.ASK);
    assertThat(model.answer(false).small()).contains("another person must check");
    model.person("C. D.");
    model.done();
    assertThat(again().person()).isEqualTo("C. D.");
    model.undo();
    model.undo();
    assertThat(model.isCheck()).isFalse();
    assertThat(model.person()).isEqualTo("A. B.");
  }

  @Test
  void everyBoltIsDrawnByWhatTheStageHasDoneToIt() {
    model.person("A. B.");
    scan(Action.NEXT);
    // The middle of three is the first: positions 2, 1 and 3 from the left are bolts 1, 2, 3.
    assertThat(model.face(2)).contains(new BoltFace("1", BoltFace.Look.DONE));
    assertThat(model.face(1)).contains(new BoltFace("2", BoltFace.Look.TURN));
    assertThat(model.face(3)).contains(new BoltFace("3", BoltFace.Look.OPEN));
    scan(Action.NEXT);
    scan(Action.NEXT);
    assertThat(model.face(1)).contains(new BoltFace("2", BoltFace.Look.OPEN));
    assertThat(model.boltAt(1)).contains(2);
  }

  @Test
  void aStageSaysWhatToDoWithTheBoltAndWhereItIsDoneWhoChecked() {
    new TorqueBook(sample.job)
        .begin(
            new CardTyped(
                "pan bolts",
                1,
                1,
                BoltPattern.ofRectangle(1, 1).positions(),
                "",
                "dry",
                List.of("10 N·m", "loosen 90 deg", "12 N·m", "90 deg"),
                "manual, p. 3"));
    TorqueCardModel one = new TorqueCardModel(sample.job, 2, nanos::get);
    one.person("A. B.");
    assertThat(one.answer(false).headline()).isEqualTo("Stage 1 of 4, threads dry");
    assertThat(one.answer(false).small()).contains("service information decides");
    assertThat(one.answer(true).small()).isEqualTo("0 of 1 done.");
    one.done();
    assertThat(one.answer(true).lines())
        .containsExactly("Loosen bolt 1 by 90 deg, no torque wrench");
    one.done();
    assertThat(one.answer(true).lines()).containsExactly("Bolt 1 to 12 N·m");
    one.done();
    assertThat(one.answer(true).lines()).containsExactly("Turn bolt 1 on by 90 deg");
    assertThat(one.answer(true).small()).contains("paint mark");
    one.done();
    assertThat(one.answer(true).small()).isEqualTo("0 of 1 done. By its paint mark, no wrench.");
    assertThat(one.answer(false).small()).contains("Put no wrench on it.");
    one.person("C. D.");
    one.done();
    assertThat(one.answer(false).small()).isEqualTo("1 bolt in 4 stages, checked by C.\u00a0D.");
  }

  @Test
  void whatComesBeforeTheFirstBoltIsNotSaidAtTheSecond() {
    new TorqueBook(sample.job)
        .begin(
            new CardTyped(
                "rod caps",
                1,
                2,
                BoltPattern.ofRectangle(1, 2).positions(),
                "",
                "oiled",
                List.of("20 N·m", "90 deg"),
                "manual, p. 3"));
    TorqueCardModel two = new TorqueCardModel(sample.job, 2, nanos::get);
    two.person("A. B.");
    two.done();
    two.done();
    assertThat(two.answer(false).small()).contains("First a paint mark on every bolt.");
    two.done();
    assertThat(two.answer(false).small()).startsWith("1 of 2 done.").doesNotContain("paint");
  }

  @Test
  void aTagOfAPartIsNoTick() {
    model.person("A. B.");
    assertThat(model.scan(sample.read(sample.tag("pushrod@3EX")))).isEmpty();
    assertThat(model.takeRefused()).isPresent();
    assertThat(model.takeRefused()).isEmpty();
    assertThat(model.card().ticks()).isEmpty();
    assertThat(model.undoes()).isEqualTo("no bolt is ticked");
  }
}
