package wherefrom.ui.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import javafx.event.Event;
import javafx.event.EventType;
import javafx.geometry.BoundingBox;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.junit.jupiter.api.Test;
import wherefrom.ui.Toolkit;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/** The keys on the glass, worked without touching it. */
class KeyboardTest {
  private static final long PERSON_NANOS = 180_000_000L;
  private static final long SCANNER_NANOS = 2_000_000L;

  private final List<String> pressed = new ArrayList<>();
  private final List<String> scans = new ArrayList<>();

  private final class Keys implements Screen, Scannable {
    private final Region view;

    Keys(Touch touch) {
      view =
          new VBox(
              touch.scale().gap(),
              touch.key("One", () -> pressed.add("One")),
              touch.tag("Two", "", () -> pressed.add("Two")),
              touch.hold("Three", () -> pressed.add("Three")));
    }

    @Override
    public String title() {
      return "Keys";
    }

    @Override
    public Region view() {
      return view;
    }

    @Override
    public void scan(Scanned scanned) {
      scans.add(scanned.text());
    }
  }

  private SampleWindow open() {
    SampleWindow window = new SampleWindow(96, 100);
    window.shell.context().open(SampleJob.apart().job);
    window.shell.context().navigator().open(() -> new Keys(window.shell.context().touch()));
    window.layOut();
    window.moment();
    return window;
  }

  private static void fire(
      SampleWindow window, EventType<KeyEvent> type, String character, KeyCode code) {
    Event.fireEvent(
        window.scene, new KeyEvent(type, character, "", code, false, false, false, false));
  }

  private static void key(SampleWindow window, KeyCode code, String character, long nanos) {
    window.nanos.addAndGet(nanos);
    fire(window, KeyEvent.KEY_PRESSED, "", code);
    if (!character.isEmpty()) {
      fire(window, KeyEvent.KEY_TYPED, character, KeyCode.UNDEFINED);
    }
    fire(window, KeyEvent.KEY_RELEASED, "", code);
    window.layOut();
  }

  private static void person(SampleWindow window, KeyCode code, String character) {
    key(window, code, character, 4 * PERSON_NANOS);
  }

  private static void burst(SampleWindow window, String text) {
    text.codePoints()
        .forEach(
            one ->
                key(
                    window,
                    one == '\t' ? KeyCode.TAB : KeyCode.UNDEFINED,
                    Character.toString(one),
                    SCANNER_NANOS));
  }

  @Test
  void tabLeadsToTheTagFirstAndEnterPressesIt() {
    Toolkit.on(
        () -> {
          SampleWindow window = open();
          person(window, KeyCode.TAB, "\t");
          person(window, KeyCode.ENTER, "\r");
          assertThat(pressed).containsExactly("Two");
          person(window, KeyCode.UP, "");
          person(window, KeyCode.ENTER, "\r");
          assertThat(pressed).containsExactly("Two", "One");
          return 0;
        });
  }

  /** What is pressed is seen first; on the next screen the ring stands on the tag already. */
  @Test
  void enterAloneLeadsToTheTagAndTheRingStaysWithWhoeverWorksByKeys() {
    Toolkit.on(
        () -> {
          SampleWindow window = open();
          person(window, KeyCode.ENTER, "\r");
          assertThat(pressed).isEmpty();
          person(window, KeyCode.ENTER, "\r");
          assertThat(pressed).containsExactly("Two");
          window.shell.context().navigator().open(() -> new Keys(window.shell.context().touch()));
          window.layOut();
          window.moment();
          window.layOut();
          person(window, KeyCode.ENTER, "\r");
          assertThat(pressed).containsExactly("Two", "Two");
          return 0;
        });
  }

  @Test
  void enterHeldDownPressesOnce() {
    Toolkit.on(
        () -> {
          SampleWindow window = open();
          person(window, KeyCode.TAB, "\t");
          for (int repeat = 0; repeat < 5; repeat++) {
            window.nanos.addAndGet(4 * PERSON_NANOS);
            fire(window, KeyEvent.KEY_PRESSED, "", KeyCode.ENTER);
            fire(window, KeyEvent.KEY_TYPED, "\r", KeyCode.UNDEFINED);
          }
          assertThat(pressed).containsExactly("Two");
          return 0;
        });
  }

