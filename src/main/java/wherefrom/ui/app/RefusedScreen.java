package wherefrom.ui.app;

import java.util.function.Consumer;
import javafx.scene.layout.VBox;
import wherefrom.ui.controls.AnswerCard;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.ScreenAnswer;

/**
 * A code that was read and means nothing here. Its answer takes the whole screen, so that nothing
 * that was said of another part can be taken for it; the next scan goes on where this one was made.
 */
public final class RefusedScreen extends Page implements Scannable {
  private final Consumer<Scanned> next;

  RefusedScreen(ScreenContext context, ScreenAnswer answer, Consumer<Scanned> next) {
    super(context, "What was scanned", context.job().isPresent());
    this.next = next;
    AnswerCard card = new AnswerCard(context.touch());
    card.show(answer);
    VBox view =
        Panes.column(
            context.scale(),
            card,
            context.touch().tag("OK", "or scan the next tag", context.navigator()::back));
    lay(view);
  }

  @Override
  public void hidden() {
    context.sounds().hush();
  }

  @Override
  public void scan(Scanned scanned) {
    next.accept(scanned);
  }
}
