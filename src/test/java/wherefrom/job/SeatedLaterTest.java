package wherefrom.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wherefrom.engine.Section;
import wherefrom.engine.Spots;
import wherefrom.inspection.Decision;
import wherefrom.inspection.Look;
import wherefrom.job.change.Planning;
import wherefrom.job.entry.ChangeMade;
import wherefrom.job.entry.DecisionsAsked;
import wherefrom.job.entry.OffForWashing;
import wherefrom.job.entry.PartLost;
import wherefrom.job.entry.PartOut;
import wherefrom.job.entry.PhotoAdded;
import wherefrom.job.entry.SentToShop;
import wherefrom.job.handling.Handling;
import wherefrom.job.puttogether.Fitting;
import wherefrom.job.puttogether.ToFit;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.rules.Ban;
import wherefrom.rules.OpenCheck;
import wherefrom.rules.Verdict;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;
import wherefrom.rules.consequence.ShopWork;

/** What comes up after a part went in, and what places and new parts are in the meantime. */
class SeatedLaterTest {
  private final BenchJob bench = BenchJob.v8();
  private final OpenJob job = bench.job;
  private final Fitting fitting = new Fitting(job);
  private final ToFit missing = new ToFit(job);

  private static Place place(String key) {
    return Place.find(key).orElseThrow();
  }

  private void fitAll() {
    for (Place place : missing.places()) {
      Part part = job.state().bench().findRightful(place).orElseThrow();
      assertThat(fitting.fit(part, place.spot(), false).stops()).isFalse();
    }
  }

  private Verdict at(String partFrom, String spot) {
    return fitting.judge(bench.part(partFrom), Spots.find(spot).orElseThrow(), false);
  }

  private void onPurpose(String partFrom, String spot) {
    fitting.fitOnPurpose(bench.part(partFrom), Spots.find(spot).orElseThrow(), "matched pair");
  }

  private void made(ChangeKind kind, String where) {
    assertThat(new Planning(job).make(Change.at(kind, where)))
        .isInstanceOf(Planning.Answer.Made.class);
  }

  private PlaceState state(String key) {
    return job.state().state(place(key));
  }

  private List<String> bans(String partFrom, String at) {
    return job.state().bench().listBans(bench.item(partFrom), place(at)).stream()
        .map(Ban::rule)
        .toList();
  }

  private List<String> standing() {
    return job.state().rules().all().stream().map(rule -> rule.consequence().key()).toList();
  }

  @Test
  void aPlaceSaysWhereItsPartIs() {
    bench.record(new OffForWashing(bench.item("pushrod@1IN"), 4));
    bench.record(
        new SentToShop(1, List.of(bench.item("pushrod@2IN")), "straighten", ShopWork.OTHER));
    bench.record(new PartLost(bench.item("pushrod@3IN"), ""));
    fitting.fit(bench.part("pushrod@4IN"), Spots.find("4IN").orElseThrow(), false);
    onPurpose("pushrod@6IN", "8IN");
    missing.leave(place("pushrod@5IN"), "left out for the trial run");
    assertThat(state("pushrod@1IN")).isEqualTo(PlaceState.WASHING);
    assertThat(state("pushrod@2IN")).isEqualTo(PlaceState.AT_SHOP);
    assertThat(state("pushrod@3IN")).isEqualTo(PlaceState.MISSING);
    assertThat(state("pushrod@4IN")).isEqualTo(PlaceState.FITTED);
    assertThat(state("pushrod@5IN")).isEqualTo(PlaceState.EXCUSED);
    assertThat(state("pushrod@6IN")).isEqualTo(PlaceState.OPEN);
    assertThat(state("pushrod@7IN")).isEqualTo(PlaceState.OUT);
    assertThat(state("pushrod@8IN")).isEqualTo(PlaceState.OTHER_FITTED);
    assertThat(Benches.fresh().state().state(place("pushrod@1IN"))).isEqualTo(PlaceState.IN);
    assertThat(Benches.fresh().state().state(place("piston@B1"))).isEqualTo(PlaceState.OPEN);
    assertThat(Benches.fresh().state().findSeat(1)).contains(place("rocker@1IN"));
    assertThat(state("pushrod@1IN").words()).isEqualTo("washing");
    assertThat(job.state().name()).isEqualTo("Test engine");
  }

  /** A reason covers what was known when it was given, and nothing that came after. */
  @Test
  void aReasonDoesNotCoverADecisionThatIsMadeLater() {
    fitAll();
    bench.look("main-shell@M3L", "main-shell-back", Look.FAIL);
    onPurpose("main-shell@M3L", "M3L");
    assertThat(state("main-shell@M3L")).isEqualTo(PlaceState.FITTED);
    bench.decide("main-shell@M3L", Decision.REPLACE);
    assertThat(state("main-shell@M3L")).isEqualTo(PlaceState.FITTED_BUT);
  }

