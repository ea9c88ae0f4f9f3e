package wherefrom.ui.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Subject;
import wherefrom.inspection.measure.Question;
import wherefrom.inspection.measure.ReadingPlan;
import wherefrom.inspection.measure.ReadingPlans;
import wherefrom.inspection.measure.Station;
import wherefrom.job.before.BeforeTeardown;
import wherefrom.job.measure.Instruments;
import wherefrom.quantity.Dimension;
import wherefrom.ui.sample.SampleJob;

class ReadingsModelTest {
  private static final Subject JOURNAL = new Subject.AFeature(Feature.MAIN_JOURNAL, "M2");
  private final SampleJob sample = SampleJob.apart();
  private ReadingsModel model = new ReadingsModel(sample.job, JOURNAL, "main-journal");

  @BeforeEach
  void listTool() {
    new Instruments(sample.job).list("MIC", Dimension.LENGTH, "0.0001", "0.0001", "0.0001");
  }

  private String station() {
    return model.station().map(Station::key).orElse("none");
  }

  @Test
  void readingsAreTakenOneAtATimeAndWorkedOutAtTheEnd() {
    assertThat(model.enter("2.6100 in")).isEmpty();
    assertThat(station()).isEqualTo("front-horizontal");
    model.enter("2.6096 in");
    assertThat(model.result().orElseThrow().judgements()).isEmpty();
    model.enter("66.293 mm");
    model.enter("2,6097 in");
    assertThat(station()).isEqualTo("none");
    assertThat(model.result().orElseThrow().isWhole()).isTrue();
    assertThat(model.result().orElseThrow().findValue("out-of-round")).isPresent();
    assertThat(MeasuredLines.of(sample.job, model.result().orElseThrow()))
        .contains(
            new MeasuredLines.Line(
                "What ± means",
                "The figure after ± is the standard uncertainty. A limit must be 1.65 times that"
                    + " away (ISO 14253-1)."));
  }

  @Test
  void theTitleNamesTheCylinderAndSaysWhatIsReadOnce() {
    Subject eighth = BeforeTeardown.cylinder(8);
    assertThat(new ReadingsModel(sample.job, eighth, "compression-dry").title())
        .isEqualTo("Cylinder 8: compression, dry");
    assertThat(model.title()).isEqualTo("Main journal 2");
  }

  private String largest(Subject subject, String plan) {
    ReadingsModel asked = new ReadingsModel(sample.job, subject, plan);
    return asked.titleAt(asked.station().orElseThrow());
  }

  @Test
  void beforeTheSpotStandsWhoseItIsAndWhatIsMeasured() {
    Subject valve = new Subject.AFeature(Feature.VALVE_TIP, "3EX");
    Subject running = new Subject.AFeature(Feature.RUNNING, "");
    assertThat(largest(JOURNAL, "main-journal"))
        .isEqualTo("Main journal 2: front end, one direction");
    assertThat(largest(BeforeTeardown.cylinder(8), "compression-dry"))
        .isEqualTo("Cylinder 8: dry, highest reading of the gauge");
    assertThat(largest(valve, "piston-valve"))
        .isEqualTo("3 EX piston to valve: 15° BTDC of overlap");
    assertThat(largest(running, "oil-hot-idle"))
        .isEqualTo("Oil pressure, hot, idle: engine hot, at idle");
  }

  @Test
  void aSpotThatHasNoRoomGivesWay() {
    Subject seat = new Subject.AFeature(Feature.VALVE_SEAT, "3EX");
    assertThat(largest(seat, "seat-runout")).isEqualTo("3 EX valve seat runout");
  }

  private String brief(Subject subject, String plan) {
    return ReadingTitle.brief(sample.job.state(), subject, ReadingPlans.find(plan).orElseThrow());
  }

  @Test
  void whatIsMeasuredIsToldInFewWords() {
    Subject head = new Subject.AFeature(Feature.HEAD, "left");
    assertThat(brief(head, "head-flatness")).isEqualTo("Left head flatness");
    assertThat(brief(BeforeTeardown.cylinder(8), "leak-down")).isEqualTo("Cylinder 8: leak-down");
  }

