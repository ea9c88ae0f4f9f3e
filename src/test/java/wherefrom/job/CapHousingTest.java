package wherefrom.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import wherefrom.engine.Spots;
import wherefrom.inspection.Look;
import wherefrom.job.change.Planning;
import wherefrom.job.entry.BackFromShop;
import wherefrom.job.entry.ChangeMade;
import wherefrom.job.entry.PartLost;
import wherefrom.job.entry.SentToShop;
import wherefrom.job.handling.Handling;
import wherefrom.job.puttogether.Fitting;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.rules.Ban;
import wherefrom.rules.Verdict;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;
import wherefrom.rules.consequence.ShopWork;

/** Caps and the housings they were machined with; pivots and the rockers they run under. */
class CapHousingTest {
  private final BenchJob bench = BenchJob.v8();
  private final OpenJob job = bench.job;
  private final Planning planning = new Planning(job);
  private final Fitting fitting = new Fitting(job);

  private void made(ChangeKind kind, String where) {
    assertThat(planning.make(Change.at(kind, where))).isInstanceOf(Planning.Answer.Made.class);
  }

  private Verdict at(String partFrom, String spot) {
    return fitting.judge(bench.part(partFrom), Spots.find(spot).orElseThrow(), false);
  }

  private void onPurpose(String partFrom, String spot) {
    fitting.fitOnPurpose(bench.part(partFrom), Spots.find(spot).orElseThrow(), "matched pair");
  }

  private void takeOut(String partFrom) {
    new Handling(job).tookOut(bench.item(partFrom), "");
  }

  private boolean waitsForItsHousing(String place) {
    Place at = Place.find(place).orElseThrow();
    return job.state().bench().listBans(bench.item(place), at).stream()
        .map(Ban::rule)
        .anyMatch("R23"::equals);
  }

  private boolean hasItsRod(String cap) {
    return job.state().bench().findLeader(bench.item(cap)).isPresent();
  }

  private void isNotItsRods(int... cylinders) {
    for (int cylinder : cylinders) {
      bench.look("rod-cap@R" + cylinder + "L", "rod-cap-mark", Look.FAIL);
    }
  }

  @Test
  void aRodThatIsResizedWithItsCapWaitsNoMoreAndTheOthersDo() {
    isNotItsRods(3, 5);
    bench.look("main-cap@M3L", "main-cap-mark", Look.FAIL);
    assertThat(waitsForItsHousing("rod-cap@R3L")).isTrue();
    made(ChangeKind.ROD_RESIZED, "B3");
    assertThat(waitsForItsHousing("rod-cap@R3L")).isFalse();
    assertThat(waitsForItsHousing("rod-cap@R5L")).isTrue();
    assertThat(waitsForItsHousing("main-cap@M3L")).isTrue();
  }

  @Test
  void allRodsResizedTogetherWaitNoMoreButTheMainsDo() {
    isNotItsRods(3, 5);
    bench.look("main-cap@M3L", "main-cap-mark", Look.FAIL);
    bench.record(new ChangeMade(0, Change.at(ChangeKind.ROD_RESIZED, "")));
    assertThat(waitsForItsHousing("rod-cap@R3L")).isFalse();
    assertThat(waitsForItsHousing("rod-cap@R5L")).isFalse();
    assertThat(waitsForItsHousing("main-cap@M3L")).isTrue();
  }

  @Test
  void lineHoningEndsTheWaitOfTheMainsAlone() {
    isNotItsRods(3);
    bench.look("main-cap@M3L", "main-cap-mark", Look.FAIL);
    made(ChangeKind.LINE_HONED, "");
    assertThat(waitsForItsHousing("main-cap@M3L")).isFalse();
    assertThat(waitsForItsHousing("rod-cap@R3L")).isTrue();
  }

  @Test
  void aLostMainCapLeavesItsHousingOpenAndALostPushrodNone() {
    bench.record(new PartLost(bench.item("main-cap@M2L"), ""));
    bench.record(new PartLost(bench.item("rod-cap@R4L"), ""));
    bench.record(new PartLost(bench.item("pushrod@3EX"), ""));
    assertThat(waitsForItsHousing("main-shell@M2U")).isTrue();
    assertThat(waitsForItsHousing("rod@R4U")).isTrue();
    assertThat(planning.made()).noneMatch(change -> change.where().equals("3EX"));
  }

  /** A new rod comes with a cap of its own: whatever was said of the old one's is over. */
  @Test
  void aNewRodAsksNothingOfTheCapOfTheOldOne() {
    isNotItsRods(3);
    bench.replace("rod@R3U");
    assertThat(waitsForItsHousing("rod@R3U")).isFalse();
    bench.replace("rod-cap@R5L");
    onPurpose("rod@R5U", "R5U");
    onPurpose("rod-cap@R5L", "R5L");
    takeOut("rod-cap@R5L");
    takeOut("rod@R5U");
    bench.replace("rod@R5U");
    assertThat(waitsForItsHousing("rod@R5U")).isFalse();
    assertThat(at("rod-cap@R5L", "R5L").word()).isEqualTo("wrong mate");
  }

