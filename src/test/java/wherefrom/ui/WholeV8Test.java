package wherefrom.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.engine.ReadyLayouts;
import wherefrom.engine.Spots;
import wherefrom.job.EngineJob;
import wherefrom.job.OpenJob;
import wherefrom.job.entry.PartFitted;
import wherefrom.job.entry.StopGiven;
import wherefrom.job.puttogether.ToFit;
import wherefrom.job.shelf.Shelf;
import wherefrom.job.tags.TagBook;
import wherefrom.logbook.FileShelf;
import wherefrom.parts.Action;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.parts.TagCode;
import wherefrom.parts.TagType;
import wherefrom.parts.Whereabouts;
import wherefrom.quantity.UnitSystem;
import wherefrom.rules.VerdictName;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.ScannedWindow;

/**
 * A V8 with 74 parts out and back, over real files. The whole window is shown and has the keys;
 * every scan, right or wrong, is typed by a robot. Presses of the finger go straight to the target.
 */
class WholeV8Test {
  @TempDir Path folder;

  private ScannedWindow window;
  private OpenJob job;
  private String otherTag;

  @Test
  void everyPartGoesOutAndBackAndEveryWrongScanIsAnswered() {
    begin();
    try (ScannedWindow shown = window) {
      assertThat(shown.hasKeys()).isTrue();
      takeApart();
      replaceOne();
      putTogether();
    }
    EngineJob before = job.state();
    job.close();
    replay(before);
  }

  private Shelf shelf() {
    SplittableRandom random = new SplittableRandom(20260504);
    return new FileShelf(folder, SampleJob.CLOCK, random::nextInt);
  }

  private void begin() {
    Shelf shelf = shelf();
    OpenJob other = shelf.create(begun("Gray six"));
    otherTag = new TagCode(TagType.PART, other.state().engine(), 9, 1).digits();
    other.close();
    window = new ScannedWindow(shelf);
    job = shelf.create(begun("Launch V8"));
    window.open(job);
  }

  private static Shelf.NewJob begun(String name) {
    return new Shelf.NewJob(
        name, ReadyLayouts.find("v8-odd-even").orElseThrow(), PartKind.alwaysOn(), UnitSystem.INCH);
  }

  private String tag(String placeKey) {
    return book()
        .of(job.state().findOwner(Place.find(placeKey).orElseThrow()).orElseThrow())
        .digits();
  }

  private String card(String spotKey) {
    return book().of(Spots.find(spotKey).orElseThrow()).digits();
  }

  private TagBook book() {
    return new TagBook(job.state(), engine -> Optional.empty());
  }

  private void takeApart() {
    window.show(ScreenId.TAKE_APART);
    List<String> tags =
        job.state().parts().stream().map(part -> book().of(part.part()).digits()).toList();
    assertThat(tags).hasSize(74);
    tags.forEach(window::burst);
    window.burst(tags.get(0));
    assertThat(window.words()).contains("Already out").contains("All are out");
    assertThat(job.state().parts()).allMatch(part -> part.where() == Whereabouts.OUT);
    assertThat(new ToFit(job).places()).hasSize(74);
  }

  private String retired;

  private void replaceOne() {
    Place place = Place.find("lifter@7IN").orElseThrow();
    retired = tag("lifter@7IN");
    window.show(ScreenId.BENCH_MAP);
    window.burst(retired);
    window.press("More");
    window.pressOnSomePage("A new part instead");
    window.press("worn out");
    assertThat(window.words()).contains("1 label");
    window.press("Print 1 sheet");
    assertThat(window.printed()).hasSize(1);
    assertThat(job.state().findOwner(place).orElseThrow().fresh()).isTrue();
    window.home();
  }

  private void putTogether() {
    window.show(ScreenId.PUT_TOGETHER);
    swapped();
    threeWayCycle();
    upperForLower();
    strangers();
    alreadyFittedAndTakenBack();
    onPurpose();
    theRest();
    assertThat(window.words()).contains("none to fit");
  }

  private void pair(String placeKey, String spotKey) {
    window.burst(tag(placeKey));
    window.burst(card(spotKey));
  }

  private void stops(String... lines) {
    assertThat(window.words()).contains("STOP").contains(lines);
    assertThat(lastStop().stands()).isTrue();
  }

  private StopGiven lastStop() {
    return job.history().stream()
        .filter(logged -> logged.entry() instanceof StopGiven)
        .reduce((first, second) -> second)
        .map(logged -> (StopGiven) logged.entry())
        .orElseThrow();
  }

  private void right(String placeKey) {
    Place place = Place.find(placeKey).orElseThrow();
    assertThat(window.words()).contains("RIGHT PLACE");
    assertThat(job.state().findFitted(place)).isEqualTo(job.state().findOwner(place));
  }

  /** Two pushrods in each other's places: one stop taken back by key, one solved by its part. */
  private void swapped() {
    pair("pushrod@1EX", "3EX");
    stops("From: 1 EX", "Here: 3 EX", "Right part: ");
    assertThat(lastStop().word()).isEqualTo(VerdictName.WRONG_PLACE);
    window.burst(Action.SKIP.code().digits());
    stops("From: 1 EX");
    window.press("UNDO");
    assertThat(window.words()).contains("Taken back");
    pair("pushrod@3EX", "1EX");
    stops("From: 3 EX", "Here: 1 EX");
    window.burst(tag("pushrod@1EX"));
    right("pushrod@1EX");
    pair("pushrod@3EX", "3EX");
    right("pushrod@3EX");
  }

