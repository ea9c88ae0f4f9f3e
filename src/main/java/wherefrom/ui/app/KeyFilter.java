package wherefrom.ui.app;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.animation.PauseTransition;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.util.Duration;
import wherefrom.job.settings.Settings;
import wherefrom.job.wedge.BurstAnswer;
import wherefrom.job.wedge.BurstDecoder;
import wherefrom.job.wedge.ScannerSetup;

/**
 * Takes every key of the window before anything else sees it: bursts of a keyboard-type scanner go
 * to the screen as scans, typing goes to the screen that is open for typing, and the digits that a
 * person types anywhere else are a code. Tab, the arrows, Enter and Escape work the keys on the
 * glass; none that belongs to a burst does.
 */
public final class KeyFilter {
  private final ScreenContext context;
  private final Supplier<Screen> current;
  private final Scans scans;
  private Optional<BurstDecoder> made = Optional.empty();
  private final FocusWalk walk;
  private final Steering steering;
  private boolean backTab;
  private boolean intoEntry;

  /**
   * How the entry stood before each character that may yet turn out to be a scan's, newest first.
   */
  private final Deque<Runnable> before = new ArrayDeque<>();

  private final PauseTransition pause = new PauseTransition(Duration.millis(BurstDecoder.PAUSE_MS));
  private final PauseTransition end = new PauseTransition(Duration.millis(BurstDecoder.END_MS));

  KeyFilter(
      ScreenContext context,
      Supplier<Screen> current,
      Scans scans,
      FocusWalk walk,
      Steering steering) {
    this.context = context;
    this.walk = walk;
    this.steering = steering;
    this.scans = scans;
    this.current = current;
    pause.setOnFinished(event -> paused());
    end.setOnFinished(event -> paused());
  }

  /** Takes this scene's keys from now on. */
  public void attach(Scene scene) {
    scene.addEventFilter(
        KeyEvent.ANY,
        event -> {
          event.consume();
          if (event.getEventType() == KeyEvent.KEY_TYPED) {
            typed(event.getCharacter());
          } else if (event.getEventType() == KeyEvent.KEY_PRESSED) {
            pressed(event);
          } else if (event.getCode() == KeyCode.ENTER) {
            walk.release();
          }
        });
    walk.attach(scene);
  }

  /**
   * Tab with shift is taken as it is pressed: with some systems it types nothing, and no scanner
   * ends with it.
   */
  private void pressed(KeyEvent event) {
    backTab = event.getCode() == KeyCode.TAB && event.isShiftDown();
    if (backTab) {
      walk.step(true);
    } else {
      steering.press(event.getCode());
    }
  }

  /** Made when the first key wants it: the window's first picture does without. */
  private BurstDecoder decoder() {
    BurstDecoder decoder = made.orElseGet(() -> new BurstDecoder(setup(context.settings())));
    made = Optional.of(decoder);
    return decoder;
  }

  void expectSetUpCard(boolean expected) {
    decoder().expectSetUpCard(expected);
  }

  /** Reads as the settings say from now on. */
  void setUp() {
    decoder().use(setup(context.settings()));
  }

  private static ScannerSetup setup(Settings settings) {
    Settings.Scanner typing = settings.scanner();
    return new ScannerSetup(typing.prefix(), typing.suffix(), typing.digits());
  }

  private long now() {
    return context.nanos().getAsLong() / 1_000_000;
  }

  private void typed(String character) {
    if (character.isEmpty() || TypedText.writesNothing(character) || isBackTab(character)) {
      return;
    }
    if (character.equals(TypedText.ERASE)) {
      typable(Typable::erase);
      return;
    }
    int codePoint = character.codePointAt(0);
    boolean entry = Typable.of(current.get()).isPresent();
    intoEntry |= entry;
    boolean ended = take(decoder().typed(codePoint, now()));
    if (TypedText.isEnd(codePoint)) {
      // Nothing stands any more: what comes next is nobody's yet, whatever the Enter closed.
      intoEntry = false;
    } else if (ended) {
      intoEntry = entry;
    }
    if (!Character.isISOControl(codePoint)) {
      enter(character);
    }
    pause.playFromStart();
    end.playFromStart();
  }

  /** What a Tab with shift types where it types something: it was taken when it was pressed. */
  private boolean isBackTab(String character) {
    return backTab && character.equals(TypedText.TAB);
  }

  private void enter(String character) {
    Optional<Typable> open = Typable.of(current.get());
    before.push(open.map(Typable::remember).orElse(() -> {}));
    open.ifPresent(pad -> pad.type(character));
  }