  @Test
  void theEnterAndTheTabOfAScannerWorkNoKey() {
    String tag = SampleJob.apart().tag("pushrod@3EX");
    Toolkit.on(
        () -> {
          SampleWindow window = open();
          person(window, KeyCode.TAB, "\t");
          burst(window, tag + "\r");
          window.nanos.addAndGet(4 * PERSON_NANOS);
          burst(window, tag + "\t");
          assertThat(pressed).isEmpty();
          assertThat(scans).containsExactly(tag, tag);
          person(window, KeyCode.ENTER, "\r");
          assertThat(pressed).containsExactly("Two");
          return 0;
        });
  }

  /** Some systems type a Tab with shift, others type nothing at all. */
  @Test
  void tabWithShiftLeadsBackWhetherItTypesOrNot() {
    for (String typed : List.of("", "\t")) {
      Toolkit.on(
          () -> {
            SampleWindow window = open();
            person(window, KeyCode.TAB, "\t");
            person(window, KeyCode.TAB, "\t");
            window.nanos.addAndGet(4 * PERSON_NANOS);
            Event.fireEvent(
                window.scene,
                new KeyEvent(KeyEvent.KEY_PRESSED, "", "", KeyCode.TAB, true, false, false, false));
            if (!typed.isEmpty()) {
              fire(window, KeyEvent.KEY_TYPED, typed, KeyCode.UNDEFINED);
            }
            window.layOut();
            person(window, KeyCode.ENTER, "\r");
            assertThat(pressed).as("typed: " + typed.length()).containsExactly("Two");
            pressed.clear();
            return 0;
          });
    }
  }

  /** They come as characters, too, which nobody typed. */
  @Test
  void whatWritesNothingIsNotComplainedOf() {
    Toolkit.on(
        () -> {
          SampleWindow window = open();
          for (String each : List.of("\u001b", "\u007f", "\u0001")) {
            key(window, KeyCode.UNDEFINED, each, 4 * PERSON_NANOS);
            key(window, KeyCode.ENTER, "\r", 4 * PERSON_NANOS);
            assertThat(window.shell.message()).isEmpty();
          }
          person(window, KeyCode.ESCAPE, "\u001b");
          assertThat(window.shell.current()).isNotInstanceOf(Keys.class);
          key(window, KeyCode.ENTER, "\r", 4 * PERSON_NANOS);
          assertThat(window.shell.message()).isEmpty();
          return 0;
        });
  }

  @Test
  void digitsTypedAnywhereAreACode() {
    Toolkit.on(
        () -> {
          SampleWindow window = open();
          for (char digit : "000588".toCharArray()) {
            key(window, KeyCode.UNDEFINED, Character.toString(digit), PERSON_NANOS);
          }
          key(window, KeyCode.ENTER, "\r", PERSON_NANOS);
          assertThat(scans).containsExactly("000588");
          return 0;
        });
  }

  @Test
  void lettersThatNothingTakesAreAnswered() {
    Toolkit.on(
        () -> {
          SampleWindow window = open();
          key(window, KeyCode.A, "a", PERSON_NANOS);
          key(window, KeyCode.ENTER, "\r", PERSON_NANOS);
          assertThat(window.shell.message()).startsWith("Nothing to type here");
          assertThat(pressed).isEmpty();
          return 0;
        });
  }

  @Test
  void aFigureTypedOnTheBudgetStandsInItsPad() {
    Toolkit.on(
        () -> {
          SampleWindow window = open();
          window.shell.context().navigator().show(ScreenId.MONEY);
          window.layOut();
          window.press("Budget");
          window.layOut();
          for (char digit : "1200".toCharArray()) {
            key(window, KeyCode.UNDEFINED, Character.toString(digit), PERSON_NANOS);
          }
          key(window, KeyCode.ENTER, "\r", PERSON_NANOS);
          assertThat(window.words()).contains("1200.00");
          return 0;
        });
  }