  @Test
  void aReasonDoesNotCoverARodThatMovesAwayLater() {
    fitAll();
    bench.look("rod-cap@R3L", "rod-cap-mark", Look.FAIL);
    onPurpose("rod-cap@R3L", "R3L");
    assertThat(state("rod-cap@R3L")).isEqualTo(PlaceState.FITTED);
    new Handling(job).tookOut(bench.item("rod@R5U"), "");
    onPurpose("rod@R3U", "R5U");
    assertThat(state("rod-cap@R3L")).isEqualTo(PlaceState.FITTED_BUT);
  }

  /** Fitted anew and rightly, a part is judged anew: the old reason is of an earlier fit. */
  @Test
  void aReasonEndsWithTheFitThatItWasGivenFor() {
    fitAll();
    bench.look("main-shell@M3L", "main-shell-back", Look.FAIL);
    onPurpose("main-shell@M3L", "M3L");
    new Handling(job).tookOut(bench.item("main-cap@M3L"), "");
    new Handling(job).tookOut(bench.item("main-shell@M3L"), "seen again");
    assertThat(job.state().bench().reasonGiven(bench.item("main-shell@M3L"))).isZero();
    assertThat(job.state().onPurpose()).isEmpty();
    bench.decide("main-shell@M3L", Decision.REUSE);
    assertThat(fitting.fit(bench.part("main-shell@M3L"), Spots.find("M3L").orElseThrow(), false))
        .isInstanceOf(Verdict.RightPlace.class);
    assertThat(job.state().bench().reasonGiven(bench.item("main-shell@M3L"))).isZero();
    assertThat(job.state().onPurpose()).isEmpty();
  }

  @Test
  void anExcuseForAnEmptyPlaceEndsOnceAPartIsFitted() {
    missing.leave(place("pushrod@5IN"), "comes on Monday");
    assertThat(job.state().findExcuse(place("pushrod@5IN"))).contains("comes on Monday");
    fitting.fit(bench.part("pushrod@5IN"), Spots.find("5IN").orElseThrow(), false);
    assertThat(job.state().findExcuse(place("pushrod@5IN"))).isEmpty();
    new Handling(job).tookOut(bench.item("pushrod@5IN"), "");
    assertThat(job.state().findExcuse(place("pushrod@5IN"))).isEmpty();
    assertThat(missing.places()).contains(place("pushrod@5IN"));
  }

  @Test
  void onlyTheSectionThatHoldsThePartStaysOpen() {
    fitAll();
    assertThat(ToFit.isNothing(job.state())).isTrue();
    bench.look("main-shell@M3L", "main-shell-back", Look.FAIL);
    assertThat(ToFit.isNothing(job.state())).isFalse();
    assertThat(missing.fittedBut(Section.RODS)).isEmpty();
    assertThat(missing.fittedBut(Section.MAINS)).hasSize(1);
    assertThat(missing.finish(Section.RODS)).isTrue();
    assertThat(missing.finish(Section.MAINS)).isFalse();
    assertThat(job.state().closedSections()).containsExactly("rods");
  }

  @Test
  void aSectionWithoutATrackedPlaceIsNotAskedFor() {
    assertThat(new ToFit(BenchJob.fewKinds().job).sections())
        .extracting(Section::key)
        .containsExactly("valvetrain-left", "valvetrain-right", "rods", "mains");
    assertThat(missing.sections()).contains(Section.CAM);
  }

  /** The place waits for a new lifter: one that ran on another lobe is none. */
  @Test
  void aUsedLifterDoesNotTakeThePlaceThatWaitsForANewOne() {
    bench.replace("lifter@5EX");
    assertThat(at("lifter@3EX", "5EX").word()).isEqualTo("wrong place");
  }

  @Test
  void aNewIntakeValveOnAnExhaustSeatStaysAnIntakeValve() {
    bench.replace("valve@3IN");
    bench.replace("valve@3EX");
    onPurpose("valve@3IN", "3EX");
    assertThat(bench.part("valve@3IN").home()).isEqualTo(place("valve@3IN"));
    assertThat(job.state().findFitted(place("valve@3EX"))).contains(bench.part("valve@3IN"));
    assertThat(state("valve@3EX")).isEqualTo(PlaceState.OTHER_FITTED);
  }

