package wherefrom.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import javafx.scene.Node;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wherefrom.job.settings.Appearance;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.TagPlate;
import wherefrom.ui.sample.Glass;
import wherefrom.ui.sample.SampleWindow;

/** With large letters nothing that a person needs on every screen is a page away. */
class LargeLettersTest {
  private static String seen(SampleWindow window) {
    return ShownShot.seen(window.shell)
        .filter(FitText.class::isInstance)
        .map(window::words)
        .collect(Collectors.joining("\n"));
  }

  private static String spoken(Node node) {
    return Objects.requireNonNullElse(node.getAccessibleText(), "");
  }

  @ParameterizedTest
  @CsvSource({
    "small, 150",
    "small, 200",
    "fine, 150",
    "upright, 150",
    "upright, 200",
    "tablet, 200"
  })
  void theWayBackStaysOnTheRail(String glass, int percent) {
    List<String> rail =
        Toolkit.on(
            () -> {
              SampleWindow window = ShownShot.window(glass, percent, "changes-checks");
              return window.targets().stream().filter(window::isOnRail).map(window::words).toList();
            });
    assertThat(rail).contains("Back", "Help").doesNotContain("More");
  }

  /** "To do: check before closing" four times tells nobody which is which. */
  @ParameterizedTest
  @CsvSource({
    "laptop, 200, changes-checks",
    "guessed, 150, changes-checks",
    "laptop, 200, inspect-follows",
    "laptop, 200, decide-part"
  })
  void rowsThatShowTheirHeadingAloneAreToldApart(String glass, int percent, String shot) {
    List<String> rows =
        Toolkit.on(
            () -> {
              SampleWindow window = ShownShot.window(glass, percent, shot);
              return window.targets().stream()
                  .filter(ListRow.class::isInstance)
                  .map(window::words)
                  .toList();
            });
    assertThat(rows).hasSizeGreaterThan(1).doesNotHaveDuplicates();
  }

  @ParameterizedTest
  @CsvSource({"small, 200, 2", "upright, 200, 3", "fine, 150, 2"})
  void asManyJobsAreShownAsHaveRoom(String glass, int percent, int jobs) {
    long shown =
        Toolkit.on(
            () ->
                ShownShot.window(glass, percent, "jobs").targets().stream()
                    .filter(TagPlate.class::isInstance)
                    .count());
    assertThat(shown).isEqualTo(jobs);
  }

  @ParameterizedTest
  @CsvSource({"fine, 150, 4", "small, 200, 3", "laptop, 200, 6"})
  void asManyPhotographsStandBesideEachOtherAsHaveRoom(String glass, int percent, int across) {
    long inFirstRow =
        Toolkit.on(
            () -> {
              SampleWindow window = ShownShot.window(glass, percent, "photos");
              List<Double> tops =
                  window.targets().stream()
                      .filter(key -> spoken(key).startsWith("photograph"))
                      .map(key -> key.localToScene(0, 0).getY())
                      .toList();
              return tops.stream().filter(tops.get(0)::equals).count();
            });
    assertThat(inFirstRow).isEqualTo(across);
  }

  /** Where the engine is too small to be drawn it takes no room from the tag of a stop. */
  @ParameterizedTest
  @CsvSource({"fine, 150, together-resumed-settled", "small, 200, together-stop-reason"})
  void theTagOfAStopHasTheRoomOfAPictureThatIsNotSeen(String glass, int percent, String shot) {
    Toolkit.on(
        () -> {
          SampleWindow window = ShownShot.window(glass, percent, shot);
          assertThat(ShownShot.tags(window)).hasSize(1);
          assertThat(ShownShot.tags(window).get(0).getWidth())
              .isGreaterThan(0.7 * window.scene.getWidth());
          return 0;
        });
  }

  /** What has room is said whole, however large the letters. */
  @ParameterizedTest
  @CsvSource({
    "150, shop-put-on, Scan each part that goes",
    "200, shop-put-on, Scan each part that goes",
    "150, print-track, it cannot be taken back",
    "200, print-track, it cannot be taken back",
    "200, new-job, more must go back",
    "200, money-budget, Think again first",
    "200, decide-part, One bearing has failed",
    "200, together-right, The tagged end goes up",
    "200, camera-together, Show a tag to the camera"
  })
  void onWideGlassTheWordsOfLargeLettersAreWhole(int percent, String shot, String words) {
    SampleWindow window = Toolkit.on(() -> ShownShot.window("laptop", percent, shot));
    assertThat(Toolkit.on(() -> seen(window)).replace('\n', ' ')).contains(words);
    assertThat(window.shell.context().scale().textFactor()).isEqualTo(percent / 100.0);
  }

  /** The form for upright glass is measured, not the one for wide glass. */
  @ParameterizedTest
  @CsvSource({"together-stop-kind, 1.5", "together-stop-new, 1.5", "together-stop-but, 1.5"})
  void theLettersOfAStopOnUprightGlassAreAsLargeAsTheyHaveRoom(String shot, double factor) {
    Toolkit.on(
        () -> {
          SampleWindow window = ShownShot.window("upright", 150, shot);
          assertThat(window.shell.context().scale().textFactor()).isEqualTo(factor);
          return 0;
        });
  }

  @ParameterizedTest
  @CsvSource({"150", "200"})
  void aStopOfAnotherKindSaysOnUprightGlassWhichPartIsRight(int percent) {
    String words =
        Toolkit.on(() -> seen(ShownShot.window("upright", percent, "together-stop-kind")));
    assertThat(words).contains("Right part: 0065 54");
  }

