package wherefrom.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wherefrom.inspection.Look;
import wherefrom.job.change.Planning;
import wherefrom.parts.Place;
import wherefrom.rules.Verdict;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;
import wherefrom.rules.consequence.Consequence;
import wherefrom.rules.consequence.Effect;

/**
 * Other cams, other ratios, larger valves, other studs, another gasket, a new rod: what each asks,
 * as the person at the bench meets it. Common practice, no source, but where a book is named.
 */
class CamAndHeadScenariosTest {
  private final BenchJob bench = BenchJob.v8();
  private final Planning planning = new Planning(bench.job);

  private void made(ChangeKind kind, String where) {
    assertThat(planning.make(Change.at(kind, where))).isInstanceOf(Planning.Answer.Made.class);
  }

  private void passed(String check) {
    assertThat(planning.answer(check, Look.PASS, "seen"))
        .isInstanceOf(Planning.Answer.Answered.class);
  }

  /** Each check of these holds the part, in any order; nothing else does. */
  private void waitsForAll(String place, String... checks) {
    for (String check : checks) {
      assertThat(bench.word(place)).as("before " + check).isEqualTo("not cleared");
      passed(check);
    }
    assertThat(bench.word(place)).isEqualTo("right place");
  }

  private List<String> beforeClosing() {
    return planning.openChecks().stream()
        .map(StandingRule::consequence)
        .filter(one -> one.effect() == Effect.CHECK_AFTER)
        .map(Consequence::key)
        .toList();
  }

  private static void isMustBeNew(Verdict verdict, String rule) {
    assertThat(verdict.word()).isEqualTo("must be new");
    assertThat(verdict.sentence()).contains("(rule " + rule.substring(1) + ";");
  }

  private static List<String> names(List<Consequence> consequences) {
    return consequences.stream().map(Consequence::name).toList();
  }

  @Test
  void r33ANewRodTakesNewShellsAndIsMeasured() {
    made(ChangeKind.ROD_REPLACED, "R3");
    isMustBeNew(bench.verdict("rod-shell@R3U"), "R33");
    isMustBeNew(bench.verdict("rod-shell@R3L"), "R33");
    assertThat(bench.word("rod-shell@R4U")).isEqualTo("right place");
    waitsForAll("rod@R3U", "R33:big-end@R3");
    assertThat(beforeClosing()).contains("R33:weight@R3", "R33:side-play@R3");
  }

  @Test
  void r23ACapOfAnotherHousingForbidsItsShellsUntilTheHousingIsMachined() {
    made(ChangeKind.CAP_REPLACED, "M2");
    for (String held : List.of("main-shell@M2U", "main-cap@M2L")) {
      assertThat(bench.word(held)).isEqualTo("not cleared");
      assertThat(bench.verdict(held).sentence()).contains("have the housing machined again");
    }
    assertThat(bench.word("main-cap@M3L")).isEqualTo("right place");
    passed("R23:align-bore@M2");
    assertThat(bench.word("main-cap@M2L")).isEqualTo("right place");
  }

  /** Machined is not yet measured: the shells wait for that, in a rod as in a main. */
  @ParameterizedTest
  @CsvSource({"main-cap@M2L, main-shell@M2L, M2", "rod-cap@R3L, rod-shell@R3L, R3"})
  void r23AHousingMachinedForANewCapIsMeasuredBeforeItsShellsGoIn(
      String cap, String shell, String where) {
    bench.replace(cap);
    bench.replace(shell);
    assertThat(bench.word(cap)).isEqualTo("not cleared");
    passed("R23:align-bore@" + where);
    assertThat(bench.word(cap)).isEqualTo("right place");
    assertThat(bench.word(shell)).isEqualTo("not cleared");
    passed("R23:align-bore-done@" + where);
    assertThat(bench.word(shell)).isEqualTo("right place");
  }

  @Test
  void r34AFlatCamInARollerEngineBansItsRollersAndItsShorterPushrods() {
    BenchJob roller = BenchJob.rollerV8();
    Planning plans = new Planning(roller.job);
    plans.make(Change.of(ChangeKind.NEW_FLAT_CAM));
    isMustBeNew(roller.verdict("lifter@3EX"), "R34");
    isMustBeNew(roller.verdict("pushrod@3EX"), "R34");
    assertThat(plans.standing())
        .extracting(rule -> rule.consequence().headline())
        .contains("must be new: 16 flat lifters", "buy new: cam");
    assertThat(names(plans.preview(Change.of(ChangeKind.ROLLER_TO_FLAT))))
        .contains("distributor-gear", "break-in", "lifter-bores", "pushrod-length");
  }

