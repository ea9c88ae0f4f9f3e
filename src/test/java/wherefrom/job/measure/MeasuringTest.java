package wherefrom.job.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.inspection.compare.OddOneOut;
import wherefrom.inspection.measure.Judgement;
import wherefrom.inspection.measure.Question;
import wherefrom.job.BenchJob;
import wherefrom.job.MeasuredResult;
import wherefrom.job.change.Planning;
import wherefrom.job.decide.Deciding;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.Unit;
import wherefrom.workings.catalogue.accept.Acceptance.Ruling;
import wherefrom.workings.catalogue.accept.UncertaintyBudget;

class MeasuringTest {
  private final BenchJob bench = BenchJob.v8();
  private final Measuring measuring = new Measuring(bench.job);
  private final Instruments tools = new Instruments(bench.job);

  @BeforeEach
  void listTools() {
    // Resolution 0.0001 in, error and repeat 0.0001 in at most: own example.
    assertThat(tools.list("mic", Dimension.LENGTH, "0.0001", "0.0001", "0.0001"))
        .isInstanceOf(Instruments.Answer.Kept.class);
    tools.list("caliper", Dimension.LENGTH, "0.0005", "0.001", "0.0005");
  }

  private Measuring.Answer take(Subject subject, String plan, String tool, Object... pairs) {
    return measuring.take(entry(subject, plan, tool, false, pairs));
  }

  private Measuring.Answer takeConfirmed(
      Subject subject, String plan, String tool, Object... pairs) {
    return measuring.take(entry(subject, plan, tool, true, pairs));
  }

  private static Measuring.Entry entry(
      Subject subject, String plan, String tool, boolean confirmed, Object[] pairs) {
    Map<String, List<String>> readings = new LinkedHashMap<>();
    for (int at = 0; at < pairs.length; at += 2) {
      readings.put((String) pairs[at], List.of(((String) pairs[at + 1]).split(";")));
    }
    return new Measuring.Entry(subject, plan, tool, readings, confirmed, "");
  }

  private static MeasuredResult kept(Measuring.Answer answer) {
    assertThat(answer).isInstanceOf(Measuring.Answer.Kept.class);
    return ((Measuring.Answer.Kept) answer).result();
  }

  private static List<Question.Kind> questions(Measuring.Answer answer) {
    assertThat(answer).isInstanceOf(Measuring.Answer.Questioned.class);
    return ((Measuring.Answer.Questioned) answer).questions().stream().map(Question::kind).toList();
  }

  private static double value(MeasuredResult result, String key) {
    return result.findValue(key).orElseThrow().value();
  }

  private Subject part(String place) {
    return Subject.ofPart(bench.item(place));
  }

  private static Subject feature(Feature feature, String where) {
    return new Subject.AFeature(feature, where);
  }

  /** JCGM 100:2008, H.1: the components of an end gauge's calibration combine to 32 nm. */
  @Test
  void theGuidesEndGaugeHasAnUncertaintyOf32Nanometres() {
    UncertaintyBudget budget = UncertaintyBudget.empty();
    for (double part : new double[] {25, 5.8, 3.9, 6.7, 2.89, 16.6}) {
      budget = budget.with("part " + part, part);
    }
    assertThat(Math.round(budget.combined())).isEqualTo(32);
  }

  /** Worked by hand from the tool's card: 0.0000933 in for one micrometer reading at 2.610 in. */
  @Test
  void oneMicrometerReadingHasTheUncertaintyOfItsCard() {
    MeasuredResult result =
        kept(
            take(
                feature(Feature.MAIN_JOURNAL, "M2"),
                "main-journal",
                "mic",
                "front-vertical",
                "2.6100",
                "front-horizontal",
                "2.6100",
                "rear-vertical",
                "2.6100",
                "rear-horizontal",
                "2.6095"));
    assertThat(
            result
                .samples()
                .get(0)
                .measured(result.tool())
                .standardUncertainty()
                .orElseThrow()
                .in(Unit.INCH))
        .isCloseTo(0.0000933, within(0.0000001));
    assertThat(value(result, "out-of-round")).isCloseTo(0.0005, within(1e-9));
    assertThat(value(result, "taper")).isCloseTo(0.0005, within(1e-9));
    assertThat(result.findValue("wear")).isEmpty();
  }

