package wherefrom.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import wherefrom.inspection.Decision;
import wherefrom.inspection.Look;
import wherefrom.job.change.PlannedChange;
import wherefrom.job.change.Planning;
import wherefrom.job.decide.Deciding;
import wherefrom.job.entry.FeatureLooked;
import wherefrom.job.entry.PartFitted;
import wherefrom.job.entry.PartFound;
import wherefrom.job.entry.PartLost;
import wherefrom.job.puttogether.Fitting;
import wherefrom.parts.Place;
import wherefrom.rules.Verdict;
import wherefrom.rules.VerdictName;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;
import wherefrom.rules.consequence.Consequence;
import wherefrom.rules.consequence.ConsequenceRules;
import wherefrom.rules.consequence.Effect;
import wherefrom.rules.consequence.Goods;

/** Each rule, as the person at the bench meets it. */
class ConsequenceScenariosTest {
  private final BenchJob bench = BenchJob.v8();
  private final Planning planning = new Planning(bench.job);

  private void made(ChangeKind kind, String where) {
    assertThat(planning.make(Change.at(kind, where))).isInstanceOf(Planning.Answer.Made.class);
  }

  private void passed(String check) {
    assertThat(planning.answer(check, Look.PASS, "seen"))
        .isInstanceOf(Planning.Answer.Answered.class);
  }

  private List<String> openChecks() {
    return planning.openChecks().stream().map(rule -> rule.consequence().key()).toList();
  }

  /** Less what every engine with used flat lifters asks. */
  private List<String> openChecksOfTheChange() {
    return openChecks().stream().filter(key -> !key.startsWith("R2:")).toList();
  }

  private List<String> toBuy() {
    return planning.standing().stream()
        .map(StandingRule::consequence)
        .filter(consequence -> consequence.effect() == Effect.BUY)
        .map(consequence -> consequence.goods().map(Goods::id).orElse(""))
        .toList();
  }

  private List<String> sentences() {
    return planning.standing().stream().map(rule -> rule.consequence().sentence()).toList();
  }

  private int pieces(String what) {
    return planning.standing().stream()
        .map(StandingRule::consequence)
        .filter(consequence -> consequence.goods().map(Goods::id).orElse("").equals(what))
        .mapToInt(Consequence::pieces)
        .findFirst()
        .orElseThrow();
  }

  private static void isMustBeNew(Verdict verdict, String rule) {
    assertThat(verdict.word()).isEqualTo("must be new");
    assertThat(verdict.sentence()).contains("(rule " + rule.substring(1) + ";");
  }

  private static void isHeldForWork(Verdict verdict, String rule) {
    assertThat(verdict.word()).isEqualTo("not cleared");
    assertThat(verdict.sentence()).contains("(rule " + rule.substring(1) + ";");
    assertThat(verdict.wayOut()).startsWith("Have it done and measured.");
  }

  private List<String> rules(String place) {
    return bench.job.state().rules().listFor(bench.part(place)).stream()
        .map(rule -> rule.consequence().rule())
        .toList();
  }

  private void waitsFor(String place, String check) {
    assertThat(bench.verdict(place).word()).isEqualTo("not cleared");
    assertThat(bench.verdict(place).sentence())
        .contains("(rule " + check.substring(1, check.indexOf(':')) + ")");
    passed(check);
  }

  @Test
  void everyRuleHasAScenario() {
    Set<String> scenarios =
        Stream.of(
                ConsequenceScenariosTest.class,
                OtherPartsScenariosTest.class,
                CamAndHeadScenariosTest.class)
            .flatMap(tests -> Arrays.stream(tests.getDeclaredMethods()))
            .filter(method -> method.isAnnotationPresent(Test.class))
            .map(method -> method.getName().replaceFirst("^(r\\d+).*", "$1"))
            .collect(Collectors.toSet());
    assertThat(ConsequenceRules.all().stream().map(rule -> "r" + rule.number().substring(1)))
        .allMatch(scenarios::contains);
  }

