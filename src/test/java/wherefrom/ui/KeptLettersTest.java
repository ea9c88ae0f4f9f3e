package wherefrom.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.layout.Region;
import javafx.scene.text.Text;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import wherefrom.ui.controls.PictureView;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.sample.SampleWindow;

/** Screens of few words keep large letters where those are set, and say what to do. */
class KeptLettersTest {
  /** How wide A4 is, as a part of its height. */
  private static final double PAPER = 0.71;

  private static List<String> tags(SampleWindow window) {
    return ShownShot.tags(window).stream().map(window::words).toList();
  }

  @ParameterizedTest
  @CsvSource({
    "fine, 150, money",
    "small, 200, money",
    "upright, 200, money",
    "fine, 150, money-none",
    "fine, 150, money-what-if",
    "fine, 150, shop-check-in",
    "small, 200, shop-check-in",
    "small, 200, shop-put-on",
    "upright, 150, shop-put-on",
    "upright, 200, shop-put-on",
    "fine, 150, shop-washing",
    "small, 200, shop-washing",
    "small, 200, shop-tags-read",
    "upright, 200, shop-tags-read",
    "small, 200, way-out",
    "small, 200, answer-section-but",
    "small, 200, torque-stages",
    "upright, 150, torque-stages",
    "small, 200, torque-details",
    "small, 200, torque-card",
    "small, 200, torque-question",
    "small, 200, timing-open",
    "small, 200, timing-cylinder",
    "fine, 150, timing-lobe",
    "small, 200, changes-cam",
    "upright, 200, changes-planned",
    "fine, 150, first-start",
    "small, 200, run-in-plan",
    "small, 200, run-in",
    "small, 200, run-in-alarm",
    "upright, 150, run-in-alarm",
    "small, 150, run-in-stopped",
    "small, 150, measure-size",
    "fine, 200, measure-size",
    "small, 150, measure-runout",
    "fine, 200, measure-runout",
    "fine, 200, measure-crown",
    "fine, 200, measure-pair",
    "small, 200, numbers-details",
    "small, 200, numbers-figures",
    "fine, 150, numbers-figures"
  })
  void theLettersStayLarge(String glass, int percent, String shot) {
    double factor =
        Toolkit.on(
            () ->
                ShownShot.window(glass, percent, shot)
                    .shell
                    .context()
                    .touch()
                    .scale()
                    .textFactor());
    assertThat(factor).isGreaterThan(1);
  }

  @ParameterizedTest
  @CsvSource({
    "small, 200, measure-asked, It is 66.29 mm",
    "laptop, 150, measure-asked, It is 66.29 mm",
    "small, 100, shop-check-in, It is back: 1 ×",
    "small, 200, shop-check-in, It is back: 1 ×",
    "laptop, 100, way-out, It is out: pushrod 0004 21",
    "small, 100, torque-new, Next: which bolts",
    "small, 200, timing, Next: chain deflection",
    "laptop, 100, timing-open, Next: checking lift"
  })
  void theNextThingToDoIsTheTag(String glass, int percent, String shot, String words) {
    Toolkit.on(
        () -> {
          List<String> tags = tags(ShownShot.window(glass, percent, shot));
          assertThat(tags).hasSize(1);
          assertThat(tags.get(0)).startsWith(words);
          return 0;
        });
  }

  /** The largest letters leave no room for a sentence: from where to where is not cut. */
  @ParameterizedTest
  @CsvSource({
    "small, way-out, From 3 EX to 1 EX",
    "upright, way-out, From 3 EX to 1 EX",
    "small, answer-section-but, ! 3 EX pushrod"
  })
  void aRowNamesItsPlaces(String glass, String shot, String words) {
    Toolkit.on(
        () -> {
          assertThat(seen(ShownShot.window(glass, 200, shot)))
              .anySatisfy(row -> assertThat(spaced(row.replace("\n", " "))).contains(words));
          return 0;
        });
  }

