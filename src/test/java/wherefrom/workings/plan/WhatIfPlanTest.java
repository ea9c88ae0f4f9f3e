package wherefrom.workings.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import wherefrom.workings.InputText;
import wherefrom.workings.Inputs;
import wherefrom.workings.InputsReading;
import wherefrom.workings.Result;
import wherefrom.workings.ResultValue;
import wherefrom.workings.Source;
import wherefrom.workings.catalogue.Workings;
import wherefrom.workings.catalogue.basis.Gap;

class WhatIfPlanTest {
  private static Inputs inputs(String... texts) {
    InputsReading reading = InputText.read(new PlanWorking(), List.of(texts));
    assertThat(reading).isInstanceOf(InputsReading.Understood.class);
    return ((InputsReading.Understood) reading).inputs();
  }

  private static final Inputs NOW =
      inputs(
          "bore=3.870in±0.0005in",
          "stroke=3.310in±0.002in",
          "chamber=63cc±0.5cc",
          "gasket-bore=3.970in±0.005in",
          "gasket-thickness=0.040in±0.001in",
          "deck=0.025in±0.001in",
          "piston-volume=6cc±0.2cc",
          "opening=0.165cc/thou±0.005",
          "bank-angle=90deg",
          "face-angle=80deg±0.2deg",
          "lobe-lift=0.300in±0.001in",
          "rocker-ratio=1.5±0.01",
          "lash=0in",
          "installed-height=1.700in±0.005in",
          "solid-height=1.150in±0.002in",
          "seal-gap=0.520in±0.005in",
          "slot-room=0.500in±0.005in",
          "pushrod-tilt=8deg±0.5deg",
          "clearance-intake=0.120in±0.003in",
          "clearance-exhaust=0.150in±0.003in",
          "valve-tilt=20deg±0.5deg",
          "crown=flat");

  private static PlanColumn column(WhatIfPlan plan, int index) {
    return (PlanColumn) plan.work().get(index);
  }

  private static PlanColumn whatIf(String... changes) {
    return column(new WhatIfPlan(NOW, List.of(new WhatIf("try", inputs(changes)))), 1);
  }

  private static double value(PlanColumn column, String key) {
    return column.result().getValue(key).value();
  }

  @Test
  void nowIsTheEngineAsItIs() {
    PlanColumn now = column(new WhatIfPlan(NOW, List.of()), 0);
    assertThat(now.name()).isEqualTo("now");
    assertThat(value(now, "ratio")).isCloseTo(8.7872, within(0.00005));
    assertThat(value(now, "lift")).isCloseTo(0.450, within(1e-12));
    assertThat(value(now, "coil-bind")).isCloseTo(0.100, within(1e-12));
    assertThat(value(now, "retainer-to-seal")).isCloseTo(0.070, within(1e-12));
    assertThat(value(now, "lowering")).isZero();
    assertThat(value(now, "piston-to-intake")).isCloseTo(0.120, within(1e-12));
    assertThat(now.consequences()).isEmpty();
    assertThat(now.result().findValue("ratio-uncut")).isEmpty();
  }

  @Test
  void aWantedRatioIsFollowedDownToTheValves() {
    // The own worked example of the single workings, chained: 9.5 needs 6.8706 cc, 41.6 thou at
    // 0.165 cc/thou; the same cut then goes through intake, pushrod and piston to valve.
    PlanColumn column = whatIf("target=9.5");
    double cut = 6.8706 / 0.165 / 1000;
    assertThat(value(column, "head-cut")).isCloseTo(cut, within(5e-7));
    assertThat(value(column, "ratio")).isCloseTo(9.5, within(1e-9));
    assertThat(value(column, "ratio-uncut")).isCloseTo(8.7872, within(0.00005));
    assertThat(value(column, "chamber")).isCloseTo(56.1294, within(0.00005));
    assertThat(value(column, "intake-face")).isCloseTo(1.233 * cut, within(5e-5));
    assertThat(value(column, "intake-rails")).isCloseTo(1.717 * cut, within(5e-5));
    assertThat(value(column, "pushrod-change"))
        .isCloseTo(-cut * Math.cos(Math.toRadians(8)), within(5e-7));
    assertThat(value(column, "piston-to-intake"))
        .isCloseTo(0.120 - cut / Math.cos(Math.toRadians(20)), within(5e-7));
    assertThat(column.consequences())
        .containsExactly(
            WhatIfEffect.HEAD_MILLED,
            WhatIfEffect.INTAKE_CORRECTED,
            WhatIfEffect.PUSHROD_LENGTH_CHANGED);
  }