  @Test
  void r1UsedFlatLifterOnNewCamIsStoppedUntilANewOneIsBought() {
    assertThat(bench.word("lifter@3EX")).isEqualTo("right place");
    made(ChangeKind.NEW_FLAT_CAM, "");
    isMustBeNew(bench.verdict("lifter@3EX"), "R1");
    isMustBeNew(bench.verdict("lifter@8IN"), "R1");
    bench.replace("lifter@3EX");
    assertThat(bench.word("lifter@3EX")).isEqualTo("right place");
    waitsFor("spring@1IN", "R1:spring-load");
    waitsFor("spring@1IN", "R35:coil-bind");
    waitsFor("spring@1IN", "R35:retainer-seal");
    assertThat(bench.word("spring@1IN")).isEqualTo("right place");
  }

  @Test
  void r1RegroundCamForbidsUsedFlatLiftersToo() {
    made(ChangeKind.CAM_REGROUND, "");
    isMustBeNew(bench.verdict("lifter@1IN"), "R1");
  }

  @Test
  void r1RollerLifterMayServeAnotherRollerCamOnceItsRollerIsSeenToBePerfect() {
    BenchJob roller = BenchJob.rollerV8();
    Planning plans = new Planning(roller.job);
    for (ChangeKind cam : List.of(ChangeKind.NEW_ROLLER_CAM, ChangeKind.CAM_REGROUND)) {
      plans.make(Change.of(cam));
      assertThat(roller.verdict("lifter@3EX").sentence()).contains("(rule 36)");
      plans.answer("R36:roller-condition", Look.PASS, "turned each");
      assertThat(roller.word("lifter@3EX")).isEqualTo("right place");
    }
  }

  @Test
  void r2UsedFlatLifterOnItsOwnCamGoesToTheVerySameLobe() {
    assertThat(openChecks()).contains("R2:crown");
    assertThat(bench.word("lifter@5IN")).isEqualTo("right place");
    bench.decide("lifter@5IN", Decision.REUSE);
    assertThat(bench.word("lifter@5IN")).isEqualTo("right place");
    bench.reuseAll();
    assertThat(openChecks()).doesNotContain("R2:crown");
    bench.look("lifter@5IN", "lifter-foot", Look.NOT_LOOKED);
    assertThat(openChecks()).contains("R2:crown");
    Verdict elsewhere =
        new Fitting(bench.job)
            .judge(bench.part("lifter@3EX"), bench.part("lifter@5EX").home().spot(), false);
    assertThat(elsewhere.word()).isEqualTo("wrong place");
    assertThat(openChecks()).contains("R2:spin");
  }

  @Test
  void r3FlatLifterOfUnknownSlotIsForbiddenUnlessAMachinistPassedIt() {
    planning.make(Change.noting(ChangeKind.SLOT_UNKNOWN, "lifter@3EX", "tag washed off"));
    isMustBeNew(bench.verdict("lifter@3EX"), "R3");
    assertThat(bench.word("lifter@5EX")).isEqualTo("right place");
    passed("R3:machinist@lifter@3EX");
    assertThat(bench.word("lifter@3EX")).isEqualTo("right place");
  }

  @Test
  void r4NewLifterOnUsedCamWaitsForTheLobesToBeMeasured() {
    bench.reuseAll();
    bench.replace("lifter@3EX");
    waitsFor("lifter@3EX", "R4:lobe-lift@3EX");
    assertThat(bench.word("lifter@3EX")).isEqualTo("right place");
  }

  @Test
  void r4SaysNothingInAJobInWhichNobodyHasLookedAtAnything() {
    bench.replace("lifter@3EX");
    assertThat(bench.word("lifter@3EX")).isEqualTo("right place");
  }

  @Test
  void r5FailedLobeTakesAllLiftersWithIt() {
    bench.reuseAll();
    bench.record(new FeatureLooked("lobe@3EX", "lobe-look", Look.FAIL, "pitted"));
    isMustBeNew(bench.verdict("lifter@8IN"), "R5");
    assertThat(toBuy()).contains("cam");
    assertThat(openChecks()).contains("R22:galleries@3EX");
    bench.record(new FeatureLooked("lobe@3EX", "lobe-look", Look.PASS, "it was dirt"));
    assertThat(bench.word("lifter@8IN")).isEqualTo("right place");
  }

  @Test
  void r6NewCamAsksForEndPlayAndSaysThatCamBearingsMayGoWithIt() {
    made(ChangeKind.NEW_FLAT_CAM, "");
    assertThat(openChecks()).contains("R6:end-play", "R6:drive");
    assertThat(bench.word("cam-bearing@C2")).isEqualTo("right place");
  }