  @Test
  void r34TheRollerChangeIsNotOfferedToARollerEngineAndTheFlatOneNotToAFlat() {
    Planning roller = new Planning(BenchJob.rollerV8().job);
    assertThat(roller.plan(Change.of(ChangeKind.FLAT_TO_ROLLER)))
        .isEqualTo(
            new Planning.Answer.Refused(
                "\"from flat to roller lifters\" cannot be done here: the lifters of this engine"
                    + " are rollers already."));
    assertThat(planning.plan(Change.of(ChangeKind.ROLLER_TO_FLAT)))
        .isInstanceOf(Planning.Answer.Refused.class);
  }

  /** What an engine has by now counts, not what it came with. */
  @Test
  void r34OnceTheEngineHasRollersAReleasedFlatRuleIsAskedNoMore() {
    made(ChangeKind.FLAT_TO_ROLLER, "");
    assertThat(planning.plan(Change.of(ChangeKind.FLAT_TO_ROLLER)))
        .isInstanceOf(Planning.Answer.Refused.class);
    List<Consequence> reground = planning.preview(Change.of(ChangeKind.CAM_REGROUND));
    assertThat(reground).extracting(Consequence::rule).contains("R36").doesNotContain("R1");
    made(ChangeKind.ROLLER_TO_FLAT, "");
    assertThat(planning.preview(Change.of(ChangeKind.CAM_REGROUND)))
        .extracting(Consequence::rule)
        .contains("R1")
        .doesNotContain("R36");
  }

  @Test
  void r35EveryOtherCamAsksForCoilBindRetainerPistonAndTheDegreeWheel() {
    for (ChangeKind cam :
        List.of(
            ChangeKind.NEW_FLAT_CAM,
            ChangeKind.CAM_REGROUND,
            ChangeKind.NEW_ROLLER_CAM,
            ChangeKind.FLAT_TO_ROLLER)) {
      assertThat(names(planning.preview(Change.of(cam))))
          .as(cam.words())
          .contains("coil-bind", "retainer-seal", "piston-valve", "degree", "studs");
    }
    made(ChangeKind.NEW_FLAT_CAM, "");
    assertThat(beforeClosing()).contains("R35:piston-valve", "R35:degree", "R6:end-play");
    waitsForAll("pushrod@3EX", "R1:pushrod-ends", "R11:pushrod-length");
  }

  @Test
  void r36AnotherRollerCamAsksForBaseCircleSpringsGearAndEachRoller() {
    BenchJob roller = BenchJob.rollerV8();
    List<Consequence> follows =
        new Planning(roller.job).preview(Change.of(ChangeKind.NEW_ROLLER_CAM));
    assertThat(names(follows))
        .contains(
            "roller-condition",
            "base-circle",
            "springs",
            "distributor-gear",
            "pushrod-length",
            "piston-valve");
    assertThat(follows)
        .filteredOn(one -> one.name().equals("roller-condition"))
        .extracting(Consequence::source)
        .containsExactly(
            "\"Guidelines for Reusable Parts: Lifters\" (scribd.com, 553560845), undated");
    assertThat(follows).noneMatch(one -> one.effect().bans());
  }

  @Test
  void r37AnotherRatioBringsNewRockersAndAllThatMoreLiftAsks() {
    made(ChangeKind.ROCKER_RATIO, "");
    isMustBeNew(bench.verdict("rocker@3EX"), "R37");
    isMustBeNew(bench.verdict("pivot@3EX"), "R37");
    assertThat(planning.openChecks())
        .extracting(rule -> rule.consequence().key())
        .contains(
            "R9:coil-bind",
            "R9:studs",
            "R9:guide-top",
            "R9:rocker-slot",
            "R9:studs-after",
            "R9:piston-valve",
            "R11:pushrod-length",
            "R37:true-ratio");
    waitsForAll("pushrod@3EX", "R37:pushrod-hole", "R37:pushrod-ends", "R11:pushrod-length");
  }

  @Test
  void r9MoreLiftAsksForThePressInStudsBeforeAndAfterAndNotWhereThereAreNone() {
    List<Consequence> follows = planning.preview(Change.of(ChangeKind.LIFT_INCREASED));
    assertThat(follows)
        .filteredOn(one -> one.name().equals("studs"))
        .singleElement()
        .satisfies(
            one ->
                assertThat(one.sentence())
                    .contains("straightedge", "open spring load", "pinned", "screw-in"));
    assertThat(names(follows)).contains("studs-after");
    Planning shafts = new Planning(BenchJob.shaftV8().job);
    assertThat(names(shafts.preview(Change.of(ChangeKind.LIFT_INCREASED))))
        .contains("coil-bind")
        .doesNotContain("studs", "studs-after", "rocker-slot");
    assertThat(shafts.plan(Change.at(ChangeKind.STUDS_SCREW_IN, "left")))
        .isEqualTo(
            new Planning.Answer.Refused(
                "\"rocker studs changed to screw-in\" cannot be done here: the rockers of this"
                    + " engine are on shafts."));
  }

