package wherefrom.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.sample.Glass;
import wherefrom.ui.sample.SampleWindow;

/** What must be read stands on the glass with the largest letters, too. */
class LargeTellsTest {
  private static String seen(SampleWindow window) {
    return ShownShot.seen(window.shell)
        .filter(FitText.class::isInstance)
        .map(window::words)
        .collect(Collectors.joining(" "));
  }

  private static String words(Glass glass, int percent, String name) {
    return ShownShot.find(glass, percent, name, LargeTellsTest::seen)
        .replace('\n', ' ')
        .replace('\u00a0', ' ');
  }

  @Test
  void aDriveThatIsAwayIsTold() {
    assertThat(words(Glass.SMALL, 200, "jobs-stick-away")).contains("No USB drive: not copied");
    assertThat(words(Glass.UPRIGHT, 200, "jobs-stick-away")).contains("No USB drive: not copied");
  }

  @Test
  void aPartThatIsNotClearedIsTold() {
    assertThat(words(Glass.SMALL, 200, "answer-map-but")).contains("1 fitted, not cleared");
  }

  @Test
  void aStopIsToldWithItsPlace() {
    assertThat(words(Glass.UPRIGHT, 200, "job-home-stop")).contains("3 EX pushrod, at 5 EX");
  }

  /** The letters alone do not choose the few words: large glass has room for all. */
  @Test
  void largeGlassTellsAll() {
    assertThat(words(Glass.LAPTOP, 150, "settings-scanner"))
        .contains("need nothing set")
        .contains("No prefix is set.");
    assertThat(words(Glass.LAPTOP, 150, "new-job")).contains("V8, odd and even banks", "inches");
  }

  /** The set says what it says, and how far its odd one is off from what. */
  @Test
  void aSetTellsWhatItIsHeldAgainst() {
    assertThat(words(Glass.SMALL, 200, "before-compared")).contains("+61 psi from the middle");
    assertThat(words(Glass.LAPTOP, 200, "before-compared")).contains("Odd one out: cylinder 3");
  }

  @Test
  void aDoubtedFigureIsAskedAbout() {
    assertThat(words(Glass.SMALL, 200, "measure-asked")).contains("Is that right?");
    assertThat(words(Glass.LAPTOP, 150, "measure-asked"))
        .contains("IS THAT RIGHT?", "Type it again", "Keep it");
  }

  @Test
  void aZeroThatIsNotCheckedIsToldFirst() {
    assertThat(words(Glass.SMALL, 100, "measure-runout")).contains("Zero not checked");
  }

  @Test
  void sizesCountAmongWhatWasTyped() {
    assertThat(words(Glass.LAPTOP, 150, "measure-limits")).contains("3 typed");
  }

  /** Nothing is marked any more. */
  @Test
  void helpSaysWhatFollowsWhereAllPartsAreOut() {
    assertThat(words(Glass.LAPTOP, 100, "answer-message-page"))
        .contains("Every part is out.")
        .doesNotContain("Take the marked part out");
  }

  /** Where it has no room beside the place it stands with the way. */
  @Test
  void whatToMarkIsSaidBeforeAPartComesOut() {
    assertThat(words(Glass.GUESSED, 200, "take-apart")).contains("mark its top end, then lift it");
    assertThat(words(Glass.TABLET, 100, "take-apart-shell")).contains("slide it out, tag it at");
    assertThat(words(Glass.LAPTOP, 100, "take-apart")).contains("mark its top end");
  }

  @Test
  void whatIsOverdueComesBeforeWhatIsDone() {
    assertThat(words(Glass.SMALL, 100, "service")).contains("OVERDUE");
    assertThat(words(Glass.LAPTOP, 200, "service")).contains("OVERDUE");
  }
}