  @Test
  void r7RollerConversionNeedsNewLiftersAndShorterPushrods() {
    made(ChangeKind.FLAT_TO_ROLLER, "");
    isMustBeNew(bench.verdict("pushrod@3EX"), "R7");
    isMustBeNew(bench.verdict("lifter@3EX"), "R7");
    assertThat(openChecks()).contains("R7:distributor-gear", "R7:thrust-button", "R7:guides");
  }

  @Test
  void r8NewPushrodWaitsUntilBothItsMatesWereLookedAt() {
    bench.reuseAll();
    bench.replace("pushrod@3EX");
    assertThat(bench.word("pushrod@5EX")).isEqualTo("right place");
    waitsFor("pushrod@3EX", "R8:both-ends@3EX");
    assertThat(bench.word("pushrod@3EX")).isEqualTo("right place");
  }

  @Test
  void r9MoreLiftAsksForCoilBindSealGapSlotAndPistonClearance() {
    made(ChangeKind.LIFT_INCREASED, "");
    waitsFor("spring@3EX", "R9:coil-bind");
    waitsFor("spring@3EX", "R9:retainer-seal");
    waitsFor("spring@3EX", "R9:guide-top");
    assertThat(bench.word("spring@3EX")).isEqualTo("right place");
    waitsFor("rocker@3EX", "R9:rocker-slot");
    waitsFor("rocker@3EX", "R9:studs");
    assertThat(bench.word("rocker@3EX")).isEqualTo("right place");
    assertThat(openChecksOfTheChange()).containsExactly("R9:studs-after", "R9:piston-valve");
  }

  @Test
  void r10NewRockerTakesANewPivotAndIsChecked() {
    bench.reuseAll();
    bench.replace("rocker@3EX");
    assertThat(rules("pivot@3EX")).contains("R10");
    assertThat(bench.word("pivot@3EX")).isEqualTo("wrong mate");
    assertThat(bench.word("pivot@5EX")).isEqualTo("right place");
    waitsFor("rocker@3EX", "R10:ratio@3EX");
    waitsFor("rocker@3EX", "R10:oil-hole@3EX");
    assertThat(bench.word("rocker@3EX")).isEqualTo("right place");
    assertThat(openChecks()).contains("R10:tip-sweep@3EX");
  }

  @Test
  void r11ThinnerGasketAsksForThePushrodLength() {
    made(ChangeKind.GASKET_THICKNESS, "");
    waitsFor("pushrod@3EX", "R11:pushrod-length");
    assertThat(bench.word("pushrod@3EX")).isEqualTo("right place");
    assertThat(openChecks()).contains("R11:preload", "R11:sweep");
  }

  @Test
  void r11NewRockerOrLifterAsksForThePushrodLengthOfItsOwnValve() {
    bench.reuseAll();
    bench.replace("rocker@3EX");
    bench.replace("lifter@5IN");
    waitsFor("pushrod@3EX", "R10:pushrod-ends@3EX");
    waitsFor("pushrod@3EX", "R11:pushrod-length@3EX");
    waitsFor("pushrod@5IN", "R4:pushrod-ends@5IN");
    waitsFor("pushrod@5IN", "R11:pushrod-length@5IN");
    assertThat(bench.word("pushrod@3EX")).isEqualTo("right place");
    assertThat(bench.word("pushrod@5EX")).isEqualTo("right place");
  }

  @Test
  void r11LoweredHeadLongerValveAndSmallerBaseCircleAskForThePushrodLengthToo() {
    for (ChangeKind kind :
        List.of(
            ChangeKind.NEW_FLAT_CAM,
            ChangeKind.CAM_REGROUND,
            ChangeKind.FLAT_TO_ROLLER,
            ChangeKind.HEAD_MILLED,
            ChangeKind.DECK_MILLED,
            ChangeKind.VALVE_JOB,
            ChangeKind.GASKET_THICKNESS)) {
      String where = kind.reach().where(bench.job.state().layout()).get(0);
      assertThat(planning.preview(Change.at(kind, where)))
          .as(kind.words())
          .extracting(Consequence::name)
          .contains("pushrod-length", "preload", "sweep");
    }
  }

