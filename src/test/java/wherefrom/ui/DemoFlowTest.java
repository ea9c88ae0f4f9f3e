package wherefrom.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.job.OpenJob;
import wherefrom.job.puttogether.ToFit;
import wherefrom.job.tags.TagBook;
import wherefrom.logbook.FileShelf;
import wherefrom.parts.Place;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.ScannedWindow;

/**
 * The demo carried from the bench to its first start in the shown window, by the keys that a person
 * presses and the tags that a scanner types. What is asserted stands on the screen.
 */
class DemoFlowTest {
  @TempDir Path folder;

  private ScannedWindow window;

  @Test
  void theDemoGoesFromInspectToTheFirstStart() {
    SplittableRandom random = new SplittableRandom(20260504);
    try (ScannedWindow shown =
        new ScannedWindow(new FileShelf(folder, SampleJob.CLOCK, random::nextInt), folder)) {
      window = shown;
      assertThat(window.hasKeys()).isTrue();
      open();
      inspect();
      measure();
      debris();
      theCamIsBought();
      backFromTheShop();
      backFromWashing();
      decide();
      newParts();
      checks();
      money();
      putTogether();
      firstStart();
      record();
      window.job().close();
    }
  }

  private OpenJob job() {
    return window.job();
  }

  private TagBook book() {
    return new TagBook(job().state(), engine -> Optional.empty());
  }

  private void scan(String place) {
    window.burst(
        book().of(job().state().findOwner(Place.find(place).orElseThrow()).orElseThrow()).digits());
  }

  private void press(String... words) {
    List.of(words).forEach(window::press);
  }

  private void shows(String... words) {
    assertThat(plain(window.words())).contains(Stream.of(words).map(DemoFlowTest::plain).toList());
  }

  /** Spaces at which no line may break are spaces. */
  private static String plain(String words) {
    return words.replace('\u00a0', ' ');
  }

  private void home() {
    window.home();
  }

  private void between(String screen) {
    home();
    press("Inspect", screen);
  }

  private void open() {
    press("Open the demo");
    shows("Demo: V8 of the launch", "A stop is waiting");
    comeBackFromTheListOfJobs();
    press("Together");
    shows("STOP", "From: rod 8, lower", "Here: rod 7, lower");
    press("UNDO");
    shows("Press UNDO again");
    press("UNDO");
    shows("Taken back");
  }

  /** The job is still open then: it must not be opened a second time beside itself. */
  private void comeBackFromTheListOfJobs() {
    OpenJob before = job();
    press("Jobs");
    shows("Jobs");
    press("Demo: V8 of the launch");
    shows("Demo: V8 of the launch", "A stop is waiting");
    assertThat(job()).isSameAs(before);
  }

  private void inspect() {
    between("Look");
    scan("rocker@7IN");
    shows("7 IN rocker", "Cup, tip and ball seat");
    press("Pass");
    shows("Any crack?");
    press("Pass");
    scan("rocker@8EX");
    press("Fail");
    shows("8 EX rocker");
  }

  private void measure() {
    between("Measure");
    shows("Undecided: ");
    scan("spring@5EX");
    press("Spring out of square", "Choose the tool", "caliper");
    window.burst("0.0310in");
    shows("0.03100 in");
    press("Type a limit", "Upper limit");
    window.burst("0.060in");
    press("This engine", "7", "Done");
    shows("ACCEPT", "Manual, page 7");
  }

  private void debris() {
    home();
    press("Bench", "Debris");
    shows("Mains: no");
    press("Filter");
    press("Copper");
    shows("suspect the lining of a shell");
  }

  /** Until now only a plan; from now on it binds. */
  private void theCamIsBought() {
    between("Changes");
    press("Plan 1: new flat-tappet cam");
    shows("16 lifters", "Mark as done");
    press("Mark as done");
    checks();
  }