  private void typable(Consumer<Typable> deed) {
    Typable.of(current.get()).ifPresent(deed);
  }

  private void paused() {
    if (take(decoder().paused(now()))) {
      intoEntry = false;
    }
  }

  /** Whether something had ended. */
  private boolean take(List<BurstAnswer> answers) {
    if (answers.isEmpty()) {
      return false;
    }
    answers.forEach(this::take);
    before.clear();
    return true;
  }

  private void take(BurstAnswer answer) {
    Runnable deed =
        answer.match(
            scan -> () -> take(scan.typed(), () -> scans.hand(scan.code())),
            bad -> () -> take(bad.typed(), () -> scans.hand(bad.digits())),
            foreign -> () -> foreign(foreign),
            taught -> () -> take(taught.typed(), () -> learn(taught.setup())),
            typing -> () -> person(typing.typed()));
    context.guard(deed);
  }

  private void take(String typed, Runnable deed) {
    takeBack(typed);
    deed.run();
  }

  /** What a person typed, with the key that ended it, if one did. */
  private void person(String typed) {
    if (typed.endsWith(TypedText.TAB)) {
      walk.step(false);
    } else if (Typable.of(current.get()).isPresent()) {
      if (TypedText.isEntered(typed) && !walk.press()) {
        typable(Typable::enter);
      }
    } else if (takesNumbers() && !typed.isBlank()) {
      number(typed);
    } else if (TypedText.isCode(typed) && current.get() instanceof Scannable) {
      code(typed.strip(), TypedText.isEntered(typed));
    } else if (current.get() instanceof OpensPad asks && TypedText.isFigure(typed)) {
      figure(asks, typed);
    } else if (TypedText.isEntered(typed) && typed.isBlank()) {
      walk.enter();
    } else if (TypedText.isWritten(typed) && !isPlace(typed)) {
      context.say(nowhere());
    }
  }

  /** A figure that is typed where one is asked for on a pad stands in that pad. */
  private void figure(OpensPad asks, String typed) {
    asks.openPad();
    typed.strip().codePoints().forEach(each -> typable(pad -> pad.type(Character.toString(each))));
    if (TypedText.isEntered(typed)) {
      typable(Typable::enter);
    }
  }

  /** The number on a box is longer than what was typed in one go: it goes on in an entry. */
  private void number(String typed) {
    String begun = typed.strip();
    if (TypedText.isEntered(typed)) {
      scans.hand(begun);
    } else {
      context
          .navigator()
          .open(() -> new TextEntryScreen(context, "Number on the box", begun, this::whole));
    }
  }

  private void whole(String number) {
    if (number.isEmpty()) {
      throw new IllegalArgumentException("Type the number on the box first.");
    }
    scans.hand(number);
  }

  private boolean takesNumbers() {
    return current.get() instanceof Scannable screen && screen.takesNumbers();
  }

  private boolean isPlace(String typed) {
    return current.get() instanceof NamesPlaces drawn && drawn.takePlace(typed.strip());
  }

  private String nowhere() {
    if (current.get() instanceof NamesPlaces) {
      return NamesPlaces.WANTED;
    }
    return current.get() instanceof Scannable
        ? "Nothing to type here but the six digits of a tag."
        : "Nothing to type here. Press a key first.";
  }

  /** Digits that nobody asked for are a code; one that is not whole goes on in its own pad. */
  private void code(String digits, boolean ended) {
    if (ended) {
      scans.hand(digits);
    } else {
      TypedCode.begun(context, digits, scans::hand);
    }
  }

  /** Words typed fast are the entry's, even where it was left before they had ended. */
  private void foreign(BurstAnswer.Foreign foreign) {
    if (intoEntry) {
      if (TypedText.isEntered(foreign.typed())) {
        typable(Typable::enter);
      }
    } else {
      scans.hand(foreign.text());
    }
  }

  /** Leaves what is open for typing as it was before a scan's characters, full or not. */
  private void takeBack(String typed) {
    Runnable asBefore = () -> {};
    long characters = typed.codePoints().filter(each -> !Character.isISOControl(each)).count();
    for (; characters > 0 && !before.isEmpty(); characters--) {
      asBefore = before.pop();
    }
    asBefore.run();
  }

  private void learn(ScannerSetup setup) {
    decoder().use(setup);
    context.change(
        context
            .settings()
            .withScanner(
                new Settings.Scanner(setup.prefix(), setup.suffix(), setup.learnedDigits())));
    context.say("The scanner's digits are learned. Scan any tag to try it.");
    context.navigator().changed();
  }
}