  @Test
  void usedLiftersAskOnlyWhereOneIsOutAndStillInUse() {
    OpenJob inside = Benches.fresh(PartKind.all());
    inside.record(new PartOut(Benches.part(inside, "pushrod@3EX").item()));
    assertThat(inside.state().rules().all())
        .noneMatch(rule -> rule.consequence().rule().equals("R2"));
    inside.record(new PartOut(Benches.part(inside, "lifter@3EX").item()));
    assertThat(inside.state().rules().all())
        .anyMatch(rule -> rule.consequence().key().equals("R2:same-lobe"));
    Handling handling = new Handling(inside);
    handling.replace(Benches.part(inside, "lifter@3EX").item(), "worn out");
    assertThat(inside.state().rules().all())
        .noneMatch(rule -> rule.consequence().rule().equals("R2"));
  }

  /** All lifters are new with another cam: nothing is asked of the lobes that went out with it. */
  @Test
  void withAnotherCamNothingIsAskedForTheOldOne() {
    bench.replace("lifter@3EX");
    assertThat(standing()).contains("R2:same-lobe", "R4:lobe-lift@3EX");
    made(ChangeKind.NEW_FLAT_CAM, "");
    assertThat(standing())
        .contains("R1:new")
        .doesNotContain("R2:same-lobe", "R2:crown", "R4:lobe-lift@3EX");
  }

  @Test
  void aWornFootIsThatOfOneLifterWhereverItIsPut() {
    bench.look("lifter@3EX", "lifter-foot", Look.FAIL);
    assertThat(bans("lifter@3EX", "lifter@3EX")).contains("R2");
    assertThat(bans("lifter@3EX", "lifter@5EX")).contains("R2");
    assertThat(bans("lifter@5EX", "lifter@3EX")).isEmpty();
  }

  /** Each change asks anew for what was checked before it. */
  @Test
  void aLaterChangeAsksForTheSameCheckAgain() {
    bench.look("pushrod@1IN", "pushrod-roll", Look.PASS);
    bench.replace("lifter@3EX");
    passAll("pushrod@3EX");
    assertThat(bench.word("pushrod@3EX")).isEqualTo("right place");
    bench.replace("valve@3EX");
    assertThat(bench.verdict("pushrod@3EX").sentence()).contains("(rule 11)");
    passAll("pushrod@3EX");
    assertThat(bench.word("pushrod@3EX")).isEqualTo("right place");
  }

  private void passAll(String key) {
    job.state().bench().listOpenChecks(bench.item(key), place(key)).stream()
        .map(OpenCheck::key)
        .forEach(check -> new Planning(job).answer(check, Look.PASS, ""));
  }

  /** A change that was recorded binds at once, whatever was only said before it. */
  @Test
  void aCheckThatWasOnlySaidBindsOnceARecordedChangeAsksForItToo() {
    bench.replace("lifter@3EX");
    assertThat(bench.word("pushrod@3EX")).isEqualTo("right place");
    bench.record(new ChangeMade(0, Change.at(ChangeKind.GEOMETRY_CHANGED, "3EX")));
    assertThat(bench.verdict("pushrod@3EX").sentence()).contains("(rule 11)");
    bench.replace("valve@3EX");
    assertThat(bench.verdict("pushrod@3EX").sentence()).contains("(rule 11)");
  }

  /** The reason was given for what was known: the other gasket came after it. */
  @Test
  void aReasonDoesNotCoverAChangeThatIsMadeLater() {
    bench.look("pushrod@3EX", "pushrod-roll", Look.SUSPECT);
    onPurpose("pushrod@3EX", "3EX");
    assertThat(state("pushrod@3EX")).isEqualTo(PlaceState.FITTED);
    made(ChangeKind.GASKET_THICKNESS, "");
    assertThat(state("pushrod@3EX")).isEqualTo(PlaceState.FITTED_BUT);
    assertThat(missing.fittedBut().get(0).sentence()).contains("(rule 11");
  }

  @Test
  void aPhotographHangsOnItsPart() {
    bench.record(new PhotoAdded(bench.item("piston@B3"), "ab12.jpg", "the crown"));
    bench.record(new PhotoAdded(0, "cd34.jpg", "the whole engine"));
    assertThat(job.state().getPart(bench.item("piston@B3")).remarks())
        .extracting(Remark::text, Remark::photo)
        .containsExactly(org.assertj.core.groups.Tuple.tuple("the crown", Optional.of("ab12.jpg")));
  }

  /** A decision is wanted on what came out and goes back; not on new parts, nor on what is in. */
  @Test
  void aDecisionOnEveryPartIsAskedOfUsedPartsThatCameOut() {
    bench.record(new DecisionsAsked(true));
    assertThat(bench.verdict("pushrod@3EX").sentence()).contains("nothing is decided about it");
    bench.replace("pushrod@3EX");
    assertThat(bench.verdict("pushrod@3EX").sentence()).doesNotContain("nothing is decided");
    OpenJob inside = Benches.fresh(PartKind.all());
    inside.record(new DecisionsAsked(true));
    assertThat(inside.state().state(place("pushrod@3EX"))).isEqualTo(PlaceState.IN);
  }
}