  /** The tag beside the keys names the next part: they mean the one that is just out. */
  @ParameterizedTest
  @CsvSource({
    "small, 150, take-apart-out, 3 EX pushrod",
    "small, 200, take-apart-out, 3 EX pushrod",
    "laptop, 200, take-apart-out, 3 EX pushrod",
    "upright, 100, take-apart-out, 3 EX pushrod",
    "upright, 150, take-apart-out, 3 EX pushrod",
    "upright, 200, take-apart-out, 3 EX pushrod",
    "tablet, 200, take-apart-pivot, 1 IN rocker",
    "fine, 150, take-apart-pivot, 1 IN rocker"
  })
  void theKeySaysWhichPartWouldBeSuspect(String glass, int percent, String shot, String part) {
    Toolkit.on(
        () -> {
          SampleWindow window = ShownShot.window(glass, percent, shot);
          assertThat(window.targets().stream().map(window::words).map(KeptLettersTest::spaced))
              .filteredOn(words -> words.startsWith("Suspect"))
              .containsExactly("Suspect " + part);
          return 0;
        });
  }

  /** What came out stands where the name was: what to mark on the next is on its tag. */
  @ParameterizedTest
  @CsvSource({"upright, 100", "upright, 150", "small, 200"})
  void theTagSaysWhatToMarkOnTheNext(String glass, int percent) {
    Toolkit.on(
        () -> {
          SampleWindow window = ShownShot.window(glass, percent, "take-apart-out");
          assertThat(seen(window)).contains("first mark the side to the front");
          return 0;
        });
  }

  /** A shell is tagged when it is out, so nothing is first. */
  @Test
  void aHalfIsTaggedWhenItIsOut() {
    Toolkit.on(
        () -> {
          assertThat(tags(ShownShot.window("small", 200, "take-apart-shell")).get(0))
              .endsWith("tag it at once");
          return 0;
        });
  }

  @Test
  void theEngineIsDrawnBesideWhatIsOut() {
    Toolkit.on(
        () -> {
          SampleWindow window = ShownShot.window("upright", 200, "take-apart-pivot");
          assertThat(window.scene.getRoot().lookupAll(".drawn")).isNotEmpty();
          assertThat(window.targets().stream().map(window::words)).doesNotContain("Engine");
          return 0;
        });
  }

  private static List<String> seen(SampleWindow window) {
    return texts(window.scene.getRoot())
        .filter(KeptLettersTest::isSeen)
        .map(text -> spaced(text.getText().replace('\n', ' ')))
        .toList();
  }

  private static boolean isSeen(Node node) {
    return node.isVisible() && (node.getParent() == null || isSeen(node.getParent()));
  }

  /** A new visit asks by keys what is wanted, and offers nothing that needs a slip. */
  @ParameterizedTest
  @CsvSource({"small", "laptop", "upright"})
  void aNewVisitAsksWhatIsWanted(String glass) {
    Toolkit.on(
        () -> {
          SampleWindow window = ShownShot.window(glass, 100, "shop-new");
          assertThat(window.targets().stream().map(window::words))
              .contains("Measure runout")
              .doesNotContain("Check in", "What is wanted?");
          window.press("Measure runout");
          window.layOut();
          assertThat(tags(window)).allMatch(tag -> tag.startsWith("To measure runout"));
          return 0;
        });
  }

  /**
   * The page takes half of upright glass and all the height of wide glass, whatever the letters.
   */
  @ParameterizedTest
  @CsvSource({"small, 200, 0.7", "tablet, 200, 0.7", "laptop, 200, 0.8", "upright, 200, 0.35"})
  void aPageOfPaperIsAsLargeAsTheGlassLetsItBe(String glass, int percent, double share) {
    Toolkit.on(
        () -> {
          SampleWindow window = ShownShot.window(glass, percent, "record-pages");
          Region page = (Region) find(window.scene.getRoot(), PictureView.class).orElseThrow();
          double high = Math.min(page.getHeight(), page.getWidth() / PAPER);
          assertThat(high).isGreaterThan(share * window.scene.getHeight());
          return 0;
        });
  }