  /** What holds parts is answered; what holds a section stays open until the first start. */
  private void checks() {
    between("Changes");
    press("Open checks");
    while (window.has("Check before fitting") || window.has("Down")) {
      if (window.has("Check before fitting")) {
        press("Check before fitting", "Pass");
      } else {
        press("Down");
      }
    }
    shows("Check before closing");
  }

  private void backFromTheShop() {
    between("Machine shop");
    press("Visit 1");
    shows("6 at the shop", "2 × cylinder head: AT THE SHOP");
    scan("rod-cap@R4L");
    scan("rod-cap@R5L");
    press("2 × cylinder head", "2", "Done");
    press("20 × head bolts: 2 of 20 AT THE SHOP", "2", "Done");
    assertThat(window.words()).contains("back").doesNotContain("AT THE SHOP");
  }

  private void backFromWashing() {
    press("Back", "Off for washing");
    shows("Rockers 2 IN, 2 EX");
    scan("rocker@2IN");
    scan("rocker@2EX");
    shows("No part is off for washing");
  }

  private void decide() {
    between("Decide");
    press("Rockers");
    press("Reuse those proposed", "every test passed");
    shows("rockers: reuse.", "left to decide one by one");
    press("Back");
    decide("rocker@3EX", "Reuse", "good enough here");
    decide("rocker@7EX", "Reuse", "good enough here");
    decide("rocker@8IN", "Reuse", "good enough here");
    decide("rocker@8EX", "Replace", "replaced as a set");
    decide("pushrod@5IN", "Replace", "out of limit");
    decide("pushrod@8EX", "Replace", "replaced as a set");
  }

  private void decide(String place, String decision, String reason) {
    scan(place);
    press(decision, reason);
    shows("Decided: " + decision.toLowerCase(java.util.Locale.ROOT));
    press("Back");
  }

  private void newParts() {
    press("What to buy");
    for (String bought : List.of("1 rocker", "3 pushrods", "16 lifters", "1 valve spring")) {
      window.pressOnSomePage(bought);
      String count = bought.split(" ", 2)[0];
      boolean one = count.equals("1");
      press(one ? "It is here" : "They are here");
      shows("Print tags", one ? "1 new part. Print its tag" : "New parts: " + count + ". Print");
      press("Print ");
      press("Back");
      shows("What to buy");
    }
    // What is left carries no tag: it is noted under Money.
    assertThat(window.words())
        .contains("gasket set")
        .doesNotContain("lifters", "They are here", "It is here");
    assertThat(window.printed()).hasSize(4);
  }

  private void money() {
    between("Money");
    shows("is over the budget by", "Saved by reuse");
    press("Down");
    shows("paid 249.50");
  }

  private void putTogether() {
    home();
    press("Together");
    List<Place> open = new ToFit(job()).places();
    for (Place place : open) {
      scan(place.key());
      window.burst(book().of(place.spot()).digits());
      assertThat(window.words()).as(place.key()).contains("RIGHT PLACE");
    }
    shows("none to fit");
  }

  private void firstStart() {
    press("Finish");
    for (String section : List.of("Main bearings", "Rods and pistons", "Valvetrain, left bank")) {
      press(section);
      shows("Every place is filled");
      press("Finish section");
      shows(section + ": finished.", "To fit");
    }
    press("Valvetrain, right bank", "Finish section");
    shows("Before the first start", "fire extinguisher in reach", "fan and belts");
    StringBuilder all = new StringBuilder(window.words());
    while (window.has("Down")) {
      press("Down");
      all.append(window.words());
    }
    assertThat(all).contains("Open check", "Prime the oil", "Turn it by hand", "Fill and look");
  }

  private void record() {
    between("Build record");
    shows("Build record", "NOT CHECKED");
    press("Look and print", "Save as PDF", "Choose this folder");
    assertThat(window.reported())
        .extracting(Object::toString)
        .filteredOn(name -> name.endsWith("build-record.pdf"))
        .hasSize(1);
    shows("build-record.pdf");
  }
}
