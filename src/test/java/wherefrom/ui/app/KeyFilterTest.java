package wherefrom.ui.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import javafx.event.Event;
import javafx.event.EventType;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import org.junit.jupiter.api.Test;
import wherefrom.ui.Toolkit;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;
import wherefrom.ui.settings.ScannerScreen;

/** Scans and typing, as keys arrive at the window. */
class KeyFilterTest {
  private static final long SCANNER_NANOS = 2_000_000L;
  private static final long FAST_PERSON_NANOS = 30_000_000L;
  private static final long PERSON_NANOS = 180_000_000L;

  private static final class ScanScreen implements Screen, Scannable {
    final List<String> scans = new ArrayList<>();
    final Region view = new Pane();

    @Override
    public String title() {
      return "Scan";
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

  private static void type(SampleWindow window, String text, long gapNanos) {
    text.codePoints()
        .forEach(
            character -> {
              window.nanos.addAndGet(gapNanos);
              String one = Character.toString(character);
              KeyCode code = one.equals("\r") ? KeyCode.ENTER : KeyCode.UNDEFINED;
              fire(window, KeyEvent.KEY_PRESSED, "", code);
              fire(window, KeyEvent.KEY_TYPED, one, KeyCode.UNDEFINED);
              fire(window, KeyEvent.KEY_RELEASED, "", code);
            });
  }

  private static void fire(
      SampleWindow window, EventType<KeyEvent> type, String character, KeyCode code) {
    KeyEvent event = new KeyEvent(type, character, "", code, false, false, false, false);
    Event.fireEvent(window.scene, event);
  }

  private static ScanScreen scanScreen(SampleWindow window) {
    ScanScreen screen = new ScanScreen();
    window.shell.context().navigator().open(() -> screen);
    return screen;
  }

  @Test
  void aBurstIsAScanWhateverIsOpen() {
    String tag = SampleJob.whole().tag("pushrod@3EX");
    List<String> scans =
        Toolkit.on(
            () -> {
              SampleWindow window = new SampleWindow(96, 100);
              ScanScreen screen = scanScreen(window);
              type(window, tag + "\r", SCANNER_NANOS);
              return screen.scans;
            });
    assertThat(scans).containsExactly(tag);
  }

  @Test
  void aDamagedDigitIsHandedOverToBeRefused() {
    String tag = SampleJob.whole().tag("pushrod@3EX");
    String damaged =
        tag.substring(0, 9) + (char) ('0' + (tag.charAt(9) - '0' + 1) % 10) + tag.substring(10);
    List<String> scans =
        Toolkit.on(
            () -> {
              SampleWindow window = new SampleWindow(96, 100);
              ScanScreen screen = scanScreen(window);
              type(window, damaged + "\r", SCANNER_NANOS);
              return screen.scans;
            });
    assertThat(scans).containsExactly(damaged);
  }

  private static final class BoxScreen implements Screen, Scannable {
    final List<String> scans = new ArrayList<>();
    final Region view = new Pane();

    @Override
    public String title() {
      return "Boxes";
    }

    @Override
    public Region view() {
      return view;
    }

    @Override
    public boolean takesNumbers() {
      return true;
    }

    @Override
    public void scan(Scanned scanned) {
      scans.add(scanned.text());
    }
  }

  /** It is longer than a code, may have letters, and is typed with pauses. */
  @Test
  void theNumberOnABoxCanBeTypedByHand() {
    BoxScreen boxes = new BoxScreen();
    Toolkit.on(
        () -> {
          SampleWindow window = new SampleWindow(96, 100);
          window.shell.context().navigator().open(() -> boxes);
          type(window, "400", PERSON_NANOS);
          window.nanos.addAndGet(3_000_000_000L);
          type(window, "X-", PERSON_NANOS);
          assertThat(window.shell.current().title()).isEqualTo("Number on the box");
          type(window, "77-001\r", PERSON_NANOS);
          return window;
        });
    assertThat(boxes.scans).containsExactly("400X-77-001");
  }

  @Test
  void typingGoesIntoTheEntryThatIsOpenAndEnterEndsIt() {
    List<String> done = new ArrayList<>();
    Toolkit.on(
        () -> {
          SampleWindow window = new SampleWindow(96, 100);
          ScreenContext context = window.shell.context();
          context.navigator().open(() -> new TextEntryScreen(context, "Name", "", done::add));
          type(window, "Launch V8x\b\r", PERSON_NANOS);
          return 0;
        });
    assertThat(done).containsExactly("Launch V8");
  }

  @Test
  void aScanIntoAnOpenEntryLeavesTheTypedWordsAsTheyWere() {
    String tag = SampleJob.whole().tag("pushrod@3EX");
    String shown =
        Toolkit.on(
            () -> {
              SampleWindow window = new SampleWindow(96, 100);
              ScreenContext context = window.shell.context();
              context.navigator().open(() -> new TextEntryScreen(context, "Name", "", words -> {}));
              type(window, "Launch", PERSON_NANOS);
              window.nanos.addAndGet(3_000_000_000L);
              type(window, tag + "\r", SCANNER_NANOS);
              window.layOut();
              return window.words();
            });
    assertThat(shown).contains("Launch_").doesNotContain(tag.substring(0, 8));
  }

  /** The pad takes six figures of the sixteen; none of those before may go with them. */
  @Test
  void aScanIntoAPadThatIsFullLeavesTheFigureAsItWas() {
    String tag = SampleJob.whole().tag("pushrod@3EX");
    List<String> done = new ArrayList<>();
    Toolkit.on(
        () -> {
          SampleWindow window = new SampleWindow(96, 100);
          ScreenContext context = window.shell.context();
          context.navigator().open(() -> NumberEntryScreen.size(context, "Size", "", 7, done::add));
          type(window, "0.0152", PERSON_NANOS);
          window.nanos.addAndGet(3_000_000_000L);
          type(window, tag + "\r", SCANNER_NANOS);
          window.nanos.addAndGet(3_000_000_000L);
          type(window, "\r", PERSON_NANOS);
          return 0;
        });
    assertThat(done).containsExactly("0.0152");
  }

  @Test
  void whereACodeIsAskedForTheTagItselfIsTaken() {
    SampleJob sample = SampleJob.whole();
    String tag = sample.tag("pushrod@3EX");
    Toolkit.on(
        () -> {
          SampleWindow window = new SampleWindow(96, 100);
          ScreenContext context = window.shell.context();
          List<String> taken = new ArrayList<>();
          ScanScreen below = scanScreen(window);
          TypedCode.ask(context, scanned -> taken.add(scanned.text()));
          type(window, "12", PERSON_NANOS);
          window.nanos.addAndGet(3_000_000_000L);
          type(window, tag + "\r", SCANNER_NANOS);
          assertThat(taken).containsExactly(tag);
          assertThat(context.navigator().current()).isSameAs(below);
          return 0;
        });
  }

  @Test
  void wordsTypedFastSayNothingEvenWhereTheEntryIsLeftBeforeTheyEnd() {
    Toolkit.on(
        () -> {
          SampleWindow window = new SampleWindow(96, 100);
          ScreenContext context = window.shell.context();
          context.navigator().open(() -> new TextEntryScreen(context, "Name", "", words -> {}));
          type(window, "Launch V8, 2nd engine", FAST_PERSON_NANOS);
          window.layOut();
          assertThat(window.words()).contains("2nd engine");
          context.navigator().back();
          type(window, "\r", FAST_PERSON_NANOS);
          assertThat(window.shell.message()).isEmpty();
          return 0;
        });
  }

  @Test
  void wordsOfAnEntryThatWasLeftAreNoScanForTheNextScreen() {
    Toolkit.on(
        () -> {
          SampleWindow window = new SampleWindow(96, 100);
          ScreenContext context = window.shell.context();
          ScanScreen below = scanScreen(window);
          context.navigator().open(() -> new TextEntryScreen(context, "Name", "", words -> {}));
          type(window, "Launch engine", FAST_PERSON_NANOS);
          context.navigator().back();
          type(window, "\r", FAST_PERSON_NANOS);
          assertThat(below.scans).isEmpty();
          type(window, "abcdefgh\r", SCANNER_NANOS);
          assertThat(below.scans).containsExactly("abcdefgh");
          return 0;
        });
  }

  @Test
  void aTagWhereNoneIsTakenIsSaid() {
    String tag = SampleJob.whole().tag("pushrod@3EX");
    String said =
        Toolkit.on(
            () -> {
              SampleWindow window = new SampleWindow(96, 100);
              ScreenContext context = window.shell.context();
              context.navigator().open(() -> new TextEntryScreen(context, "Name", "", words -> {}));
              type(window, tag + "\r", SCANNER_NANOS);
              return window.shell.message();
            });
    assertThat(said).contains("This screen takes no tag");
  }

  @Test
  void noKeyReachesWhateverHasTheFocus() {
    List<KeyEvent> reached = new ArrayList<>();
    Toolkit.on(
        () -> {
          SampleWindow window = new SampleWindow(96, 100);
          ScanScreen screen = scanScreen(window);
          screen.view.setFocusTraversable(true);
          screen.view.setOnKeyPressed(reached::add);
          screen.view.requestFocus();
          type(window, "1234567890123456\r", SCANNER_NANOS);
          return 0;
        });
    assertThat(reached).isEmpty();
  }

  /** The Enter that closes an entry has nothing to do with what is scanned after it. */
  @Test
  void theFirstScanAfterAnEntryIsHandedOn() {
    List<String> done = new ArrayList<>();
    List<String> scans =
        Toolkit.on(
            () -> {
              SampleWindow window = new SampleWindow(96, 100);
              ScreenContext context = window.shell.context();
              ScanScreen screen = scanScreen(window);
              context
                  .navigator()
                  .open(() -> NumberEntryScreen.digits(context, "Code", "", 6, done::add));
              type(window, "007633\r", PERSON_NANOS);
              for (String scan : List.of("5901234123457", "another barcode")) {
                window.nanos.addAndGet(3_000_000_000L);
                type(window, scan + "\r", SCANNER_NANOS);
              }
              return screen.scans;
            });
    assertThat(done).containsExactly("007633");
    assertThat(scans).containsExactly("5901234123457", "another barcode");
  }

  @Test
  void whoLeavesTheScannersScreenTeachesNoDigitsElsewhere() {
    Toolkit.on(
        () -> {
          SampleWindow window = new SampleWindow(96, 100);
          window.shell.context().navigator().open(() -> new ScannerScreen(window.shell.context()));
          window.layOut();
          window.press("Teach the digits");
          ScanScreen screen = scanScreen(window);
          type(window, "ABCDEFGHIJ\r", 4_000_000L);
          assertThat(screen.scans).containsExactly("ABCDEFGHIJ");
          assertThat(window.shell.context().settings().scanner().digits()).isEmpty();
          return 0;
        });
  }
}