  /** Letters that made room for a long reason are large again once it is kept. */
  @ParameterizedTest
  @CsvSource({"small, 200, 2", "fine, 150, 1.5", "upright, 200, 2"})
  void theLettersComeBackAfterAReasonThatHadNoRoom(String glass, int percent, double factor) {
    Toolkit.on(
        () -> {
          SampleWindow before = ShownShot.window(glass, percent, "together-stop-reason");
          assertThat(before.shell.context().scale().textFactor()).isLessThan(factor);
          SampleWindow after = ShownShot.window(glass, percent, "together-on-purpose");
          assertThat(after.words()).contains("Fitted on purpose");
          assertThat(after.shell.context().scale().textFactor()).isEqualTo(factor);
          return 0;
        });
  }

  /** A drawing that has no room cannot be turned over. */
  @ParameterizedTest
  @CsvSource({"together-list", "together-place", "together-photo", "together-ask"})
  void theEngineStandsOnUprightGlassBesideTheKeysOfPuttingTogether(String shot) {
    Toolkit.on(
        () -> {
          SampleWindow window = ShownShot.window("upright", 150, shot);
          assertThat(window.targets().stream().map(window::words)).contains("More");
          assertThat(window.words()).contains("FRONT");
          return 0;
        });
  }

  /** A camera key that was pressed for nothing says why, where its pane has no room too. */
  @ParameterizedTest
  @CsvSource({"small, 200", "upright, 200", "upright, 150", "laptop, 200"})
  void thatThereIsNoCameraIsSaid(String glass, int percent) {
    SampleWindow window =
        Toolkit.on(() -> ShownShot.window(glass, percent, "camera-together-none"));
    String words =
        Toolkit.on(
            () -> {
              window.layOut();
              return seen(window);
            });
    assertThat(words).contains("no camera");
  }

  @ParameterizedTest
  @CsvSource({"small, 200", "upright, 200", "fine, 150"})
  void whatWasMisreadSaysWhatToDo(String glass, int percent) {
    String words = Toolkit.on(() -> seen(ShownShot.window(glass, percent, "together-ask")));
    assertThat(words).contains("Digits do not agree: scan it again");
  }

  @ParameterizedTest
  @CsvSource({"upright, 200", "laptop, 200", "guessed, 200", "small, 150"})
  void theTagInTheHandSaysWhichPartItIs(String glass, int percent) {
    String words = Toolkit.on(() -> seen(ShownShot.window(glass, percent, "together-half")));
    assertThat(words).containsPattern("3 EX\\s*pushrod");
  }

  /** The one thing to do is the tag, with large letters too, and no key says it again. */
  @ParameterizedTest
  @CsvSource({"fine, 150", "small, 200", "upright, 200"})
  void anEmptyListOfBagsHasItsTag(String glass, int percent) {
    Toolkit.on(
        () -> {
          SampleWindow window = ShownShot.window(glass, percent, "bags-none");
          assertThat(ShownShot.tags(window)).hasSize(1);
          assertThat(window.words(ShownShot.tags(window).get(0))).startsWith("New bag");
          assertThat(window.targets().stream().map(window::words))
              .filteredOn(words -> words.contains("New bag"))
              .hasSize(1);
          return 0;
        });
  }

  /** What the look is now bears a mark by shape, and is said to a screen reader. */
  @Test
  void whatIsSetIsMarkedAmongTheChoices() {
    List<String> spoken =
        Toolkit.on(
            () -> {
              SampleWindow window = new SampleWindow(Glass.TABLET, 100, Appearance.DARK);
              window.shell.context().navigator().show(ScreenId.SETTINGS);
              window.layOut();
              window.press("Look");
              window.layOut();
              return window.targets().stream()
                  .filter(node -> !window.isOnRail(node))
                  .map(Node::getAccessibleText)
                  .toList();
            });
    assertThat(spoken)
        .filteredOn(words -> words.endsWith(", chosen"))
        .containsExactly("dark. light letters on a dark ground, chosen");
  }

  /** What is beside a title is left out where letters are large: the title then says it. */
  @ParameterizedTest
  @CsvSource({
    "upright, 150, changes-planned, Plan: ",
    "small, 200, changes-planned, Plan: ",
    "upright, 200, changes-where-valve, Tap the valve",
    "small, 200, changes-where-valve, Tap the valve",
    "tablet, 200, changes-where-rod, Tap the rod",
    "laptop, 200, decide-part-open, Measure",
    "upright, 150, decide-part-open, Is it straight?",
    "laptop, 150, decide-part-open, Is it straight?",
    "guessed, 150, changes, Only a plan: nothing is stopped yet",
    "small, 150, changes-where-bank, Right: 2 4 6 8",
    "small, 200, torque-list, Go on: card 2",
    "upright, 200, timing-lobe, −32°: 0.0000 in",
    "small, 150, numbers-working, 8.787 ± 0.059",
    "small, 200, decide-part-open, Is it straight?",
    "fine, 200, decide-part-open, Is it straight?",
    "upright, 200, decide-part-open, Is it straight?",
    "small, 200, decide-part, One bearing has failed",
    "upright, 200, decide-part, One bearing has failed",
    "small, 150, decide, Next: 5 EX pushrod",
    "upright, 150, decide, Next: 5 EX pushrod",
    "upright, 150, numbers-plan, Only a plan",
    "small, 200, numbers-plan, Only a plan",
    "upright, 150, timing-plot, centerline 108.0 deg",
    "small, 200, decide-gasket-set, not in the set",
    "laptop, 200, numbers-plot-set, 5 of 5: Pushrod length"
  })
  void whatMustBeKnownIsOnTheGlass(String glass, int percent, String shot, String words) {
    String seen = Toolkit.on(() -> seen(ShownShot.window(glass, percent, shot)));
    assertThat(seen.replace('\n', ' ').replace('\u00a0', ' ')).contains(words.strip());
  }
}