  @Test
  void theCutsBandComesFromWhatWasMeasured() {
    ResultValue cut = whatIf("target=9.5").result().getValue("head-cut");
    assertThat(cut.shares())
        .extracting("inputKey")
        .contains("chamber", "opening", "gasket-thickness", "deck", "piston-volume")
        .doesNotContain("head-cut");
    assertThat(cut.findBiggestShare().orElseThrow().inputKey()).isEqualTo("chamber");
    double pour = 0.5 / 0.165 / 1000;
    assertThat(cut.standardUncertainty()).isBetween(pour, 1.5 * pour);
  }

  @Test
  void theRatioOfAWantedCutIsNoSurerThanThatOfTheSameCutTyped() {
    // The mill cuts the figure shown; what chamber, deck and gasket leave open stays in the ratio.
    PlanColumn wanted = whatIf("target=9.5");
    ResultValue cut = wanted.result().getValue("head-cut");
    ResultValue ratio = wanted.result().getValue("ratio");
    PlanColumn typed = whatIf("head-cut=" + String.format(Locale.ROOT, "%.12fin", cut.value()));
    assertThat(ratio.value()).isCloseTo(9.5, within(1e-9));
    assertThat(cut.standardUncertainty()).isPositive();
    for (String key : List.of("ratio", "chamber")) {
      assertThat(wanted.result().getValue(key).standardUncertainty())
          .isPositive()
          .isCloseTo(typed.result().getValue(key).standardUncertainty(), within(1e-9));
    }
    // By hand: u of the volume over the piston times (9.5 − 1)² / swept.
    double uncut = wanted.result().getValue("ratio-uncut").standardUncertainty();
    double volume = uncut * 638.0298 / Math.pow(8.7872 - 1, 2);
    double opening = 0.005 * cut.value() * 1000;
    double expected = Math.hypot(volume, opening) * Math.pow(9.5 - 1, 2) / 638.0298;
    assertThat(ratio.standardUncertainty()).isCloseTo(expected, within(0.001));
  }

  private static String standing(PlanColumn column, Gap gap) {
    return column.margins().stream()
        .filter(margin -> margin.gap() == gap)
        .map(margin -> margin.standing().name())
        .collect(Collectors.joining(","));
  }

