package wherefrom.ui.app;

import java.util.function.Consumer;
import wherefrom.ui.controls.Keypad;

/** Asks for the six digits of a tag; whoever can scan it after all is understood, too. */
public final class CodeScreen extends NumberEntryScreen implements Scannable {
  private static final int DIGITS = 6;

  private final Consumer<Scanned> taker;

  /**
   * @param taker is given what was typed or scanned, once it is settled whose code it is
   */
  CodeScreen(ScreenContext context, String question, Consumer<Scanned> taker) {
    super(
        context,
        "Type a code",
        question,
        Keypad.digits(context.touch(), DIGITS),
        false,
        typed -> TypedCode.settle(context, Scanned.of(context, typed), taker));
    this.taker = taker;
  }

  @Override
  public void scan(Scanned scanned) {
    context.navigator().back();
    taker.accept(scanned);
  }
}
