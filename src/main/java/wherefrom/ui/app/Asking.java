package wherefrom.ui.app;

import java.util.function.Consumer;
import wherefrom.ui.controls.FigurePad;

/** Asks one thing on a pad, goes back to where it was asked, and hands the answer over. */
public abstract class Asking extends Page implements Typable {
  private final FigurePad pad;
  private final Consumer<String> done;

  protected Asking(ScreenContext context, String title, FigurePad pad, Consumer<String> done) {
    super(context, title, false);
    this.pad = pad;
    this.done = done;
  }

  /**
   * Goes back, then hands an answer over, so that what it leads to comes up after. Where it cannot
   * be kept it is asked for again, as it was typed.
   */
  protected final void answer(String answer) {
    context.navigator().back();
    if (!context.succeeds(() -> done.accept(answer))) {
      context.navigator().open(() -> this);
    }
  }

  /** Whether nothing was typed, which is then said. */
  protected final boolean isEmpty() {
    boolean empty = pad.typed().isEmpty();
    if (empty) {
      context.say("Type the figure first.");
    }
    return empty;
  }

  @Override
  public final void type(String character) {
    pad.type(character);
  }

  @Override
  public final void erase() {
    pad.erase();
  }

  @Override
  public final Runnable remember() {
    return pad.remember();
  }

  @Override
  public final void takeOver(Screen before) {
    if (before instanceof Asking same) {
      same.pad.typed().codePoints().forEach(each -> pad.type(Character.toString(each)));
    }
  }

  @Override
  public void enter() {
    answer(pad.typed());
  }
}