  /** What was measured with another cam, piston or crank says nothing of this one. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "lobe-lift=0.320in",
        "lobe-lift=0.280in",
        "base-radius-loss=0.010in",
        "bore=3.900in",
        "stroke=3.450in",
        "deck=0.010in",
        "piston-volume=2cc"
      })
  void pistonToValveIsNotKnownWithOtherPartsThanItWasMeasuredWith(String change) {
    PlanColumn column = whatIf(change);
    for (Gap gap : List.of(Gap.PISTON_TO_INTAKE, Gap.PISTON_TO_EXHAUST)) {
      assertThat(column.result().findValue(gap.key())).isEmpty();
      assertThat(column.isNotKnown(gap.key())).isTrue();
      assertThat(column.findAtLeast(gap.key())).isEmpty();
      assertThat(standing(column, gap)).isEmpty();
    }
    PlanColumn again = whatIf(change, "clearance-intake=0.095in±0.003in");
    assertThat(value(again, "piston-to-intake")).isCloseTo(0.095, within(1e-12));
    assertThat(standing(again, Gap.PISTON_TO_INTAKE)).isEqualTo("CLEAR");
    assertThat(again.isNotKnown("piston-to-exhaust")).isTrue();
  }

  @Test
  void anotherRatioLeavesAtLeastWhatItsLiftTakes() {
    // 0.300·(1.6 − 1.5) = 0.030 in more lift at most: 0.120 − 0.030 = 0.090 and 0.150 − 0.030.
    PlanColumn little = whatIf("rocker-ratio=1.6±0.001");
    assertThat(little.result().findValue("piston-to-intake")).isEmpty();
    assertThat(little.findAtLeast("piston-to-intake").orElseThrow().value())
        .isCloseTo(0.090, within(1e-12));
    assertThat(standing(little, Gap.PISTON_TO_EXHAUST)).isEqualTo("CLEAR");
    PlanColumn much = whatIf("rocker-ratio=1.7±0.001");
    assertThat(standing(much, Gap.PISTON_TO_INTAKE)).isEqualTo("NOT_KNOWN");
    assertThat(much.listMarked()).anyMatch(margin -> margin.gap() == Gap.PISTON_TO_INTAKE);
    // Less ratio and more lash leave no less than before.
    PlanColumn less = whatIf("rocker-ratio=1.4", "lash=0.010in");
    assertThat(less.findAtLeast("piston-to-intake").orElseThrow().value())
        .isCloseTo(0.120, within(1e-12));
    WhatIfPlan bare =
        new WhatIfPlan(
            NOW.without("lobe-lift"), List.of(new WhatIf("x", inputs("rocker-ratio=1.6"))));
    assertThat(column(bare, 1).isNotKnown("piston-to-intake")).isTrue();
    assertThat(column(bare, 1).findAtLeast("piston-to-intake")).isEmpty();
    WhatIf lash = new WhatIf("x", inputs("rocker-ratio=1.5", "lash=0.02in"));
    PlanColumn unsaid = column(new WhatIfPlan(NOW.without("lash"), List.of(lash)), 1);
    assertThat(unsaid.isNotKnown("piston-to-intake")).isTrue();
    assertThat(unsaid.findAtLeast("piston-to-intake")).isEmpty();
    assertThat(unsaid.result().findNote("not-known-piston-to-intake").orElseThrow().text())
        .isEqualTo("piston to intake valve is not known with another lift. Measure it again.");
  }

  /** The referee moves valve and piston through every degree, on seeded engines. */
  @Test
  void atNoAngleIsLessLeftThanTheLeastThatIsSaid() {
    Random random = new Random(20261128);
    for (int run = 0; run < 300; run++) {
      double before = 1.3 + 0.4 * random.nextDouble();
      double after = 1.3 + 0.4 * random.nextDouble();
      double lobe = 6 + 3 * random.nextDouble();
      double lashBefore = 0.5 * random.nextDouble();
      double lashAfter = 0.5 * random.nextDouble();
      double centre = 100 + 20 * random.nextDouble();
      double crank = 40 + 10 * random.nextDouble();
      double gap = 8 + 4 * random.nextDouble();
      double now = Double.POSITIVE_INFINITY;
      double then = Double.POSITIVE_INFINITY;
      for (double at = -60; at < 60; at += 0.5) {
        double half = Math.cos(Math.PI / 2 * Math.min(1, Math.abs(at - centre) / 140));
        double cam = lobe * half * half;
        double drop = crank * (1 - Math.cos(Math.toRadians(at)));
        now = Math.min(now, gap + drop - Math.max(0, cam * before - lashBefore));
        then = Math.min(then, gap + drop - Math.max(0, cam * after - lashAfter));
      }
      Inputs measured =
          inputs(
              mm("lobe-lift", lobe),
              "rocker-ratio=" + before,
              mm("lash", lashBefore),
              mm("clearance-intake", now),
              "valve-tilt=0deg",
              "crown=flat");
      WhatIfPlan plan =
          new WhatIfPlan(
              measured,
              List.of(new WhatIf("x", inputs("rocker-ratio=" + after, mm("lash", lashAfter)))));
      double least = column(plan, 1).findAtLeast("piston-to-intake").orElseThrow().value();
      assertThat(then).as("run %d", run).isGreaterThanOrEqualTo(least - 1e-9);
      assertThat(least).isLessThanOrEqualTo(now + 1e-9);
    }
  }