  /** Three rockers in a ring, each fitted on purpose, then put right as the way out says. */
  private void threeWayCycle() {
    purposely("rocker@2EX", "4EX");
    purposely("rocker@4EX", "6EX");
    purposely("rocker@6EX", "2EX");
    window.press("Missing");
    window.press("In each other's places: 3");
    window.press("It is out");
    window.press("It is out");
    window.press("It is out");
    assertThat(window.words()).contains("No part sits in another one's place");
    window.press("Back");
    window.press("Back");
    for (String spot : List.of("2EX", "4EX", "6EX")) {
      pair("rocker@" + spot, spot);
      right("rocker@" + spot);
    }
  }

  private void purposely(String placeKey, String spotKey) {
    pair(placeKey, spotKey);
    stops("Here: " + Spots.find(spotKey).orElseThrow().brief());
    window.burst(Action.YES.code().digits());
    stops("Here: ");
    window.press("Fit it here on purpose");
    window.press("matched pair");
    window.burst(Action.YES.code().digits());
    stops("Hold: matched pair");
    // The YES before led the ring to the tag: one NEXT leads on to the key to be held.
    List.of(Action.NEXT, Action.YES, Action.YES)
        .forEach(card -> window.burst(card.code().digits()));
    assertThat(window.words()).contains("Fitted on purpose");
  }

  private void upperForLower() {
    pair("main-shell@M2U", "M2L");
    stops("From: main 2, upper", "Here: main 2, lower");
    assertThat(lastStop().word()).isEqualTo(VerdictName.WRONG_HALF);
    window.burst(tag("main-shell@M2L"));
    right("main-shell@M2L");
  }

  private void strangers() {
    window.burst(otherTag);
    stops("Tag of: Gray six");
    assertThat(lastStop().word()).isEqualTo(VerdictName.WRONG_ENGINE);
    window.burst(card("5IN"));
    stops("Tag of: Gray six");
    window.press("UNDO");

    window.burst(retired);
    window.burst(card("7IN"));
    stops("Must be new: 7 IN", "retired");
    assertThat(lastStop().word()).isEqualTo(VerdictName.RETIRED);
    window.burst(tag("lifter@7IN"));
    right("lifter@7IN");

    window.burst(new TagCode(TagType.PART, job.state().engine(), 900, 1).digits());
    assertThat(window.words()).contains("Not one of ours");
    assertThat(lastStop().stands()).isFalse();

    window.burst(damaged(tag("pushrod@5EX")));
    assertThat(window.words()).contains("Digits do not agree");

    window.burst(tag("pushrod@5EX"));
    window.burst("https://example.invalid/4006381333931");
    assertThat(window.words()).contains("not one of our tags").contains("5 EX pushrod");
    window.burst(card("5EX"));
    right("pushrod@5EX");
  }

  /** One digit lost to dirt or a dropped key. */
  private static String damaged(String digits) {
    char digit = digits.charAt(10);
    return digits.substring(0, 10) + (char) (digit == '9' ? '0' : digit + 1) + digits.substring(11);
  }

  private void alreadyFittedAndTakenBack() {
    int before = job.history().size();
    pair("pushrod@5EX", "5EX");
    assertThat(window.words()).contains("ALREADY FITTED");
    assertThat(job.history()).hasSize(before);
    pair("pushrod@5EX", "7EX");
    stops("Fitted at: 5 EX");
    window.press("UNDO");

    pair("pushrod@7EX", "7EX");
    right("pushrod@7EX");
    int missing = new ToFit(job).places().size();
    window.burst(Action.UNDO.code().digits());
    assertThat(new ToFit(job).places()).hasSize(missing + 1);
    assertThat(job.state().findFitted(Place.find("pushrod@7EX").orElseThrow())).isEmpty();
  }

  /** A rod shell that measures better in another place; its own place is left empty, with why. */
  private void onPurpose() {
    purposely("rod-shell@R3U", "R5U");
    window.press("Missing");
    window.press("Rods and pistons");
    window.press("Rod 3, upper shell");
    window.press("Leave it empty");
    window.press("comes later");
    assertThat(window.words()).doesNotContain("Rod 3, upper shell Part").contains("to fit");
    window.press("Back");
    window.press("Back");
    assertThat(job.state().onPurpose())
        .extracting(PartFitted::onPurpose)
        .containsExactly("matched pair");
  }

  private void theRest() {
    List<Place> open = new ToFit(job).places();
    AtomicInteger left = new AtomicInteger(open.size());
    for (Place place : open) {
      pair(place.key(), place.spot().key());
      right(place.key());
      assertThat(new ToFit(job).places()).hasSize(left.decrementAndGet());
    }
    assertThat(left.get()).isZero();
  }

  private void replay(EngineJob before) {
    try (OpenJob again = shelf().open(job.folder())) {
      EngineJob after = again.state();
      assertThat(again.condition().sentence()).isEmpty();
      assertThat(again.history()).isEqualTo(job.history());
      assertThat(after.fitted()).isEqualTo(before.fitted()).hasSize(73);
      assertThat(List.copyOf(after.parts())).isEqualTo(List.copyOf(before.parts()));
      assertThat(after.standing()).isEqualTo(before.standing());
      assertThat(after.standingStop()).isEmpty();
      assertThat(new ToFit(again).places()).isEmpty();
    }
  }
}
