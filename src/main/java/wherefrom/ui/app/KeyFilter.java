package wherefrom.ui.app;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.animation.PauseTransition;
import javafx.scene.Scene;
import javafx.scene.input.KeyEvent;
import javafx.util.Duration;
import wherefrom.job.settings.Settings;
import wherefrom.job.wedge.BurstAnswer;
import wherefrom.job.wedge.BurstDecoder;
import wherefrom.job.wedge.ScannerSetup;

/**
 * Takes every key of the window before anything else sees it: bursts of a keyboard-type scanner go
 * to the screen as scans, typing goes to the screen that is open for typing. No key ever reaches a
 * focused control, so no Enter can press one.
 */
public final class KeyFilter {
  private static final String ENTER = "\r";
  private static final String NEW_LINE = "\n";
  private static final String ERASE = "\b";
  private static final String ENDS = "\r\n\t";

  private final Desk desk;
  private final Supplier<Screen> current;
  private final Scans scans;
  private final BurstDecoder decoder;
  private boolean intoEntry;
  private final PauseTransition pause = new PauseTransition(Duration.millis(BurstDecoder.PAUSE_MS));
  private final PauseTransition end = new PauseTransition(Duration.millis(BurstDecoder.END_MS));

  KeyFilter(Desk desk, Supplier<Screen> current, Scans scans) {
    this.desk = desk;
    this.scans = scans;
    this.current = current;
    this.decoder = new BurstDecoder(setup(desk.settings()));
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
          }
        });
  }

  void expectSetUpCard() {
    decoder.expectSetUpCard();
  }

  /** Reads as the settings say from now on. */
  void setUp() {
    decoder.use(setup(desk.settings()));
  }

  private static ScannerSetup setup(Settings settings) {
    Settings.Scanner typing = settings.scanner();
    return new ScannerSetup(typing.prefix(), typing.suffix(), typing.digits());
  }

  private long now() {
    return desk.nanos().getAsLong() / 1_000_000;
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
    if (!Character.isISOControl(codePoint)) {
      typable(open -> open.type(character));
    }
    boolean entry = current.get() instanceof Typable;
    intoEntry |= entry;
    boolean ended = take(decoder.typed(codePoint, now()));
    if (ENDS.indexOf(codePoint) >= 0) {
      // Nothing stands any more: what comes next is nobody's yet, whatever the Enter closed.
      intoEntry = false;
    } else if (ended) {
      intoEntry = entry;
    }
    pause.playFromStart();
    end.playFromStart();
  }

  private void typable(Consumer<Typable> deed) {
    if (current.get() instanceof Typable open) {
      deed.accept(open);
    }
  }

  private void paused() {
    if (take(decoder.paused(now()))) {
      intoEntry = false;
    }
  }

  /** Whether something had ended. */
  private boolean take(List<BurstAnswer> answers) {
    answers.forEach(this::take);
    return !answers.isEmpty();
  }

  private void take(BurstAnswer answer) {
    if (answer instanceof BurstAnswer.Scan scan) {
      takeBack(scan.typed());
      scans.hand(scan.code());
    } else if (answer instanceof BurstAnswer.BadCheck bad) {
      takeBack(bad.typed());
      scans.hand(bad.digits());
    } else if (answer instanceof BurstAnswer.Taught taught) {
      takeBack(taught.typed());
      learn(taught.setup());
    } else if (answer instanceof BurstAnswer.Foreign foreign) {
      foreign(foreign);
    } else if (ends(answer.typed())) {
      typable(Typable::enter);
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

  /** Takes a scan's characters back out of what is open for typing. */
  private void takeBack(String typed) {
    typed
        .codePoints()
        .filter(character -> !Character.isISOControl(character))
        .forEach(character -> typable(Typable::erase));
  }

  private void learn(ScannerSetup setup) {
    decoder.use(setup);
    desk.change(
        desk.settings()
            .withScanner(
                new Settings.Scanner(setup.prefix(), setup.suffix(), setup.learnedDigits())));
    desk.say("The scanner's digits are learned. Scan any tag to try it.");
    desk.navigator().changed();
  }
}