  /** A lost cap is of no more interest once its rod is gone. */
  @Test
  void theCapOfARodThatIsGoneOpensNoHousing() {
    bench.replace("rod@R3U");
    bench.record(new PartLost(bench.item("rod-cap@R3L"), "thrown away"));
    assertThat(waitsForItsHousing("rod@R3U")).isFalse();
    isNotItsRods(3);
    assertThat(waitsForItsHousing("rod@R3U")).isFalse();
  }

  @Test
  void aNewCapIsItsRodsOnceTheHousingWasMachinedWithIt() {
    bench.replace("rod-cap@R3L");
    bench.replace("rod-cap@R5L");
    assertThat(hasItsRod("rod-cap@R3L")).isFalse();
    made(ChangeKind.ROD_RESIZED, "B3");
    assertThat(hasItsRod("rod-cap@R3L")).isTrue();
    assertThat(hasItsRod("rod-cap@R5L")).isFalse();
    onPurpose("rod@R3U", "R5U");
    assertThat(at("rod-cap@R3L", "R5L").word()).isEqualTo("right place");
    assertThat(at("rod-cap@R3L", "R3L").word()).isEqualTo("wrong place");
  }

  @Test
  void otherWorkThanResizingMatchesNoCap() {
    bench.replace("rod-cap@R3L");
    made(ChangeKind.HONED, "B3");
    made(ChangeKind.BORED, "B3");
    assertThat(hasItsRod("rod-cap@R3L")).isFalse();
  }

  @Test
  void aRodThatComesBackResizedFromTheShopHasItsCap() {
    bench.replace("rod-cap@R3L");
    List<Integer> both = List.of(bench.item("rod@R3U"), bench.item("rod-cap@R3L"));
    bench.record(new SentToShop(1, both, "resize", ShopWork.RESIZE));
    assertThat(hasItsRod("rod-cap@R3L")).isFalse();
    bench.record(new BackFromShop(1, both, ""));
    assertThat(hasItsRod("rod-cap@R3L")).isTrue();
    assertThat(waitsForItsHousing("rod@R3U")).isFalse();
  }

  @Test
  void everyNewRodComesWithOneCap() {
    for (int cylinder : new int[] {3, 5}) {
      bench.replace("rod@R" + cylinder + "U");
      bench.replace("rod-cap@R" + cylinder + "L");
    }
    assertThat(hasItsRod("rod-cap@R3L")).isTrue();
    assertThat(hasItsRod("rod-cap@R5L")).isTrue();
    assertThat(waitsForItsHousing("rod@R5U")).isFalse();
    onPurpose("rod@R5U", "R3U");
    assertThat(at("rod-cap@R5L", "R3L").word()).isEqualTo("right place");
    assertThat(at("rod-cap@R3L", "R3L").word()).isEqualTo("wrong mate");
  }

  /** Whichever of the two was in first. */
  @Test
  void aNewPivotRunsInWithTheRockerThatItIsFittedWith() {
    bench.replace("pivot@3EX");
    bench.replace("pivot@1EX");
    onPurpose("rocker@3EX", "3EX");
    onPurpose("pivot@3EX", "3EX");
    onPurpose("pivot@1EX", "1EX");
    onPurpose("rocker@1EX", "1EX");
    for (String one : List.of("pivot@3EX", "rocker@3EX", "pivot@1EX", "rocker@1EX")) {
      takeOut(one);
    }
    onPurpose("rocker@3EX", "5EX");
    onPurpose("rocker@1EX", "7EX");
    assertThat(at("pivot@3EX", "5EX").word()).isEqualTo("right place");
    assertThat(at("pivot@3EX", "3EX").word()).isEqualTo("wrong place");
    assertThat(at("pivot@1EX", "7EX").word()).isEqualTo("right place");
    assertThat(at("pivot@1EX", "1EX").word()).isEqualTo("wrong place");
  }

  /** The shell in use is named, not the one that was thrown away. */
  @Test
  void theWayOutNeverNamesARetiredMate() {
    Part old = bench.part("rod-shell@R3U");
    bench.replace("rod-shell@R3U");
    onPurpose("rod@R3U", "R5U");
    Verdict wrong = at("rod-shell@R5U", "R5U");
    assertThat(wrong.word()).isEqualTo("wrong mate");
    assertThat(wrong.wayOut()).doesNotContain(String.format("%04d", old.item()));
    assertThat(job.state().bench().findRightful(old.home()))
        .isNotEqualTo(java.util.Optional.of(old));
  }

  /** No work on the housing helps a shell that is of the wrong size. */
  @Test
  void whatMustBeNewIsSaidBeforeWorkThatIsOpen() {
    isNotItsRods(3);
    made(ChangeKind.ROD_JOURNALS_GROUND, "");
    assertThat(bench.word("rod-shell@R3U")).isEqualTo("must be new");
    assertThat(waitsForItsHousing("rod-shell@R3U")).isTrue();
  }

  @Test
  void whereTheCapHasNoRodAnyMoreANewOneIsTheWayOut() {
    bench.replace("rod@R3U");
    assertThat(at("rod-cap@R3L", "R3L").wayOut())
        .isEqualTo("Fit the mate of what is here, or a new rod cap.");
  }
}