  /** Whole pages, and the first and the last at once; further than that there is nothing. */
  @Test
  void homeEndAndThePageKeysTurnAList() {
    Toolkit.on(
        () -> {
          SampleWindow window = open();
          List<Choice<Integer>> many =
              IntStream.rangeClosed(1, 60)
                  .mapToObj(at -> new Choice<>(at, "Row " + at, ""))
                  .toList();
          ScreenContext context = window.shell.context();
          context.navigator().open(() -> new ChoiceScreen<>(context, "Which?", many, at -> {}));
          window.layOut();
          person(window, KeyCode.END, "");
          assertThat(window.words()).contains("Row 60").doesNotContain("Row 1\n");
          person(window, KeyCode.PAGE_UP, "");
          assertThat(window.words()).doesNotContain("Row 60");
          person(window, KeyCode.PAGE_DOWN, "");
          person(window, KeyCode.PAGE_DOWN, "");
          assertThat(window.words()).contains("Row 60");
          person(window, KeyCode.HOME, "");
          assertThat(window.words()).contains("Row 2").doesNotContain("Row 60");
          return 0;
        });
  }

  @Test
  void escapeGoesBackAndF1Helps() {
    Toolkit.on(
        () -> {
          SampleWindow window = open();
          person(window, KeyCode.F1, "");
          assertThat(window.shell.current()).isInstanceOf(HelpScreen.class);
          person(window, KeyCode.ESCAPE, "");
          assertThat(window.shell.current()).isInstanceOf(Keys.class);
          person(window, KeyCode.ESCAPE, "");
          assertThat(window.shell.current()).isNotInstanceOf(Keys.class);
          return 0;
        });
  }

  @Test
  void everyKeyOnTheGlassIsReachedByTab() {
    Toolkit.on(
        () -> {
          SampleWindow window = open();
          List<Object> reached = new ArrayList<>();
          int all = window.targets().size();
          for (int step = 0; step < all; step++) {
            person(window, KeyCode.TAB, "\t");
            reached.add(window.scene.getFocusOwner());
          }
          assertThat(reached).containsExactlyInAnyOrderElementsOf(window.targets());
          return 0;
        });
  }

  /** A place is named by its number and a letter or two, and no key presses one unseen. */
  @Test
  void aPlaceIsNamedByItsNumberAndALetter() {
    Toolkit.on(
        () -> {
          SampleWindow window = open();
          window.shell.context().navigator().show(ScreenId.PUT_TOGETHER);
          window.layOut();
          window.moment();
          person(window, KeyCode.TAB, "\t");
          assertThat(window.scene.getFocusOwner().getStyleClass()).doesNotContain(Touch.ZONE);
          for (String each : List.of("3", "i", "\r")) {
            key(window, KeyCode.UNDEFINED, each, PERSON_NANOS);
          }
          assertThat(window.words()).contains("3 IN").contains("Now scan the part");
          for (String each : List.of("9", "x", "\r")) {
            key(window, KeyCode.UNDEFINED, each, PERSON_NANOS);
          }
          assertThat(window.shell.message()).isEqualTo(NamesPlaces.WANTED);
          return 0;
        });
  }

  /** The ring runs round letters that it would cut through. */
  @Test
  void theRingCutsNoLetters() {
    Toolkit.on(
        () -> {
          SampleWindow window = open();
          window.shell.context().navigator().show(ScreenId.JOB_HOME);
          window.layOut();
          Region ring = (Region) window.shell.lookup(".focus-ring");
          int cut = 0;
          for (int step = 0; step < window.targets().size(); step++) {
            person(window, KeyCode.TAB, "\t");
            Bounds outer = ring.localToScene(ring.getLayoutBounds());
            Bounds inner =
                new BoundingBox(
                    outer.getMinX() + 9,
                    outer.getMinY() + 9,
                    outer.getWidth() - 18,
                    outer.getHeight() - 18);
            for (Node each : window.shell.lookupAll(".drawn-letter")) {
              Bounds letters = each.localToScene(each.getLayoutBounds());
              cut += letters.intersects(outer) && !inner.contains(letters) ? 1 : 0;
            }
          }
          assertThat(cut).isZero();
          return 0;
        });
  }
}
