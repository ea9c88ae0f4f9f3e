package wherefrom.ui.shop;

import java.util.ArrayList;
import java.util.List;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.text.Words;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.Scannable;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.drawn.EngineView;
import wherefrom.ui.engine.EnginePages;

/** The drawn engine, on which parts are tapped instead of scanned. */
public final class TapScreen extends Page implements Scannable {
  private final Taking taking;
  private final TapIndex index;
  private final EnginePages pages;
  private final EngineView engine;
  private final KeyRow keys;
  private final FitText said;
  private boolean up;

  TapScreen(Desk desk, String title, Taking taking) {
    super(desk, title);
    this.taking = taking;
    index = new TapIndex(desk, kinds().get(0), this::tap, this::scanOnPage);
    pages = new EnginePages(desk, index);
    engine = pages.view();
    keys = KeyRow.of(desk);
    said = touch().text("");
    lay(Panes.column(desk.scale(), said, engine, keys));
  }

  private List<PartKind> kinds() {
    return desk.state().kinds().stream().sorted().toList();
  }

  private void tap(Place place) {
    taking.tap(place.kind(), place.spot());
    tell();
  }

  private void scanOnPage(String text) {
    taking.scan(text);
    tell();
  }

  /** On a page of the engine what came of it stands in the row of the title. */
  private void tell() {
    desk.navigator().changed();
    if (!up) {
      desk.say(taking.words());
    }
  }

  @Override
  public void scan(String text) {
    taking.scan(text);
  }

  private void chooseKind() {
    List<Choice<PartKind>> choices = new ArrayList<>();
    kinds().forEach(each -> choices.add(new Choice<>(each, each.plural(), "")));
    open(() -> new ChoiceScreen<>(desk, "Which kind?", choices, this::show));
  }

  /** The screen is on again before the choice arrives. */
  private void show(PartKind chosen) {
    index.choose(chosen);
    refresh();
  }

  @Override
  public void shown() {
    up = true;
    refresh();
  }

  @Override
  public void hidden() {
    up = false;
  }

  @Override
  protected void refresh() {
    String shown = Words.capital(index.tappedKind().plural());
    keys.setActs(List.of(act(touch().brief("Shown: " + shown, shown), this::chooseKind)));
    said.setWords(taking.words());
    engine.choose(index.tappedKind());
    pages.show(engine);
  }
}