  @Test
  void whatIsNotMeasuredIsNamed() {
    MeasureModel all = new MeasureModel(sample.job);
    ReadingPlan dry = ReadingPlans.find("compression-dry").orElseThrow();
    assertThat(CompareScreen.notMeasured(sample.job.state(), List.of(BeforeTeardown.cylinder(8))))
        .isEqualTo("1 not measured: cylinder 8.");
    assertThat(CompareScreen.notMeasured(sample.job.state(), all.left(dry)))
        .isEqualTo("8 more are not measured.");
  }

  @Test
  void whatWasReadIsThereAfterLeavingHalfWay() {
    model.enter("2.6100 in");
    model.enter("2.6096 in");
    model = new ReadingsModel(sample.job, JOURNAL, "main-journal");
    assertThat(model.count()).isEqualTo("Reading 3 of 4");
    assertThat(model.tool()).isPresent();
  }

  @Test
  void eachReadingCanBeTakenBack() {
    model.enter("2.6100 in");
    model.enter("2.6096 in");
    sample.job.undo();
    assertThat(station()).isEqualTo("front-horizontal");
  }

  @Test
  void aRepeatIsKeptBesideTheFirst() {
    model.enter("2.6100 in");
    model.again(model.lastRead().orElseThrow());
    model.enter("2.6101 in");
    assertThat(model.read(model.plan().stations().get(0))).isEqualTo("2.6100 in; 2.6101 in");
    assertThat(station()).isEqualTo("front-horizontal");
  }

  @Test
  void aSlipOfTheUnitIsAskedAndCanBeTakenAsMeant() {
    assertThat(model.enter("66.29 in")).isEmpty();
    assertThat(model.questions())
        .extracting(Question::kind)
        .containsExactly(Question.Kind.UNIT_SLIP);
    assertThat(model.result()).isEmpty();
    assertThat(model.meant()).contains("66.29 mm");
    assertThat(model.takeMeant()).isEmpty();
    assertThat(model.read(model.plan().stations().get(0))).isEqualTo("66.29 mm");
    assertThat(model.result().orElseThrow().confirmed()).isFalse();
  }

  @Test
  void anOddReadingIsKeptOnlyWhenConfirmedAndIsNotAskedAgain() {
    model.enter("9.0 in");
    assertThat(model.questions()).isNotEmpty();
    model.drop();
    assertThat(station()).isEqualTo("front-vertical");
    model.enter("9.0 in");
    model.confirm();
    assertThat(station()).isEqualTo("front-horizontal");
    assertThat(model.enter("2.6100 in")).isEmpty();
    assertThat(model.questions()).isEmpty();
    assertThat(model.result().orElseThrow().confirmed()).isTrue();
  }

  @Test
  void aQuestionedReadingIsKeptWhereItWasAsked() {
    model.enter("2.6100 in");
    model.enter("9.0 in");
    assertThat(model.undoes()).contains("the question");
    sample.job.undo();
    model.confirm();
    assertThat(model.read(model.plan().findStation("front-vertical").orElseThrow())).isEmpty();
    assertThat(model.read(model.plan().findStation("front-horizontal").orElseThrow()))
        .isEqualTo("9.0 in");
    assertThat(model.undoes()).isEmpty();
  }

  @Test
  void measuringAnewDoesNotMixOldAndNew() {
    for (int at = 0; at < 4; at++) {
      model.enter("2.6100 in");
    }
    model.startAnew();
    assertThat(model.count()).isEqualTo("Reading 1 of 4");
    model.enter("2.6000 in");
    assertThat(model.count()).isEqualTo("Reading 2 of 4");
    sample.job.undo();
    assertThat(model.result().orElseThrow().isWhole()).isTrue();
  }

  @Test
  void whatCannotBeReadIsToldAndNothingIsLost() {
    model.enter("2.6100 in");
    assertThat(model.enter("2.6.1 in")).isNotEmpty();
    assertThat(model.count()).isEqualTo("Reading 2 of 4");
  }
}
