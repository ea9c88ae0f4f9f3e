package wherefrom.ui.shop;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import wherefrom.engine.Spot;
import wherefrom.job.EngineJob;
import wherefrom.job.PlaceState;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.text.Words;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Scannable;
import wherefrom.ui.app.Screen;
import wherefrom.ui.controls.EngineDrawing;
import wherefrom.ui.controls.EngineSide;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Fold;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.TouchKey;

/** The drawn engine, on which parts are tapped instead of scanned. */
public final class TapScreen implements Screen, Scannable {
  private final Desk desk;
  private final String title;
  private final Taking taking;
  private final EngineDrawing drawing;
  private final TouchKey kindKey;
  private final FitText said;
  private final StackPane view = Panes.grow(new StackPane());
  private PartKind kind;

  TapScreen(Desk desk, String title, Taking taking) {
    this.desk = desk;
    this.title = title;
    this.taking = taking;
    kind = kinds().get(0);
    drawing = new EngineDrawing(desk.touch(), desk.state().layout(), this::tap);
    kindKey = desk.touch().primary("", this::chooseKind);
    said = desk.touch().text("");
  }

  private List<PartKind> kinds() {
    return desk.state().kinds().stream().sorted().toList();
  }

  private void tap(Spot spot) {
    taking.tap(kind, spot);
    desk.navigator().changed();
  }

  @Override
  public void scan(String text) {
    taking.scan(text);
  }

  private void chooseKind() {
    List<Choice<PartKind>> choices = new ArrayList<>();
    kinds().forEach(each -> choices.add(new Choice<>(each, each.plural(), "")));
    desk.navigator()
        .open(
            () ->
                new ChoiceScreen<>(desk, "Shown on the engine", choices, chosen -> kind = chosen));
  }

  @Override
  public String title() {
    return title;
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
    EngineJob state = desk.state();
    kindKey.setWords(desk.touch().brief("Shown: " + kind.plural(), Words.capital(kind.plural())));
    said.setWords(taking.words());
    VBox words = Panes.column(desk.scale(), kindKey, said);
    drawing.show(
        EngineSide.of(kind),
        spot ->
            java.util.Optional.of(spot)
                .filter(at -> Place.canLive(kind, at))
                .map(at -> new Place(kind, at))
                .filter(place -> state.places().contains(place))
                .<PlaceState>map(state::state));
    view.getChildren().setAll(new Fold(desk.touch(), words, drawing));
  }
}
