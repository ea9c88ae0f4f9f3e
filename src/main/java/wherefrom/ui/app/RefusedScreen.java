package wherefrom.ui.app;

import java.util.function.Consumer;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.ui.controls.AnswerCard;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.ScreenAnswer;

/**
 * A code that was read and means nothing here. Its answer takes the whole screen, so that nothing
 * that was said of another part can be taken for it; the next scan goes on where this one was made.
 */
public final class RefusedScreen implements Screen, Scannable {
  private final ScreenContext context;
  private final Consumer<Scanned> next;
  private final VBox view;

  RefusedScreen(ScreenContext context, ScreenAnswer answer, Consumer<Scanned> next) {
    this.context = context;
    this.next = next;
    AnswerCard card = new AnswerCard(context.touch());
    card.show(answer);
    view =
        Panes.column(
            context.scale(),
            card,
            context.touch().tag("OK", "or scan the next tag", context.navigator()::back));
  }

  @Override
  public String title() {
    return "What was scanned";
  }

  /** A picture may be dropped while no job is open. */
  @Override
  public boolean onJob() {
    return context.job().isPresent();
  }

  @Override
  public Region view() {
    return view;
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