  /** Levels 3.8752/3.8738/3.8712 across, 3.8730/3.8724/3.8710 along, on 3.8700 in. */
  @Test
  void aBoreIsWorkedOutFromThreeLevelsAndTwoWays() {
    tools.size("bore", "3.8700", "this engine's manual, p. 3");
    MeasuredResult result = kept(bore("B3"));
    assertThat(value(result, "out-of-round")).isCloseTo(0.0022, within(1e-9));
    assertThat(value(result, "taper")).isCloseTo(0.0040, within(1e-9));
    assertThat(value(result, "wear")).isCloseTo(0.0052, within(1e-9));
    assertThat(value(result, "clean-up")).isCloseTo(3.8804, within(1e-9));
    // Taken as worn on one side, 0.010 in over does not clean up: the next is 0.020 in.
    assertThat(value(result, "oversize")).isCloseTo(0.020, within(1e-9));
  }

  private Measuring.Answer bore(String where) {
    return take(
        feature(Feature.BORE, where),
        "bore",
        "mic",
        "thrust-top",
        "3.8752",
        "thrust-middle",
        "3.8738",
        "thrust-bottom",
        "3.8712",
        "axial-top",
        "3.8730",
        "axial-middle",
        "3.8724",
        "axial-bottom",
        "3.8710");
  }

  /** TM 5-4210-229-14&P, 6-19: lift 0.2935 in, wear limit 0.020 in, so at least 0.2735 in. */
  @Test
  void aLobesLiftIsHeelToToeLessAcross() {
    tools.limit("lobe-lift", "lift", "0.2735", "", "TM 5-4210-229-14&P, 6-19");
    Subject lobe = feature(Feature.LOBE, "3EX");
    assertThat(value(kept(lift(lobe, "1.2935")), "lift")).isCloseTo(0.2935, within(1e-9));
    assertThat(kept(lift(lobe, "1.2935")).worst()).isEqualTo(Look.PASS);
    assertThat(kept(lift(lobe, "1.2700")).worst()).isEqualTo(Look.FAIL);
    assertThat(kept(lift(lobe, "1.2735")).worst()).isEqualTo(Look.SUSPECT);
  }

  private Measuring.Answer lift(Subject lobe, String toe) {
    return take(lobe, "lobe-lift", "mic", "heel-toe", toe, "across", "1.0000");
  }

  /** TM 10-3930-653-14&P: a crank's bow is half of the dial's reading. */
  @Test
  void aCranksBowIsHalfOfTheDialsSwing() {
    assertThat(
            value(
                kept(take(feature(Feature.CRANK, ""), "crank-bow", "mic", "swing", "0.0030")),
                "value"))
        .isCloseTo(0.0015, within(1e-12));
  }

  @Test
  void noLimitIsShippedSoNothingIsJudgedUntilOneIsTypedWithItsPage() {
    MeasuredResult free =
        kept(take(part("pushrod@3EX"), "pushrod-runout", "mic", "middle", "0.0015"));
    assertThat(free.judgements()).isEmpty();
    assertThat(tools.limit("pushrod-runout", "value", "", "0.002", " "))
        .isEqualTo(
            new Instruments.Answer.Refused("Say where the limit is printed: manual and page."));
    tools.limit("pushrod-runout", "value", "", "0.002", "manual p. 12");
    Judgement judged =
        bench
            .job
            .state()
            .measures()
            .findResult(part("pushrod@3EX"), "pushrod-runout")
            .orElseThrow()
            .judgements()
            .get(0);
    assertThat(judged.decision()).isEqualTo(Ruling.ACCEPT);
    assertThat(judged.limit().source()).isEqualTo("manual p. 12");
  }

  @Test
  void aReadingThatItsUncertaintyCannotCarryIsUndecidedAndHoldsThePart() {
    tools.limit("pushrod-runout", "value", "", "0.0020", "manual p. 12");
    MeasuredResult result =
        kept(take(part("pushrod@3EX"), "pushrod-runout", "caliper", "middle", "0.0020"));
    assertThat(result.judgements().get(0).decision()).isEqualTo(Ruling.UNDECIDED);
    assertThat(bench.verdict("pushrod@3EX").sentence()).contains("suspect");
    assertThat(new Deciding(bench.job).propose(bench.item("pushrod@3EX")).decision()).isEmpty();
  }