  @Test
  void r12ValveJobOnOneBankBindsThatBankAlone() {
    made(ChangeKind.VALVE_JOB, "left");
    assertThat(toBuy()).containsExactly("gasket set", "seals", STRETCH, "valve stem seals");
    assertThat(pieces("valve stem seals")).isEqualTo(8);
    for (String other : List.of("spring@2EX", "valve@2EX", "pushrod@2EX")) {
      assertThat(bench.word(other)).isEqualTo("right place");
    }
    waitsFor("spring@3EX", "R12:installed-height@left");
    waitsFor("valve@3EX", "R12:tip-height@left");
    waitsFor("valve@3EX", "R12:margin@left");
    waitsFor("valve@3EX", "R12:seat-width@left");
    waitsFor("pushrod@3EX", "R11:pushrod-length@left");
    assertThat(bench.word("pushrod@3EX")).isEqualTo("right place");
    assertThat(openChecks()).contains("R12:leak-test@left");
  }

  private static final String STRETCH = "bolts that are tightened by angle, where there are any";

  @Test
  void r13NewValveIsMeasuredInItsGuideAndLapped() {
    bench.reuseAll();
    bench.replace("valve@3EX");
    waitsFor("valve@3EX", "R13:guide@3EX");
    waitsFor("valve@3EX", "R13:seat@3EX");
    assertThat(bench.word("valve@3EX")).isEqualTo("right place");
    assertThat(bench.word("pushrod@3EX")).isEqualTo("not cleared");
    assertThat(bench.word("pushrod@5EX")).isEqualTo("right place");
  }

  @Test
  void r14MilledHeadOfAVAsksForIntakeFacesAndTellsTheChainOfReasons() {
    made(ChangeKind.HEAD_MILLED, "left");
    assertThat(openChecks())
        .contains(
            "R14:intake-faces@left",
            "R14:compression-ratio@left",
            "R14:blind-holes@left",
            "R14:piston-head@left");
    assertThat(sentences()).contains("Cut both heads of the engine alike.");
    Consequence pushrods =
        planning.standing().stream()
            .map(StandingRule::consequence)
            .filter(consequence -> consequence.key().equals("R11:pushrod-length@left"))
            .findFirst()
            .orElseThrow();
    assertThat(pushrods.reasons())
        .containsExactly("head milled, left bank", "valvetrain geometry changed, left bank");
  }

  @Test
  void r14MilledHeadOfAnInlineEngineHasNoIntakeFacesToCorrect() {
    BenchJob inline = BenchJob.inline4();
    Planning plans = new Planning(inline.job);
    plans.make(Change.at(ChangeKind.HEAD_MILLED, "single"));
    assertThat(plans.openChecks())
        .extracting(rule -> rule.consequence().name())
        .contains("compression-ratio")
        .doesNotContain("intake-faces");
  }

  @Test
  void r15MilledDeckAsksForDeckClearanceAndTimingCoverToo() {
    made(ChangeKind.DECK_MILLED, "right");
    assertThat(openChecks())
        .contains("R15:deck-clearance@right", "R15:timing-cover@right", "R11:pushrod-length@right");
    assertThat(toBuy()).contains("head gaskets");
    assertThat(sentences()).contains("Cut both decks of the block alike.");
    assertThat(sentences()).noneMatch(words -> words.startsWith("Cut both heads"));
  }

  @Test
  void r16GroundRodJournalsNeedNewRodShellsAndLeaveTheMainsAlone() {
    made(ChangeKind.ROD_JOURNALS_GROUND, "");
    isMustBeNew(bench.verdict("rod-shell@R3U"), "R16");
    assertThat(bench.word("main-shell@M2L")).isEqualTo("right place");
    bench.replace("rod-shell@R3U");
    waitsFor("rod-shell@R3U", "R16:rod-fillets");
    assertThat(bench.word("rod-shell@R3U")).isEqualTo("right place");
    assertThat(openChecksOfTheChange()).containsExactly("R16:rod-clearance");
  }

  @Test
  void r16GroundMainJournalsNeedNewMainShells() {
    made(ChangeKind.MAIN_JOURNALS_GROUND, "");
    isMustBeNew(bench.verdict("main-shell@M2L"), "R16");
    assertThat(openChecks()).contains("R16:thrust");
  }