  @Test
  void r38LargerIntakesOfOneBankLeaveTheExhaustsAndTheOtherBankAlone() {
    made(ChangeKind.LARGER_INTAKE_VALVES, "left");
    isMustBeNew(bench.verdict("valve@3IN"), "R38");
    for (String other : List.of("valve@3EX", "valve@2IN", "spring@3EX")) {
      assertThat(bench.word(other)).as(other).isEqualTo("right place");
    }
    bench.replace("valve@3IN");
    assertThat(beforeClosing())
        .contains(
            "R38:throats@left",
            "R38:chamber@left",
            "R38:compression-ratio@left",
            "R38:valve-bore@left",
            "R38:valve-valve@left",
            "R38:piston-valve@left",
            "R38:leak-test@left");
    waitsForAll("spring@3IN", "R38:springs@left");
    waitsForAll("pushrod@3IN", "R11:pushrod-length@left");
  }

  @Test
  void r38LargerValvesOfAHeadBanBothSides() {
    made(ChangeKind.LARGER_VALVES, "right");
    isMustBeNew(bench.verdict("valve@2IN"), "R38");
    isMustBeNew(bench.verdict("valve@2EX"), "R38");
    assertThat(bench.word("valve@3EX")).isEqualTo("right place");
  }

  /** Intakes first, then the exhausts: one answer settles a check, so it is listed once. */
  @Test
  void r38AskedTwiceOfOneBankIsListedOnceForBothSides() {
    made(ChangeKind.LARGER_INTAKE_VALVES, "left");
    made(ChangeKind.LARGER_EXHAUST_VALVES, "left");
    List<StandingRule> seats =
        planning.openChecks().stream()
            .filter(rule -> rule.consequence().key().equals("R38:springs@left"))
            .toList();
    assertThat(seats).hasSize(1);
    assertThat(seats.get(0).consequence().places())
        .extracting(Place::key)
        .contains("spring@3IN", "spring@3EX")
        .doesNotContain("spring@2IN");
    assertThat(planning.openChecks().stream().map(rule -> rule.consequence().key()).toList())
        .doesNotHaveDuplicates();
    passed("R38:springs@left");
    assertThat(planning.openChecks())
        .noneMatch(rule -> rule.consequence().key().equals("R38:springs@left"));
  }

  @Test
  void r39ScrewInStudsAreSeenBeforeTheRockersGoOn() {
    made(ChangeKind.STUDS_SCREW_IN, "left");
    waitsForAll("rocker@3EX", "R39:boss@left", "R39:stud-heights@left");
    waitsForAll("pushrod@3EX", "R39:guide-plates@left", "R11:pushrod-length@left");
    assertThat(bench.word("rocker@2EX")).isEqualTo("right place");
    assertThat(beforeClosing()).contains("R39:sealer@left", "R39:sweep-again@left");
  }

  @Test
  void r40AnotherGasketChangesRatioPistonGapsAndTheIntakeOfAV() {
    made(ChangeKind.GASKET_THICKNESS, "");
    assertThat(beforeClosing())
        .contains(
            "R40:compression-ratio", "R40:piston-head", "R40:piston-valve", "R40:intake-faces");
    Planning inline = new Planning(BenchJob.inline4().job);
    assertThat(names(inline.preview(Change.of(ChangeKind.GASKET_THICKNESS))))
        .contains("compression-ratio")
        .doesNotContain("intake-faces");
  }

  @Test
  void r10AndR4ANewRockerOrLifterAsksForTheOldPushrodsEnds() {
    bench.reuseAll();
    bench.replace("rocker@3EX");
    bench.replace("lifter@5IN");
    waitsForAll("pushrod@3EX", "R10:pushrod-ends@3EX", "R11:pushrod-length@3EX");
    waitsForAll("pushrod@5IN", "R4:pushrod-ends@5IN", "R11:pushrod-length@5IN");
  }

  @Test
  void r13ANewValveIsLeakTested() {
    assertThat(names(planning.preview(Change.at(ChangeKind.VALVE_REPLACED, "3EX"))))
        .contains("leak-test", "stem-seal");
  }

  /** Two cuts of one head: what the first asked of the exhaust side stands. */
  @Test
  void r38LargerIntakeValvesAfterwardsLeaveTheExhaustSideAsItWas() {
    made(ChangeKind.LARGER_VALVES, "left");
    made(ChangeKind.LARGER_INTAKE_VALVES, "left");
    isMustBeNew(bench.verdict("valve@1EX"), "R38");
    isMustBeNew(bench.verdict("valve@1IN"), "R38");
  }
}
