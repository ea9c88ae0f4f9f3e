package wherefrom.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.image.ImageView;
import javafx.scene.text.Text;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wherefrom.job.settings.Appearance;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.controls.TagPlate;
import wherefrom.ui.controls.TouchKey;
import wherefrom.ui.drawn.DrawnEngine;
import wherefrom.ui.sample.Glass;
import wherefrom.ui.sample.SampleWindow;

/** What a screen shows has the room that there is: nothing is squeezed beside what is empty. */
class RoomUsedTest {
  private static void at(String name, Glass glass, int text, Consumer<SampleWindow> looked) {
    ShownShot.look(glass, text, Appearance.LIGHT, name, looked);
  }

  private static <N extends Node> List<N> all(SampleWindow window, Class<N> type) {
    return ShownShot.seen(window.scene.getRoot()).filter(type::isInstance).map(type::cast).toList();
  }

  private static Bounds box(Node node) {
    return node.localToScene(node.getLayoutBounds());
  }

  private static double size(SampleWindow window, String words) {
    return all(window, Text.class).stream()
        .filter(text -> text.getText().replace('\n', ' ').equals(words))
        .findFirst()
        .orElseThrow()
        .getFont()
        .getSize();
  }

  private static String words(SampleWindow window) {
    return all(window, Text.class).stream()
        .map(text -> text.getText().replace("-\n", "-").replace('\n', ' ').replace('\u00a0', ' '))
        .collect(Collectors.joining(" "));
  }

  @ParameterizedTest
  @CsvSource({"fine", "tablet"})
  void theChoicesOfANewJobHaveAllTheWidthWhereNoEngineIsDrawn(String name) {
    Glass glass =
        Glass.all().stream().filter(one -> one.name().equals(name)).findFirst().orElseThrow();
    at(
        "new-job",
        glass,
        200,
        window -> {
          assertThat(all(window, DrawnEngine.class)).isEmpty();
          TagKey begin = all(window, TagKey.class).get(0);
          assertThat(box(begin).getWidth()).isGreaterThan(0.65 * glass.width());
        });
  }

  /** The figure gives way to the words, and no key beside them has to be smaller for it. */
  @ParameterizedTest
  @CsvSource({"answer-engine,fine", "answer-engine,tablet", "answer-foreign,small"})
  void aStopThatNamesAnotherEngineIsReadInLargeLetters(String shot, String name) {
    Glass glass =
        Glass.all().stream().filter(one -> one.name().equals(name)).findFirst().orElseThrow();
    double usual = glass.pixelsPerMm() * Scale.SMALL_MM / Scale.CAPITAL;
    for (int percent : new int[] {150, 200}) {
      at(shot, glass, percent, window -> assertThat(size(window, "OK")).isGreaterThan(1.4 * usual));
    }
  }

  /** It is looked at to see whether a tag can be read. */
  @Test
  void theCamerasPictureHasMostOfLargeGlass() {
    for (Glass glass : List.of(Glass.LAPTOP, Glass.GUESSED)) {
      at(
          "settings-camera",
          glass,
          100,
          window ->
              assertThat(all(window, ImageView.class).get(0).getFitHeight())
                  .isGreaterThan(0.5 * glass.height()));
    }
  }

  @Test
  void theOnlyJobHasMostOfTheGlass() {
    at(
        "jobs-one",
        Glass.LAPTOP,
        100,
        window ->
            assertThat(box(all(window, TagPlate.class).get(0)).getHeight())
                .isGreaterThan(0.5 * Glass.LAPTOP.height()));
    at(
        "jobs-one",
        Glass.UPRIGHT,
        200,
        window -> assertThat(all(window, DrawnEngine.class)).hasSize(1));
  }

  @Test
  void anEngineOnATagIsNeverASpeck() {
    at(
        "jobs",
        Glass.SMALL,
        100,
        window ->
            assertThat(all(window, DrawnEngine.class))
                .isNotEmpty()
                .allSatisfy(
                    drawn ->
                        assertThat(drawn.getHeight() / Glass.SMALL.pixelsPerMm())
                            .isGreaterThan(20)));
  }

  @Test
  void whatWasSaidIsNotPartedWhereAPageHoldsIt() {
    at(
        "answer-message-page",
        Glass.LAPTOP,
        200,
        window ->
            assertThat(words(window))
                .contains("disk can be made good from elsewhere.")
                .doesNotContain("…"));
  }

  @ParameterizedTest
  @CsvSource({"100,74 parts wait for a decision", "150,74 to decide"})
  void decidingIsTheTagWherePartsWaitForIt(int text, String words) {
    at(
        "answer-decisions",
        Glass.SMALL,
        text,
        window ->
            assertThat(all(window, TagKey.class))
                .singleElement()
                .extracting(TagKey::words)
                .isEqualTo(words));
  }

  @Test
  void theKeyInPlaceOfTheEngineIsAsWideAsARow() {
    at(
        "job-home",
        Glass.SMALL,
        150,
        window ->
            assertThat(all(window, TouchKey.class))
                .filteredOn(key -> key.words().equals("Engine"))
                .singleElement()
                .satisfies(
                    key -> assertThat(key.getWidth()).isGreaterThan(0.4 * Glass.SMALL.width())));
  }

  @Test
  void figuresOnAPadGrowWithThePersonsLetters() {
    at(
        "number-entry",
        Glass.SMALL,
        200,
        window -> assertThat(size(window, "1")).isGreaterThan(1.4 * size(window, "Erase")));
  }

  /** Five columns are enough for a board of letters: it keeps the letters that the person has. */
  @Test
  void aBoardOnUprightGlassKeepsItsLargeLetters() {
    at(
        "text-entry",
        Glass.UPRIGHT,
        150,
        window ->
            assertThat(size(window, "Done"))
                .isGreaterThan(1.4 * Glass.UPRIGHT.pixelsPerMm() * Scale.SMALL_MM / Scale.CAPITAL));
  }

  @ParameterizedTest
  @CsvSource({
    "job-list,small,150,Launch V8 0 of 74 fitted; spoilt",
    "between,small,100,74 to look at",
    "between,guessed,200,74 to do;none open;35 in all",
    "answer-whose-code,fine,200,This engine's;Another's, or not sure",
    "settings-scanner,fine,200,Digits wrong? Teach them.",
    "engine-wrong,fine,200,Put right: Title;Not right yet.",
    "job-home,small,100,2 machine shop",
    "job-home-more,small,200,Copy to USB drive;Bags and big parts;Before teardown",
    "kinds,small,200,Must go back;All",
    "failed,upright,150,picture-1.jpg is empty;picture-2.jpg is empty",
    "settings-camera-none,small,200,Look again",
    "bags-head,tablet,200,At the machine shop",
    "bags-head,laptop,150,At the machine shop;Marks",
    "settings-camera,small,200,Stopped. Press it again.",
    "new-job,tablet,150,Some get no tag",
    "new-job,fine,200,Some get no tag",
    "new-job,tablet,200,Some get no tag",
    "new-job,upright,150,74 parts; more must go back"
  })
  void allOfItIsSeen(String shot, String name, int text, String wanted) {
    Glass glass =
        Glass.all().stream().filter(one -> one.name().equals(name)).findFirst().orElseThrow();
    at(
        shot,
        glass,
        text,
        window ->
            assertThat(Stream.of(wanted.split(";")).map(String::strip))
                .allSatisfy(part -> assertThat(words(window)).contains(part)));
  }
}