  @Test
  void r16RodAndMainJournalsGroundTogetherNeedBothKindsOfShell() {
    made(ChangeKind.ROD_JOURNALS_GROUND, "");
    made(ChangeKind.MAIN_JOURNALS_GROUND, "");
    isMustBeNew(bench.verdict("main-shell@M2L"), "R16");
    isMustBeNew(bench.verdict("rod-shell@R3U"), "R16");
  }

  @Test
  void r17PolishedCrankLetsShellsStayOnceMeasured() {
    made(ChangeKind.CRANK_POLISHED, "");
    waitsFor("rod-shell@R3U", "R17:shell-wall");
    assertThat(bench.word("rod-shell@R3U")).isEqualTo("right place");
    assertThat(bench.word("main-shell@M2L")).isEqualTo("right place");
  }

  @Test
  void r18OneBoredCylinderMakesAllPistonsNew() {
    made(ChangeKind.BORED, "B3");
    isMustBeNew(bench.verdict("piston@B8"), "R18");
    assertThat(openChecks()).contains("R18:balance@B3", "R18:compression-ratio@B3");
    assertThat(toBuy()).contains("piston ring sets, oversize");
  }

  @Test
  void r19HonedBoreTakesNewRingsAndKeepsItsPistonOnceMeasured() {
    made(ChangeKind.HONED, "B3");
    assertThat(toBuy()).contains("piston ring sets");
    assertThat(pieces("piston ring sets")).isEqualTo(1);
    assertThat(bench.word("piston@B4")).isEqualTo("right place");
    waitsFor("piston@B3", "R19:piston-clearance@B3");
    assertThat(bench.word("piston@B3")).isEqualTo("right place");
  }

  @Test
  void r20ResizedRodTakesNewShellsItselfAlone() {
    made(ChangeKind.ROD_RESIZED, "B3");
    isMustBeNew(bench.verdict("rod-shell@R3U"), "R20");
    isMustBeNew(bench.verdict("rod-shell@R3L"), "R20");
    assertThat(bench.word("rod-shell@R4U")).isEqualTo("right place");
  }

  @Test
  void r21LineHonedMainsTakeNewShellsAndCapsAreIdentified() {
    made(ChangeKind.LINE_HONED, "");
    isMustBeNew(bench.verdict("main-shell@M4U"), "R21");
    waitsFor("main-cap@M4L", "R21:caps");
    assertThat(bench.word("main-cap@M4L")).isEqualTo("right place");
    assertThat(openChecks())
        .contains("R21:chain", "R21:line-clearance", "R21:line-end-play", "R21:free-turn");
  }

  @Test
  void r22OneFailedShellCondemnsEveryRodAndMainShell() {
    bench.reuseAll();
    bench.look("rod-shell@R3L", "rod-shell-face", Look.FAIL);
    isMustBeNew(bench.verdict("rod-shell@R8U"), "R22");
    isMustBeNew(bench.verdict("main-shell@M1L"), "R22");
    assertThat(openChecks()).contains("R22:journals@R3", "R22:pump@R3", "R22:filter@R3");
    bench.replace("main-shell@M1L");
    waitsFor("main-shell@M1L", "R22:journals@R3");
    waitsFor("main-shell@M1L", "R22:galleries@R3");
    assertThat(bench.word("main-shell@M1L")).isEqualTo("right place");
  }

  @Test
  void r23LostCapMeansMachiningItsHousingUntilItIsFound() {
    bench.record(new PartLost(bench.item("main-cap@M2L"), "not on the bench"));
    isHeldForWork(bench.verdict("main-shell@M2U"), "R23");
    assertThat(bench.word("main-shell@M3U")).isEqualTo("right place");
    bench.record(new PartFound(bench.item("main-cap@M2L")));
    assertThat(bench.word("main-shell@M2U")).isEqualTo("right place");
  }

  @Test
  void r41PlasticGearThatIsStillWholeIsBoughtAnewAndOpensNothing() {
    bench.reuseAll();
    bench.record(new FeatureLooked("timing@", "gear-teeth", Look.SUSPECT, "nylon"));
    assertThat(toBuy()).contains("timing chain with both gears");
    assertThat(openChecks()).doesNotContain("R24:pan");
    bench.record(new FeatureLooked("timing@", "gear-teeth", Look.PASS, "metal"));
    assertThat(toBuy()).doesNotContain("timing chain with both gears");
  }

