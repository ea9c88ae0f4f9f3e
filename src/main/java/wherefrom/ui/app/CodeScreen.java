package wherefrom.ui.app;

import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.layout.Region;
import wherefrom.ui.controls.Keypad;

/** Asks for the six digits of a tag; whoever can scan it after all is understood, too. */
public final class CodeScreen extends NumberEntryScreen implements Scannable {
  private static final int DIGITS = 6;

  private final Consumer<Scanned> taker;

  /**
   * @param taker is given what was typed or scanned, once it is settled whose code it is
   * @param noTag what to do where there is no tag; empty where a tag is what it is about
   */
  CodeScreen(
      ScreenContext context, String question, Consumer<Scanned> taker, Optional<Runnable> noTag) {
    super(
        context,
        "Type a code",
        question,
        Keypad.digits(context.touch(), DIGITS),
        noTag.stream().<Region>map(deed -> noTag(context, deed)).toList(),
        typed -> TypedCode.settle(context, Scanned.of(context, whole(typed)), taker));
    this.taker = taker;
  }

  /** What is begun is no foreign code: the rest is asked for. */
  private static String whole(String typed) {
    if (typed.length() < DIGITS) {
      throw new IllegalArgumentException("Type all six digits first.");
    }
    return typed;
  }

  private static Region noTag(ScreenContext context, Runnable deed) {
    return context
        .touch()
        .key(
            context.touch().brief("No tag on it", "No tag"),
            () -> {
              context.navigator().back();
              deed.run();
            });
  }

  @Override
  public void scan(Scanned scanned) {
    context.navigator().back();
    taker.accept(scanned);
  }
}
