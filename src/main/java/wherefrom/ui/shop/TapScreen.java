package wherefrom.ui.shop;

import java.util.List;
import java.util.Optional;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.parts.PartKind;
import wherefrom.text.Words;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.Scannable;
import wherefrom.ui.app.Scanned;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.drawn.EngineView;
import wherefrom.ui.drawn.KindKey;
import wherefrom.ui.engine.EnginePages;

/** The drawn engine, on which parts are tapped instead of scanned. */
public final class TapScreen extends Page implements Scannable {
  private final Taking taking;
  private final FitText said;
  private final VBox view;
  private PartKind kind;
  private EnginePages pages;
  private EngineView engine;

  TapScreen(ScreenContext context, String title, Taking taking) {
    super(context, title);
    this.taking = taking;
    kind = kinds().get(0);
    pages = new EnginePages(context, new TapIndex(context, taking, kind));
    engine = pages.view();
    said = context.touch().small("").within(context.touch().isLarge() ? 3 : 2);
    view = Panes.column(context.scale());
    lay(view);
  }

  private List<PartKind> kinds() {
    return context.state().kinds().stream().sorted().toList();
  }

  @Override
  public void scan(Scanned scanned) {
    taking.scan(scanned);
  }

  private void choose(PartKind chosen) {
    kind = chosen;
    pages = new EnginePages(context, new TapIndex(context, taking, kind));
    engine = pages.view();
    context.navigator().changed();
  }

  /** The kinds as their shapes, or behind one key where words are large. */
  private Region kindKeys() {
    if (!context.touch().isLarge()) {
      return KindKey.row(
          context.touch(), context.state().layout(), kinds(), Optional.of(kind), this::choose);
    }
    List<Choice<PartKind>> choices =
        kinds().stream().map(each -> new Choice<>(each, each.plural(), "")).toList();
    return context
        .touch()
        .key(
            Words.capital(kind.plural()),
            () ->
                context
                    .navigator()
                    .open(() -> new ChoiceScreen<>(context, title(), choices, this::choose)));
  }

  @Override
  public String aside() {
    return kind.plural();
  }

  @Override
  protected void refresh() {
    said.setWords(taking.words());
    pages.show(engine);
    view.getChildren().setAll(kindKeys(), engine, said);
  }
}