  @Test
  void r24BrokenPlasticGearSendsYouToThePanAndToTheBearings() {
    bench.reuseAll();
    bench.record(new FeatureLooked("timing@", "gear-teeth", Look.FAIL, "three teeth gone"));
    assertThat(toBuy()).contains("timing chain with both gears");
    assertThat(openChecks()).contains("R24:pan", "R22:journals", "R22:pump");
    waitsFor("pushrod@3EX", "R24:bent");
    assertThat(bench.word("pushrod@3EX")).isEqualTo("right place");
    waitsFor("main-shell@M1L", "R22:journals");
    waitsFor("main-shell@M1L", "R22:galleries");
    assertThat(bench.word("main-shell@M1L")).isEqualTo("right place");
  }

  @Test
  void r25BentPushrodIsReplacedAndItsMatesAreLookedAt() {
    bench.reuseAll();
    bench.look("pushrod@3EX", "pushrod-roll", Look.FAIL);
    isMustBeNew(bench.verdict("pushrod@3EX"), "R25");
    for (String other : List.of("pushrod@5EX", "lifter@5EX", "rocker@5EX", "valve@5EX")) {
      assertThat(bench.word(other)).isEqualTo("right place");
    }
    waitsFor("lifter@3EX", "R25:lifter@3EX");
    waitsFor("rocker@3EX", "R25:rocker-and-stud@3EX");
    waitsFor("valve@3EX", "R25:stem-and-tip@3EX");
    assertThat(bench.word("lifter@3EX")).isEqualTo("right place");
    assertThat(bench.word("lifter@5EX")).isEqualTo("right place");
  }

  @Test
  void r26MovedStudHoldsItsRockerAndAsksForAllTheOthers() {
    made(ChangeKind.STUD_MOVED, "3EX");
    assertThat(bench.word("rocker@2EX")).isEqualTo("right place");
    waitsFor("rocker@5IN", "R26:all-studs@3EX");
    assertThat(bench.word("rocker@5IN")).isEqualTo("right place");
    waitsFor("rocker@3EX", "R26:stud@3EX");
    assertThat(bench.word("rocker@3EX")).isEqualTo("right place");
    assertThat(bench.word("rocker@2EX")).isEqualTo("right place");
  }

  @Test
  void r27GasketsAndSealsAreAlwaysNew() {
    assertThat(toBuy()).containsExactly("gasket set", "seals", STRETCH);
  }

  @Test
  void r28PartFittedElsewhereUnmatesBothPlacesUntilItIsTakenOut() {
    bench.reuseAll();
    Place there = Place.find("pushrod@5EX").orElseThrow();
    bench.record(
        new PartFitted(
            bench.item("pushrod@3EX"), there, "no other", Optional.of(VerdictName.WRONG_PLACE)));
    assertThat(openChecks()).contains("R28:new-mate@pushrod@3EX", "R28:new-mate@pushrod@5EX");
    List.of("pushrod@3EX", "rocker@3EX", "lifter@3EX", "pushrod@5EX", "rocker@5EX", "lifter@5EX")
        .forEach(place -> assertThat(rules(place)).as(place).contains("R28"));
    List.of("spring@3EX", "valve@3EX", "rocker@3IN", "pushrod@1EX")
        .forEach(place -> assertThat(rules(place)).as(place).doesNotContain("R28"));
    bench.job.undo();
    assertThat(openChecks()).doesNotContain("R28:new-mate@pushrod@3EX");
  }

  @Test
  void r29HotTankEatsTheCamBearings() {
    made(ChangeKind.HOT_TANKED, "");
    isMustBeNew(bench.verdict("cam-bearing@C1"), "R29");
    bench.replace("cam-bearing@C1");
    assertThat(bench.word("cam-bearing@C1")).isEqualTo("right place");
    assertThat(pieces("core plugs and gallery plugs")).isEqualTo(1);
    assertThat(openChecksOfTheChange()).containsExactly("R29:plugs-in");
  }

