package wherefrom.ui.app;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.regex.Pattern;
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
  private static final String ENTER = "\r";
  private static final String NEW_LINE = "\n";
  private static final String ERASE = "\b";
  private static final String TAB = "\t";
  private static final String ENDS = "\r\n\t";

  /** Made when something is first typed: the window's first picture does without. */
  private static final class Typed {
    /** The six digits under a symbol, or the sixteen in it, or what of them was typed. */
    static final Pattern CODE = Pattern.compile("[0-9]{1,16}");

    static final Pattern FIGURE = Pattern.compile("[0-9]+([.,][0-9]+)?");
  }

  private final ScreenContext context;
  private final Supplier<Screen> current;
  private final Scans scans;
  private Optional<BurstDecoder> made = Optional.empty();
  private final FocusWalk walk;
  private final Steering steering;
  private boolean shift;
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
            shift = event.isShiftDown();
            steering.press(event.getCode());
          } else if (event.getCode() == KeyCode.ENTER) {
            walk.release();
          }
        });
    walk.attach(scene);
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
    if (character.isEmpty()) {
      return;
    }
    if (character.equals(ERASE)) {
      typable(Typable::erase);
      return;
    }
    int codePoint = character.codePointAt(0);
    boolean entry = Typable.of(current.get()).isPresent();
    intoEntry |= entry;
    boolean ended = take(decoder().typed(codePoint, now()));
    if (ENDS.indexOf(codePoint) >= 0) {
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
    if (typed.endsWith(TAB)) {
      walk.step(shift);
    } else if (Typable.of(current.get()).isPresent()) {
      if (ends(typed) && !walk.press()) {
        typable(Typable::enter);
      }
    } else if (takesNumbers() && !typed.isBlank()) {
      number(typed);
    } else if (Typed.CODE.matcher(typed.strip()).matches() && current.get() instanceof Scannable) {
      code(typed.strip(), ends(typed));
    } else if (current.get() instanceof OpensPad asks
        && Typed.FIGURE.matcher(typed.strip()).matches()) {
      figure(asks, typed);
    } else if (ends(typed) && typed.isBlank()) {
      walk.enter();
    } else if (!typed.isBlank()) {
      context.say(nowhere());
    }
  }

  /** A figure that is typed where one is asked for on a pad stands in that pad. */
  private void figure(OpensPad asks, String typed) {
    asks.openPad();
    typed.strip().codePoints().forEach(each -> typable(pad -> pad.type(Character.toString(each))));
    if (ends(typed)) {
      typable(Typable::enter);
    }
  }

  /** The number on a box is longer than what was typed in one go: it goes on in an entry. */
  private void number(String typed) {
    String begun = typed.strip();
    if (ends(typed)) {
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

  private String nowhere() {
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

  private static boolean ends(String typed) {
    return typed.endsWith(ENTER) || typed.endsWith(NEW_LINE);
  }

  /** Words typed fast are the entry's, even where it was left before they had ended. */
  private void foreign(BurstAnswer.Foreign foreign) {
    if (intoEntry) {
      if (ends(foreign.typed())) {
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