  private static Optional<Node> find(Node node, Class<?> kind) {
    if (kind.isInstance(node)) {
      return Optional.of(node);
    }
    return node instanceof Parent parent
        ? parent.getChildrenUnmodifiable().stream()
            .flatMap(child -> find(child, kind).stream())
            .findFirst()
        : Optional.empty();
  }

  @Test
  void aTableOfTheRecordIsARowOfTwoLines() {
    Toolkit.on(
        () -> {
          assertThat(ShownShot.window("tablet", 200, "record").words())
              .contains("11 lines, all OPEN");
          return 0;
        });
  }

  private static String spaced(String words) {
    return words.replace('\u00a0', ' ');
  }

  /** What cannot be taken back says so beside the tag, where the sentence has no room. */
  @ParameterizedTest
  @CsvSource({"small, 200", "upright, 200"})
  void whatIsTrackedStaysSo(String glass, int percent) {
    Toolkit.on(
        () -> {
          SampleWindow window = ShownShot.window(glass, percent, "print-track");
          window.press("All");
          window.layOut();
          assertThat(tags(window)).hasSize(1).allMatch(words -> words.contains("cannot be undone"));
          return 0;
        });
  }

  @ParameterizedTest
  @CsvSource({"small, 150", "small, 200"})
  void theTagSaysToScanEachPartThatGoes(String glass, int percent) {
    Toolkit.on(
        () -> {
          assertThat(tags(ShownShot.window(glass, percent, "shop-put-on")))
              .containsExactly("Scan: measure runout");
          return 0;
        });
  }

  /** There is nothing to track as long as nothing is chosen. */
  @Test
  void whatIsChosenCanBeTracked() {
    Toolkit.on(
        () -> {
          SampleWindow window = ShownShot.window("laptop", 100, "print-track");
          assertThat(tags(window)).isEmpty();
          window.press("All");
          window.layOut();
          assertThat(tags(window)).containsExactly("Track them");
          return 0;
        });
  }

  /** A shade without a word tells nobody what it is. */
  @ParameterizedTest
  @CsvSource({"laptop, 100", "laptop, 150", "tablet, 100"})
  void theBarOfTheBudgetNamesItsShades(String glass, int percent) {
    Toolkit.on(
        () -> {
          SampleWindow window = ShownShot.window(glass, percent, "money");
          boolean drawn = !window.scene.getRoot().lookupAll(".budget-part").isEmpty();
          assertThat(window.words().contains("set aside")).isEqualTo(drawn);
          return 0;
        });
    assertThat(
            Toolkit.on(
                () ->
                    ShownShot.window("laptop", 150, "money")
                        .scene
                        .getRoot()
                        .lookupAll(".budget-limit")))
        .hasSize(2);
  }

  /** Large glass shows the part and its life, whatever the letters. */
  @ParameterizedTest
  @ValueSource(strings = {"laptop", "guessed"})
  void thePartIsDrawnWhereThereIsRoom(String glass) {
    Toolkit.on(
        () -> {
          SampleWindow window = ShownShot.window(glass, 150, "part");
          assertThat(window.words()).contains("came out", "photograph, 3 times");
          return 0;
        });
  }

  /** The page says what the bench marks. */
  @Test
  void aPartThatIsNoLongerMatedSaysSo() {
    Toolkit.on(
        () -> {
          assertThat(ShownShot.window("small", 100, "part-unmated").words())
              .contains("No longer mated");
          return 0;
        });
  }

  /** A mark without a word tells nobody what it is. */
  @ParameterizedTest
  @CsvSource({"small, 100", "laptop, 100", "fine, 150"})
  void theBenchSaysWhatItMarks(String glass, int percent) {
    Toolkit.on(
        () -> {
          assertThat(ShownShot.window(glass, percent, "bench-map").words()).contains("2 not mated");
          return 0;
        });
  }