  @Test
  void aPlannedChangeIsShownAndBindsNothingUntilItIsCarriedOut() {
    Planning.Answer answer = planning.plan(Change.of(ChangeKind.NEW_FLAT_CAM));
    assertThat(((Planning.Answer.Planned) answer).plan().consequences()).isNotEmpty();
    assertThat(bench.word("lifter@3EX")).isEqualTo("right place");
    assertThat(planning.plans()).hasSize(1);
    planning.carryOut(1);
    isMustBeNew(bench.verdict("lifter@3EX"), "R1");
    assertThat(planning.plans()).isEmpty();
  }

  @Test
  void aDroppedPlanIsGoneAndItsNumberIsNotUsedAgain() {
    planning.plan(Change.of(ChangeKind.NEW_FLAT_CAM));
    planning.drop(1, "too dear");
    assertThat(planning.plans()).isEmpty();
    planning.plan(Change.of(ChangeKind.HOT_TANKED));
    assertThat(planning.plans()).extracting(PlannedChange::number).containsExactly(2);
  }

  @Test
  void aLaterChangeAsksForTheSameCheckAnew() {
    made(ChangeKind.GASKET_THICKNESS, "");
    passed("R11:pushrod-length");
    assertThat(bench.word("pushrod@3EX")).isEqualTo("right place");
    made(ChangeKind.GASKET_THICKNESS, "");
    assertThat(bench.word("pushrod@3EX")).isEqualTo("not cleared");
  }

  @Test
  void aCheckThatIsNotPassedKeepsHolding() {
    made(ChangeKind.GASKET_THICKNESS, "");
    planning.answer("R11:pushrod-length", Look.SUSPECT, "pattern off center");
    assertThat(bench.word("pushrod@3EX")).isEqualTo("not cleared");
  }

  @Test
  void aChangeTakenBackBindsNothing() {
    made(ChangeKind.NEW_FLAT_CAM, "");
    bench.job.undo();
    assertThat(bench.word("lifter@3EX")).isEqualTo("right place");
  }

  @Test
  void aChangeAtNoSuchPlaceIsRefusedWithThePlacesThatThereAre() {
    assertThat(planning.make(Change.at(ChangeKind.HEAD_MILLED, "middle")))
        .isEqualTo(
            new Planning.Answer.Refused(
                "\"middle\" is not where this engine can have \"head milled\": give one of left,"
                    + " right."));
  }

  @Test
  void anUnknownCheckIsRefused() {
    assertThat(planning.answer("R99:nothing", Look.PASS, ""))
        .isEqualTo(new Planning.Answer.Refused("No rule asks for a check named \"R99:nothing\"."));
  }

  @Test
  void aPartWithoutADecisionIsNotClearedWhereTheJobAsksForOneOnEveryPart() {
    bench.look("pushrod@3EX", "pushrod-roll", Look.PASS);
    assertThat(bench.word("pushrod@5EX")).isEqualTo("right place");
    new Deciding(bench.job).askEveryPart(true);
    assertThat(bench.word("pushrod@5EX")).isEqualTo("not cleared");
    bench.decide("pushrod@5EX", Decision.REUSE);
    assertThat(bench.word("pushrod@5EX")).isEqualTo("right place");
  }

  @Test
  void aLookAtAFeatureHoldsNothingUp() {
    bench.record(new FeatureLooked("lobe@3EX", "lobe-look", Look.PASS, ""));
    assertThat(bench.word("pushrod@5EX")).isEqualTo("right place");
    assertThat(bench.job.state().bench().findDecision(bench.item("pushrod@5EX")))
        .isEqualTo(Optional.empty());
  }

  @Test
  void r33NewRodTakesNewShellsAndIsMeasuredFirst() {
    bench.replace("rod@R3U");
    assertThat(bench.word("rod-shell@R3U")).isEqualTo("wrong mate");
    assertThat(bench.word("rod-cap@R3L")).isEqualTo("wrong mate");
    bench.replace("rod-cap@R3L");
    bench.replace("rod-shell@R3U");
    assertThat(bench.word("rod-shell@R3U")).isEqualTo("right place");
    assertThat(bench.word("rod-cap@R3L")).isEqualTo("right place");
    waitsFor("rod@R3U", "R33:big-end@R3");
    assertThat(bench.word("rod@R3U")).isEqualTo("right place");
    assertThat(openChecks()).contains("R33:weight@R3", "R33:side-play@R3");
  }
}
