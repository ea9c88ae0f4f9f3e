package wherefrom.ui.shop;

import java.util.List;
import java.util.Optional;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.parts.PartKind;
import wherefrom.text.Words;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Scannable;
import wherefrom.ui.app.Scanned;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.drawn.EngineView;
import wherefrom.ui.drawn.KindKey;
import wherefrom.ui.engine.EnginePages;

/** The drawn engine, on which parts are tapped instead of scanned. */
public final class TapScreen implements Screen, Scannable {
  private final ScreenContext context;
  private final String title;
  private final Taking taking;
  private final FitText said;
  private final VBox view;
  private PartKind kind;
  private EnginePages pages;
  private EngineView engine;

  TapScreen(ScreenContext context, String title, Taking taking) {
    this.context = context;
    this.title = title;
    this.taking = taking;
    kind = kinds().get(0);
    pages = new EnginePages(context, new TapIndex(context, taking, kind));
    engine = pages.view();
    said = context.touch().small("").within(2);
    view = Panes.column(context.scale());
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
                    .open(() -> new ChoiceScreen<>(context, title, choices, this::choose)));
  }

  @Override
  public String title() {
    return title;
  }

  @Override
  public String aside() {
    return kind.plural();
  }

  @Override
  public Region view() {
    return view;
  }

  @Override
  public void shown() {
    draw();
  }

  @Override
  public void changed() {
    draw();
  }

  private void draw() {
    said.setWords(taking.words());
    pages.show(engine);
    view.getChildren().setAll(kindKeys(), engine, said);
  }
}
