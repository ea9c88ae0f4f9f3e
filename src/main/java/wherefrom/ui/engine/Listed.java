package wherefrom.ui.engine;

import java.util.List;
import java.util.function.Consumer;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Help;
import wherefrom.ui.app.Scannable;
import wherefrom.ui.app.Scanned;
import wherefrom.ui.app.ScreenContext;

/** Parts of the engine in a list. Who holds the part scans it here as on the drawing. */
final class Listed<T> extends ChoiceScreen<T> implements Scannable {
  private final EngineIndex index;

  Listed(ScreenContext context, EngineIndex index, List<Choice<T>> choices, Consumer<T> done) {
    super(context, index.title(), choices, done);
    this.index = index;
  }

  @Override
  public Help help() {
    return Help.of(ChoiceScreen.class);
  }

  @Override
  public void scan(Scanned scanned) {
    index.scan(scanned);
  }
}
