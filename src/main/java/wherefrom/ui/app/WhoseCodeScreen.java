package wherefrom.ui.app;

import java.util.List;
import java.util.function.Consumer;

/** Asks whether a typed code is this engine's; scanning the tag itself answers that. */
public final class WhoseCodeScreen extends ChoiceScreen<String> implements Scannable {
  private final Consumer<Scanned> taker;

  /**
   * @param done is given the code that was chosen
   * @param taker is given what was scanned instead
   */
  WhoseCodeScreen(
      ScreenContext context,
      String question,
      List<Choice<String>> choices,
      Consumer<String> done,
      Consumer<Scanned> taker) {
    super(context, question, choices, done);
    this.taker = taker;
  }

  @Override
  public void scan(Scanned scanned) {
    context.navigator().back();
    taker.accept(scanned);
  }
}
