package wherefrom.ui.benchmap;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import wherefrom.job.Caution;
import wherefrom.job.PlaceState;
import wherefrom.job.tags.Found;
import wherefrom.parts.PartKind;
import wherefrom.rules.Cue;
import wherefrom.text.Words;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.NumberEntryScreen;
import wherefrom.ui.app.Scannable;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.app.TypedCode;
import wherefrom.ui.controls.EngineDrawing;
import wherefrom.ui.controls.EngineSide;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.FlagMark;
import wherefrom.ui.controls.Fold;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.StateMark;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.controls.TouchKey;
import wherefrom.ui.debris.DebrisScreen;
import wherefrom.ui.photos.PhotoIndex;
import wherefrom.ui.takeapart.CautionScreen;
import wherefrom.ui.tray.TrayPurpose;
import wherefrom.ui.tray.TrayTaking;

/** The whole engine: every place and where its part is; off for washing and back by scan. */
public final class BenchMapScreen implements Screen, Scannable {
  private static final String NOT_MATED = "no longer mated";

  private final Desk desk;
  private final BenchMapModel model;
  private final EngineDrawing drawing;
  private final TouchKey kind;
  private final TouchKey wash;
  private final TouchKey cautions;
  private final FitText prompt;
  private final Tiles legend;
  private final StackPane view = Panes.grow(new StackPane());

  public BenchMapScreen(Desk desk) {
    this.desk = desk;
    Touch touch = desk.touch();
    model = new BenchMapModel(desk.getJob(), desk.shelf());
    drawing = new EngineDrawing(touch, desk.state().layout(), spot -> answer(model.tap(spot)));
    kind = touch.primary("", this::chooseKind);
    wash = touch.primary("", this::washing);
    cautions = touch.primary(touch.brief("Cautions of washing", "Cautions"), this::cautions);
    prompt = touch.text("");
    legend = new Tiles(desk.scale(), 3, 2, List.of());
  }

  @Override
  public String title() {
    return "Bench map";
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
  public void hidden() {
    desk.sounds().hush();
  }

  @Override
  public void changed() {
    draw();
  }

  @Override
  public void scan(String text) {
    answer(model.scan(text));
  }

  private void answer(Optional<Cue> cue) {
    cue.ifPresent(desk.sounds()::play);
    Optional<Integer> opened = model.takeOpened();
    Optional<Found> refused = model.takeRefused();
    if (refused.isPresent()) {
      desk.refuse(refused.get(), "");
    } else if (opened.isPresent()) {
      desk.navigator().show(ScreenId.PART, opened.get());
    } else {
      desk.navigator().changed();
    }
  }

  private void draw() {
    boolean washing = model.mode() == BenchMapModel.Mode.WASH;
    String plural = model.kind().plural();
    kind.setWords(desk.touch().brief("Shown: " + plural, Words.capital(plural)));
    wash.setWords(washing ? "Washing: done" : desk.touch().brief("Off for washing", "Washing"));
    prompt.setWords(model.said().isEmpty() ? model.prompt() : model.said());
    List<Node> marks = new ArrayList<>();
    model.counts().forEach(count -> marks.add(mark(count)));
    if (model.flags() > 0) {
      marks.add(mark(new FlagMark(desk.scale()), model.flags() + " " + NOT_MATED));
    }
    legend.setCells(marks);
    List<TouchKey> keys = new ArrayList<>(List.of(kind, wash));
    keys.add(
        washing
            ? cautions
            : desk.touch().primary(desk.touch().brief("Type a code", "Type"), this::typeCode));
    keys.add(
        desk.touch()
            .primary(
                desk.touch().brief("Check a tray", "Tray"),
                () -> TrayTaking.ask(desk, TrayPurpose.CHECK)));
    List<Node> lines = new ArrayList<>(List.of(prompt));
    if (desk.touch().isLarge()) {
      keys.add(desk.touch().primary("Letters", this::letters));
      keys.add(desk.touch().primary("More", this::more));
    } else {
      keys.add(desk.touch().primary("Debris", this::debris));
      keys.add(desk.touch().primary("Photos", () -> PhotoIndex.open(desk)));
      lines.add(legend);
    }
    lines.add(0, Tiles.row(desk.scale(), keys.toArray(Node[]::new)));
    VBox words = Panes.column(desk.scale(), lines.toArray(Node[]::new));
    drawing.flag(model.flagged());
    drawing.show(EngineSide.of(model.kind()), model::stateAt);
    view.getChildren().setAll(new Fold(desk.touch(), words, drawing));
  }

  /** What the letters on the engine mean, on a page of its own where large text fills this one. */
  private void letters() {
    List<Choice<String>> meanings = new ArrayList<>();
    for (BenchMapModel.Count count : model.counts()) {
      PlaceState state = count.state();
      String words = state.letter() + ": " + count.places() + " " + state.words();
      meanings.add(new Choice<>(words, words, ""));
    }
    if (model.flags() > 0) {
      String words = "Toothed frame: " + model.flags() + " " + NOT_MATED;
      meanings.add(new Choice<>(words, words, ""));
    }
    desk.navigator().open(() -> new ChoiceScreen<>(desk, "Letters", meanings, words -> draw()));
  }

  private HBox mark(BenchMapModel.Count count) {
    return mark(
        new StateMark(desk.scale(), count.state()), count.places() + " " + count.state().words());
  }

  private HBox mark(Region figure, String words) {
    HBox mark = new HBox(desk.scale().px(2), figure, desk.touch().small(words));
    mark.setAlignment(Pos.CENTER_LEFT);
    return mark;
  }

  private void chooseKind() {
    List<Choice<PartKind>> kinds =
        model.kinds().stream().map(each -> new Choice<>(each, each.plural(), "")).toList();
    desk.navigator().open(() -> new ChoiceScreen<>(desk, "Shown on the engine", kinds, this::show));
  }

  private void show(PartKind kind) {
    model.show(kind);
    draw();
  }

  private void washing() {
    if (model.mode() == BenchMapModel.Mode.WASH) {
      model.look();
      draw();
      return;
    }
    desk.navigator()
        .open(
            () ->
                NumberEntryScreen.digits(
                    desk,
                    "Off for washing",
                    "The basket's number. Or go back and scan the basket's tag.",
                    3,
                    this::basket));
  }

  private void basket(String typed) {
    int number = typed.isEmpty() ? 0 : Integer.parseInt(typed);
    if (number > 0) {
      model.wash(number);
    }
    draw();
  }

  private void more() {
    List<Choice<Runnable>> ways =
        List.of(
            new Choice<>(this::debris, "Debris", ""),
            new Choice<>(() -> PhotoIndex.open(desk), "Photographs", ""));
    desk.navigator().open(() -> new ChoiceScreen<>(desk, "Bench map", ways, Runnable::run));
  }

  private void debris() {
    desk.navigator().open(() -> new DebrisScreen(desk));
  }

  private void cautions() {
    desk.navigator().open(() -> new CautionScreen(desk, Caution.atWashing()));
  }

  private void typeCode() {
    TypedCode.ask(
        desk,
        "The six digits on the tag.",
        digits -> desk.attempt(() -> answer(model.scan(digits))));
  }
}