  @Test
  void aReadingOfOnePartHoldsNoOtherUp() {
    assertThat(bench.word("pushrod@5EX")).isEqualTo("right place");
    take(part("pushrod@3EX"), "pushrod-length", "caliper", "length", "8.0000");
    assertThat(bench.word("pushrod@5EX")).isEqualTo("right place");
    assertThat(bench.word("pushrod@3EX")).isEqualTo("right place");
  }

  @Test
  void millimetresTypedAsInchesAreQuestionedAndKeptOnlyWhenConfirmed() {
    Subject rod = part("pushrod@3EX");
    assertThat(questions(take(rod, "pushrod-length", "caliper", "length", "203.2")))
        .containsExactly(Question.Kind.UNIT_SLIP);
    assertThat(bench.job.state().measures().findResult(rod, "pushrod-length")).isEmpty();
    assertThat(kept(take(rod, "pushrod-length", "caliper", "length", "203.2 mm")).confirmed())
        .isFalse();
    assertThat(kept(takeConfirmed(rod, "pushrod-length", "caliper", "length", "203.2")).confirmed())
        .isTrue();
  }

  @Test
  void inchesTypedAsMillimetresAreQuestioned() {
    assertThat(
            questions(
                take(
                    feature(Feature.MAIN_JOURNAL, "M1"),
                    "main-journal",
                    "mic",
                    "front-vertical",
                    "2.610 mm")))
        .containsExactly(Question.Kind.UNIT_SLIP);
  }

  @Test
  void aSlipInsideThePlausibleRangeIsCaughtByTheOthersOfItsKind() {
    for (String place : List.of("1IN", "1EX", "2IN")) {
      take(part("pushrod@" + place), "pushrod-runout", "mic", "middle", "0.0020");
    }
    assertThat(questions(take(part("pushrod@3EX"), "pushrod-runout", "mic", "middle", "0.0508")))
        .containsExactly(Question.Kind.UNIT_SLIP);
  }

  @Test
  void anImplausibleSizeOneFarFromTheOthersAndUnlikeRepeatsAreQuestioned() {
    Subject rod = part("pushrod@3EX");
    assertThat(questions(take(rod, "pushrod-length", "caliper", "length", "30 in")))
        .containsExactly(Question.Kind.IMPLAUSIBLE);
    for (String place : List.of("1IN", "1EX", "2IN")) {
      take(part("pushrod@" + place), "pushrod-length", "caliper", "length", "8.0000");
    }
    assertThat(questions(take(rod, "pushrod-length", "caliper", "length", "6.0000")))
        .containsExactly(Question.Kind.FAR_FROM_OTHERS);
    assertThat(questions(take(rod, "pushrod-length", "caliper", "length", "8.0000;8.0100")))
        .containsExactly(Question.Kind.REPEATS_DIFFER);
  }

  @Test
  void repeatsAreAveragedAndTheReadingsStandAsTheyWereTyped() {
    MeasuredResult result =
        kept(take(part("pushrod@3EX"), "pushrod-length", "caliper", "length", "8.0000;8.0010"));
    assertThat(value(result, "value")).isCloseTo(8.0005, within(1e-9));
    assertThat(result.samples().get(0).readings().get(0)).isEqualTo(Amount.of("8.0000", Unit.INCH));
  }

  @Test
  void textThatIsNoFigureAWrongUnitAndAnUnknownToolAreRefusedInASentence() {
    Subject rod = part("pushrod@3EX");
    assertThat(take(rod, "pushrod-length", "caliper", "length", "eight"))
        .isInstanceOf(Measuring.Answer.Refused.class);
    assertThat(take(rod, "pushrod-length", "caliper", "length", "8 lb"))
        .isEqualTo(new Measuring.Answer.Refused("\"8 lb\" is not a length: check the unit."));
    assertThat(take(rod, "pushrod-length", "ruler", "length", "8"))
        .isEqualTo(
            new Measuring.Answer.Refused("The tool \"ruler\" is not on your list: list it first."));
    assertThat(take(rod, "bore", "mic", "thrust-top", "4"))
        .isInstanceOf(Measuring.Answer.Refused.class);
  }