  private static String mm(String key, double size) {
    return String.format(Locale.ROOT, "%s=%.12fmm", key, size);
  }

  /** Each gap, driven below nothing, says in plain words what would touch. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "PISTON_TO_HEAD|deck-cut=0.070in|The piston would hit the head",
        "COIL_BIND|installed-height=1.580in|coils would bind",
        "RETAINER_TO_SEAL|seal-gap=0.440in|retainer would hit the seal",
        "ROCKER_SLOT|slot-room=0.440in|slot would hit its stud",
        "PISTON_TO_INTAKE|head-cut=0.130in|intake valve would hit the piston",
        "PISTON_TO_EXHAUST|clearance-exhaust=0.010in,head-cut=0.020in|exhaust valve would hit"
      })
  void partsThatWouldTouchAreNamed(Gap gap, String change, String words) {
    PlanColumn column = whatIf(change.split(","));
    assertThat(standing(column, gap)).isEqualTo("TOUCHES");
    assertThat(column.margins())
        .filteredOn(margin -> margin.gap() == gap)
        .allMatch(margin -> margin.sentence().contains(words));
    assertThat(column.result().findNote(gap.key() + "-touches").orElseThrow().text())
        .contains(words, "short by 0.0");
  }

  @Test
  void aLashThatEatsTheLiftLeavesNoLift() {
    PlanColumn column = whatIf("lash=0.5in");
    assertThat(column.result().findValue("lift")).isEmpty();
    assertThat(column.result().findValue("coil-bind")).isEmpty();
    assertThat(column.result().findNote("never-opens")).isPresent();
  }

  private static PlanColumn withoutOpening(String... changes) {
    Inputs more =
        ((InputsReading.Understood) InputText.read(new PlanWorking(), List.of(changes))).inputs();
    return column(new WhatIfPlan(NOW.without("opening"), List.of(new WhatIf("what-if", more))), 1);
  }

  @Test
  void aCutOfUnknownVolumeGivesNoRatioButEverythingThatItLowers() {
    PlanColumn column = withoutOpening("head-cut=0.020in");
    assertThat(value(column, "head-cut")).isCloseTo(0.020, within(1e-12));
    assertThat(column.result().findValue("ratio")).isEmpty();
    assertThat(column.result().findValue("chamber")).isEmpty();
    assertThat(value(column, "ratio-uncut")).isCloseTo(8.7872, within(0.00005));
    assertThat(value(column, "piston-to-intake"))
        .isCloseTo(0.120 - 0.020 / Math.cos(Math.toRadians(20)), within(1e-9));
    assertThat(column.consequences()).contains(WhatIfEffect.HEAD_MILLED);
    assertThat(column.result().notes())
        .anyMatch(note -> note.text().contains("still needed: opening"));
  }

  @Test
  void aWantedRatioWithoutItsCutPromisesNoRoomAtTheValves() {
    PlanColumn column = withoutOpening("target=9.5");
    for (String key :
        List.of(
            "ratio", "head-cut", "lowering", "intake-face", "pushrod-change", "piston-to-intake")) {
      assertThat(column.result().findValue(key)).as(key).isEmpty();
    }
    assertThat(value(column, "lift")).isCloseTo(0.450, within(1e-12));
    assertThat(column.result().notes())
        .extracting("key")
        .contains("needs-cut-for-the-wanted-ratio", "needs-the-cut");
    WhatIfPlan noBore = new WhatIfPlan(NOW.without("bore"), List.of());
    PlanColumn now = column(noBore, 0);
    assertThat(value(now, "piston-to-intake")).isCloseTo(0.120, within(1e-12));
  }

  @Test
  void columnsAgreeWithTheSingleWorkings() {
    PlanColumn column = whatIf("head-cut=0.020in", "deck-cut=0.010in");
    Inputs single = column.inputs().without("bank-angle").without("face-angle").without("target");
    Inputs ratioInputs = Inputs.empty();
    for (String key :
        List.of(
            "bore",
            "stroke",
            "chamber",
            "gasket-bore",
            "gasket-thickness",
            "deck",
            "piston-volume",
            "opening",
            "head-cut",
            "deck-cut")) {
      ratioInputs = ratioInputs.withEntry(key, single.find(key).orElseThrow());
    }
    Result expected = (Result) Workings.find("ratio-after-cut").orElseThrow().compute(ratioInputs);
    for (String key : List.of("ratio", "deck", "piston-to-head", "chamber")) {
      ResultValue got = column.result().getValue(key);
      assertThat(got.value()).isEqualTo(expected.getValue(key).value());
      assertThat(got.standardUncertainty()).isEqualTo(expected.getValue(key).standardUncertainty());
    }
    assertThat(value(column, "lowering")).isCloseTo(0.030, within(1e-12));
    // 0.030 in at 90°/10°: 0.0370 and 0.0515, and at 20°: 0.0319 (own worked examples).
    assertThat(value(column, "intake-face")).isCloseTo(0.0370, within(5e-5));
    assertThat(value(column, "intake-rails")).isCloseTo(0.0515, within(5e-5));
    assertThat(0.150 - value(column, "piston-to-exhaust")).isCloseTo(0.0319, within(5e-5));
    assertThat(column.consequences()).contains(WhatIfEffect.HEAD_MILLED, WhatIfEffect.DECK_MILLED);
  }

  @Test
  void aThinnerGasketLowersTheHeadByTheDifference() {
    PlanColumn column = whatIf("gasket-thickness=0.028in±0.001in");
    assertThat(value(column, "lowering")).isCloseTo(0.012, within(1e-12));
    assertThat(column.result().getValue("lowering").standardUncertainty())
        .isCloseTo(0.001 * Math.sqrt(2), within(1e-9));
    assertThat(column.consequences()).contains(WhatIfEffect.GASKET_CHANGED);
    assertThat(value(column, "ratio")).isCloseTo(9.0257, within(5e-5));
  }

  @Test
  void moreLiftIsMarkedAgainstItsLimits() {
    PlanColumn column = whatIf("rocker-ratio=1.6±0.01");
    assertThat(value(column, "lift")).isCloseTo(0.480, within(1e-12));
    assertThat(column.consequences())
        .containsExactly(
            WhatIfEffect.PUSHROD_LENGTH_CHANGED.equals(column.consequences().get(0))
                ? WhatIfEffect.PUSHROD_LENGTH_CHANGED
                : WhatIfEffect.LIFT_INCREASED,
            WhatIfEffect.ROCKER_RATIO_CHANGED);
    assertThat(column.result().findNote("clearance-of-other-cam")).isPresent();
    List<Margin> marked = column.listMarked();
    assertThat(marked).extracting(margin -> margin.result().key()).contains("retainer-to-seal");
    Margin seal =
        marked.stream()
            .filter(margin -> margin.result().key().equals("retainer-to-seal"))
            .findFirst()
            .orElseThrow();
    assertThat(seal.standing()).isEqualTo(Margin.Standing.UNDER);
    assertThat(seal.left()).isCloseTo(-0.010, within(1e-9));
    assertThat(seal.least().source()).isEqualTo(Source.fromMemory());
    assertThat(seal.sentence()).contains("0.050 in", "from memory");
  }

  @Test
  void aMarginWithinItsUncertaintyIsUndecided() {
    // 0.520 − 0.450 = 0.070 against 0.050: clear with u = 0.006, undecided with u = 0.02.
    assertThat(sealStanding("seal-gap=0.520in±0.005in")).isEqualTo(Margin.Standing.CLEAR);
    assertThat(sealStanding("seal-gap=0.520in±0.020in")).isEqualTo(Margin.Standing.UNDECIDED);
    assertThat(sealStanding("seal-gap=0.490in±0.005in")).isEqualTo(Margin.Standing.UNDER);
  }

  private static Margin.Standing sealStanding(String gap) {
    return whatIf(gap).margins().stream()
        .filter(margin -> margin.result().key().equals("retainer-to-seal"))
        .map(Margin::standing)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void everyKindOfChangeIsNoticed() {
    assertThat(whatIf("bore=3.890in").consequences()).contains(WhatIfEffect.BORED);
    assertThat(whatIf("stroke=3.450in").consequences()).contains(WhatIfEffect.CRANK_CHANGED);
    assertThat(whatIf("piston-volume=-4cc").consequences()).contains(WhatIfEffect.PISTONS_CHANGED);
    assertThat(whatIf("seat-sink=0.010in").consequences()).contains(WhatIfEffect.SEAT_WORK);
    assertThat(whatIf("solid-height=1.1in").consequences())
        .contains(WhatIfEffect.SPRINGS_CHANGED)
        .doesNotContain(WhatIfEffect.SPRINGS_SHIMMED);
    assertThat(whatIf("installed-height=1.66in").consequences())
        .contains(WhatIfEffect.SPRINGS_SHIMMED)
        .doesNotContain(WhatIfEffect.SPRINGS_CHANGED);
    assertThat(whatIf("lobe-lift=0.320in").consequences())
        .contains(WhatIfEffect.CAM_CHANGED, WhatIfEffect.LIFT_INCREASED);
    assertThat(whatIf("base-radius-loss=0.025in").consequences())
        .contains(WhatIfEffect.CAM_CHANGED, WhatIfEffect.PUSHROD_LENGTH_CHANGED);
    assertThat(whatIf("bore=98.298mm").consequences()).isEmpty();
  }

  @Test
  void whatIsMissingIsNamedAndTheRestIsWorkedOut() {
    PlanColumn now =
        column(new WhatIfPlan(inputs("lobe-lift=0.3in", "rocker-ratio=1.5"), List.of()), 0);
    assertThat(now.result().findValue("ratio")).isEmpty();
    assertThat(now.result().findNote("needs-valve-lift").orElseThrow().text()).contains("lash");
    assertThat(now.result().findNote("needs-compression-ratio").orElseThrow().text())
        .contains("chamber");
  }

  @Test
  void nonsenseIsRefusedInItsColumnAlone() {
    WhatIfPlan plan =
        new WhatIfPlan(
            NOW,
            List.of(
                new WhatIf("too deep", inputs("head-cut=0.9in")),
                new WhatIf("fine", inputs("target=9.2"))));
    List<PlanAnswer> answers = plan.work();
    assertThat(answers.get(0)).isInstanceOf(PlanColumn.class);
    assertThat(((PlanAnswer.Refused) answers.get(1)).nonsense().sentence()).contains("no room");
    assertThat(answers.get(2)).isInstanceOf(PlanColumn.class);
  }

  @Test
  void aRatioAboveTheTargetNeedsNoCut() {
    PlanColumn column = whatIf("target=8.0");
    assertThat(value(column, "head-cut")).isZero();
    assertThat(column.result().findNote("ratio-above-target")).isPresent();
  }

  @Test
  void holdsThreeWhatIfsAtMost() {
    WhatIf same = new WhatIf("same", Inputs.empty());
    assertThat(new WhatIfPlan(NOW, List.of(same, same, same)).work()).hasSize(4);
    assertThatThrownBy(() -> new WhatIfPlan(NOW, List.of(same, same, same, same)))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
