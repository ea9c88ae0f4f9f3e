package wherefrom.ui.shop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wherefrom.inspection.Subject;
import wherefrom.inspection.match.PartMatch;
import wherefrom.inspection.measure.ReadingPlan;
import wherefrom.job.entry.OffForWashing;
import wherefrom.job.measure.Instruments;
import wherefrom.job.measure.Measuring;
import wherefrom.parts.PartKind;
import wherefrom.quantity.Dimension;
import wherefrom.ui.sample.SampleJob;

/** Parts without tags, told by what was measured on them: what is agreed stands in the logbook. */
class RetagModelTest {
  private static final String PLAN = "pushrod-length";

  private final SampleJob sample = SampleJob.apart();
  private final LostTags typed = new LostTags();
  private RetagModel model;

  @BeforeEach
  void measured() {
    new Instruments(sample.job).list("caliper", Dimension.LENGTH, "0.0005", "0.001", "0.0005");
    Map.of("1IN", "7.9000", "1EX", "7.9200").forEach(this::away);
    model = new RetagModel(sample.job, typed);
    model.choose(PartKind.PUSHROD);
    model.use("pushrod-runout");
    model.use(PLAN);
    assertThat(model.used()).extracting(ReadingPlan::key).containsExactly(PLAN);
    model.read("1", PLAN, "7.9200");
    model.read("2", PLAN, "7.9000");
    assertThat(model.match()).isTrue();
  }

  private void away(String spot, String length) {
    int item = sample.part("pushrod@" + spot).item();
    measure(item, PLAN, "length", length);
    measure(item, "pushrod-runout", "middle", "0.0010");
    sample.job.record(new OffForWashing(item, 1));
  }

  private void measure(int item, String plan, String station, String size) {
    Map<String, List<String>> read = Map.of(station, List.of(size));
    new Measuring(sample.job)
        .take(new Measuring.Entry(Subject.ofPart(item), plan, "caliper", read, true, ""));
  }

  private PartMatch match(String mark) {
    return model.matches().stream().filter(one -> one.found().equals(mark)).findFirst().get();
  }

  @Test
  void whatIsTakenBackIsAcceptedNoMore() {
    model.accept(match("1"), match("1").best());
    assertThat(model.accepted("1")).contains(sample.part("pushrod@1EX"));
    assertThat(model.acceptedCount()).isEqualTo(1);
    sample.job.undo();
    assertThat(model.accepted("1")).isEmpty();
    assertThat(model.acceptedCount()).isZero();
  }

  @Test
  void twoPiecesAreNotAcceptedAsOnePart() {
    String one = match("1").best();
    model.accept(match("1"), one);
    assertThat(model.accept(match("2"), one))
        .isEqualTo("It was accepted as number 1 already. Undo that first.");
    assertThat(model.accepted("2")).isEmpty();
  }

  @Test
  void whatWasTypedOfAKindOutlivesBackAndALookAtAnother() {
    model.choose(PartKind.ROCKER);
    assertThat(model.found()).isEmpty();
    RetagModel anew = new RetagModel(sample.job, typed);
    anew.choose(PartKind.PUSHROD);
    assertThat(anew.found()).hasSize(2);
    assertThat(anew.match()).isTrue();
  }

  /** A second reading of all: what was typed stays, and the number that lacks it comes first. */
  @Test
  void anotherReadingIsAskedForAndDropsNoFigure() {
    model.use("pushrod-runout");
    assertThat(model.found().get(0).readings()).contains("7.9200 in", "not read");
    assertThat(model.nextMark()).isEqualTo("1");
    assertThat(model.match()).isFalse();
    model.use("pushrod-runout");
    assertThat(model.match()).isTrue();
  }

  @Test
  void aGroupThatIsToldApartMakesRoomForTheNext() {
    model.accept(match("1"), match("1").best());
    assertThat(new RetagModel(sample.job, typed).found()).hasSize(2);
    model.accept(match("2"), match("2").best());
    assertThat(new RetagModel(sample.job, typed).found()).isEmpty();
  }
}