  @ParameterizedTest
  @CsvSource({"small, 200", "fine, 150", "upright, 200"})
  void washingCanBeEndedWithoutALookBehindMore(String glass, int percent) {
    Toolkit.on(
        () -> {
          SampleWindow window = ShownShot.window(glass, percent, "bench-map-washing");
          assertThat(window.targets().stream().map(window::words)).contains("Done");
          assertThat(window.words()).contains("Scan into basket 4");
          return 0;
        });
  }

  /** The title says basket 7, so its row is the one that is seen where only one is. */
  @Test
  void theBasketThatIsFilledStandsFirst() {
    Toolkit.on(
        () -> {
          assertThat(ShownShot.window("small", 200, "shop-washing").words())
              .contains("Basket 7: 3 pieces");
          return 0;
        });
  }

  @ParameterizedTest
  @CsvSource({"laptop, 150", "upright, 150"})
  void movingThePrintSaysHowWhereThereIsRoom(String glass, int percent) {
    Toolkit.on(
        () -> {
          assertThat(ShownShot.window(glass, percent, "print-nudge").words())
              .contains("Hold the test page");
          return 0;
        });
  }

  /** Beside the name the tag leaves the engine a third more height. */
  @ParameterizedTest
  @ValueSource(strings = {"laptop", "guessed"})
  void wideGlassHasTheTagBesideTheNameOfThePlace(String glass) {
    Toolkit.on(
        () -> {
          SampleWindow window = ShownShot.window(glass, 150, "take-apart");
          Node tag = window.targets().stream().filter(TagKey.class::isInstance).findFirst().get();
          assertThat(tag.getLayoutY()).isZero();
          return 0;
        });
  }

  /** What was never measured cannot be told by measuring it now. */
  @Test
  void lostTagsOfPartsThatWereNeverMeasuredLeadToTheChanges() {
    Toolkit.on(
        () -> {
          SampleWindow window = ShownShot.window("laptop", 100, "shop-tags");
          assertThat(tags(window)).containsExactly("Measure number 1");
          assertThat(window.words()).contains("Tags lost: pushrods");
          window.press("Rockers");
          window.layOut();
          assertThat(tags(window)).containsExactly("Changes");
          assertThat(window.words()).contains("No rocker that is out was measured before.");
          return 0;
        });
  }

  /** The next part is what is to be done while places of a section are open. */
  @ParameterizedTest
  @CsvSource({"section, Fit the next", "section-filled, Finish section"})
  void aSectionIsFinishedOnceItIsFilled(String shot, String words) {
    Toolkit.on(
        () -> {
          assertThat(tags(ShownShot.window("laptop", 100, shot)))
              .allMatch(tag -> tag.startsWith(words));
          return 0;
        });
  }

  /** The arrow at 4 IN comes from outside, where its letters stand; no other letters leave. */
  @Test
  void noArrowLiesOverTheLettersOfAValve() {
    Toolkit.on(
        () -> {
          SampleWindow window = ShownShot.window("laptop", 100, "take-apart-out");
          assertThat(letters(window, "IN")).isEqualTo(7);
          assertThat(letters(window, "EX")).isEqualTo(8);
          return 0;
        });
  }

  private static long letters(SampleWindow window, String wanted) {
    return window.scene.getRoot().lookupAll(".drawn").stream()
        .flatMap(drawn -> texts(drawn))
        .filter(text -> text.getText().equals(wanted) && text.isVisible())
        .count();
  }

  private static Stream<Text> texts(Node node) {
    if (node instanceof Text text) {
      return Stream.of(text);
    }
    return node instanceof Parent parent
        ? parent.getChildrenUnmodifiable().stream().flatMap(KeptLettersTest::texts)
        : Stream.empty();
  }
}
