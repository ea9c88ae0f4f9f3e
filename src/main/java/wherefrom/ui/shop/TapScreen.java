package wherefrom.ui.shop;

import java.util.List;
import java.util.Optional;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.parts.PartKind;
import wherefrom.text.Words;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Scannable;
import wherefrom.ui.app.Screen;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.drawn.EngineView;
import wherefrom.ui.drawn.KindKey;
import wherefrom.ui.engine.EnginePages;

/** The drawn engine, on which parts are tapped instead of scanned. */
public final class TapScreen implements Screen, Scannable {
  private final Desk desk;
  private final String title;
  private final Taking taking;
  private final FitText said;
  private final VBox view;
  private PartKind kind;
  private EnginePages pages;
  private EngineView engine;

  TapScreen(Desk desk, String title, Taking taking) {
    this.desk = desk;
    this.title = title;
    this.taking = taking;
    kind = kinds().get(0);
    pages = new EnginePages(desk, new TapIndex(desk, taking, kind));
    engine = pages.view();
    said = desk.touch().small("").within(2);
    view = Panes.column(desk.scale());
  }

  private List<PartKind> kinds() {
    return desk.state().kinds().stream().sorted().toList();
  }

  @Override
  public void scan(String text) {
    taking.scan(text);
  }

  private void choose(PartKind chosen) {
    kind = chosen;
    pages = new EnginePages(desk, new TapIndex(desk, taking, kind));
    engine = pages.view();
    desk.navigator().changed();
  }

  /** The kinds as their shapes, or behind one key where words are large. */
  private Region kindKeys() {
    if (!desk.touch().isLarge()) {
      return KindKey.row(
          desk.touch(), desk.state().layout(), kinds(), Optional.of(kind), this::choose);
    }
    List<Choice<PartKind>> choices =
        kinds().stream().map(each -> new Choice<>(each, each.plural(), "")).toList();
    return desk.touch()
        .key(
            Words.capital(kind.plural()),
            () ->
                desk.navigator()
                    .open(() -> new ChoiceScreen<>(desk, title, choices, this::choose)));
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