  /**
   * TM 5-3820-256-24-5, p. 18 prints "0.01 mm (0.004 in)"; TM 9-2815-237-34, 2-28 prints 0.810 in
   * (20.6 mm), TM 5-1940-322-24, WP 0160-4 0.031 in (0.79 mm).
   */
  @Test
  void aPairPrintedInBothUnitsThatContradictsItselfIsSaidSo() {
    assertThat(tools.comparePair("0.004 in", "0.01 mm"))
        .isEqualTo(
            new Instruments.Answer.Refused("0.004 in is 0.102 mm, not 0.01 mm: which is meant?"));
    assertThat(tools.comparePair("0.810 in", "20.6 mm"))
        .isEqualTo(
            new Instruments.Answer.Kept(
                "0.810 in and 20.6 mm are one size, to the digits printed."));
    assertThat(tools.comparePair("0.031", "0.79mm")).isInstanceOf(Instruments.Answer.Kept.class);
    assertThat(tools.comparePair("0.031", "0.89mm")).isInstanceOf(Instruments.Answer.Refused.class);
    assertThat(tools.comparePair("one", "0.79mm")).isInstanceOf(Instruments.Answer.Refused.class);
  }

  @Test
  void aToolThatIsOffAtZeroIsSaidSo() {
    Instruments.Answer answer = tools.zero("mic", "0.0003");
    assertThat(((Instruments.Answer.Kept) answer).sentence()).contains("Set it");
    MeasuredResult result =
        kept(take(part("pushrod@3EX"), "pushrod-runout", "mic", "middle", "0.0015"));
    assertThat(result.zero()).contains("0.0003 in");
  }

  @Test
  void theShortPushrodOfASetIsNamed() {
    String[] places = {"1IN", "1EX", "2IN", "2EX", "3IN", "3EX"};
    String[] lengths = {"8.0000", "8.0005", "7.9995", "8.0000", "8.0005", "7.9600"};
    for (int at = 0; at < places.length; at++) {
      kept(take(part("pushrod@" + places[at]), "pushrod-length", "caliper", "length", lengths[at]));
    }
    OddOneOut odd = new Comparing(bench.job).compare("pushrod-length").orElseThrow();
    assertThat(odd.odd()).extracting(OddOneOut.Member::name).containsExactly("3 EX");
  }

  @Test
  void theStudThatStandsProudIsNamedFromTheReadingsOfItsBank() {
    for (String where : List.of("1EX", "1IN", "3IN", "3EX", "5EX", "5IN", "7IN", "7EX")) {
      String height = where.equals("5EX") ? "2.0130" : "2.0000";
      kept(take(feature(Feature.STUD, where), "stud-height", "mic", "height", height));
    }
    assertThat(
            new Comparing(bench.job)
                .studs(bench.job.state().layout().banks().get(0), List.of())
                .orElseThrow()
                .proud())
        .extracting(point -> point.name())
        .containsExactly("5 EX");
  }

  @Test
  void thePistonsOnTheShoppingListGetTheNextStepOnlyWhenEveryBoreToBeBoredIsMeasured() {
    tools.size("bore", "3.8700", "this engine's manual, p. 3");
    for (int at = 1; at <= 8; at++) {
      new Planning(bench.job)
          .plan(
              wherefrom.rules.consequence.Change.at(
                  wherefrom.rules.consequence.ChangeKind.BORED, "B" + at));
      bench.decide("piston@B" + at, wherefrom.inspection.Decision.REPLACE);
    }
    for (int at = 1; at <= 7; at++) {
      bore("B" + at);
    }
    Deciding deciding = new Deciding(bench.job);
    assertThat(deciding.replacements().get(0).sizeWords()).contains("1 of 8 cylinder bores");
    bore("B8");
    assertThat(deciding.replacements()).hasSize(1);
    assertThat(deciding.replacements().get(0).sizeWords())
        .isEqualTo("0.020 in over (twenty over), once bored; the next step that cleans up");
    assertThat(deciding.replacements().get(0).pieces()).isEqualTo(8);
  }
}
