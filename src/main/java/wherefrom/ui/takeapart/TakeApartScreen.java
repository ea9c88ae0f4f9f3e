package wherefrom.ui.takeapart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import wherefrom.parts.Action;
import wherefrom.parts.Part;
import wherefrom.rules.Cue;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.NumberEntryScreen;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.TextEntryScreen;
import wherefrom.ui.app.TypedCode;
import wherefrom.ui.app.Watching;
import wherefrom.ui.controls.AnswerCard;
import wherefrom.ui.controls.EngineDrawing;
import wherefrom.ui.controls.EngineSide;
import wherefrom.ui.controls.Fold;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.controls.TouchKey;
import wherefrom.ui.photos.PhotoTaking;
import wherefrom.ui.tray.TrayPurpose;
import wherefrom.ui.tray.TrayTaking;

/** Taking apart: what comes out next, its place lit, each part logged by scan, tap or code. */
public final class TakeApartScreen implements Screen, Watching {
  private final Desk desk;
  private final TakeApartModel model;
  private final AnswerCard card;
  private final EngineDrawing drawing;
  private final List<TouchKey> acts;
  private final TouchKey cautions;
  private final TouchKey tray;
  private final StackPane view = Panes.grow(new StackPane());

  public TakeApartScreen(Desk desk) {
    this.desk = desk;
    Touch touch = desk.touch();
    model = new TakeApartModel(desk.getJob(), desk.shelf());
    card = new AnswerCard(touch);
    drawing = new EngineDrawing(touch, desk.state().layout(), spot -> answer(model.tap(spot)));
    cautions = touch.primary("", this::sources);
    acts =
        List.of(
            touch.primary(touch.brief("Type a code", "Type"), this::typeCode),
            touch.primary("Skip", () -> answer(model.act(Action.SKIP))),
            touch.primary("Note", this::note),
            touch.primary("Photo", this::photo),
            touch.primary("Pieces", this::pieces));
    tray = touch.primary("Tray", this::tray);
  }

  @Override
  public String title() {
    return "Take apart: " + model.progress();
  }

  @Override
  public Region view() {
    return view;
  }

  @Override
  public void shown() {
    model.refresh();
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

  @Override
  public void ask(String hint) {
    model.ask(hint).ifPresent(desk.sounds()::play);
    draw();
  }

  @Override
  public void undo(Desk over) {
    desk.attempt(() -> answer(model.act(Action.UNDO)));
  }

  private void answer(Optional<Cue> cue) {
    desk.sounds().hush();
    cue.ifPresent(desk.sounds()::play);
    desk.navigator().changed();
  }

  private void draw() {
    card.show(model.answer());
    drawing.show(EngineSide.of(model.kind()), model::stateAt);
    drawing.light(model.answer().lit());
    List<TouchKey> keys = new ArrayList<>(model.asked().isPresent() ? answers() : acts);
    if (!desk.touch().isLarge() && model.asked().isEmpty()) {
      keys.add(tray);
    }
    boolean cautioned = !model.cautionWords().isEmpty() && model.asked().isEmpty();
    if (cautioned && desk.touch().isLarge()) {
      cautions.setWords("Care!");
      keys.add(cautions);
    }
    VBox words =
        Panes.column(desk.scale(), card, Tiles.row(desk.scale(), keys.toArray(Node[]::new)));
    if (cautioned && !desk.touch().isLarge()) {
      cautions.setWords(model.cautionWords());
      words.getChildren().add(1, cautions);
    }
    view.getChildren().setAll(new Fold(desk.touch(), words, drawing));
  }

  /** The part that was tapped is not the next one: both ways on. */
  private List<TouchKey> answers() {
    Touch touch = desk.touch();
    return List.of(
        touch.primary("No: wrong place", this::dismiss),
        touch.primary("Yes: " + model.askedWords(), () -> answer(model.confirm())));
  }

  private void dismiss() {
    model.dismiss();
    draw();
  }

  private void sources() {
    desk.navigator().open(() -> new CautionScreen(desk, model.cautions()));
  }

  private void typeCode() {
    TypedCode.ask(desk, "The six digits on the tag.", this::typed);
  }

  private void typed(String digits) {
    desk.attempt(() -> answer(model.scan(digits)));
  }

  private String subject() {
    return model.subject().map(Part::words).orElse("the job");
  }

  private void note() {
    desk.navigator()
        .open(
            () ->
                new TextEntryScreen(
                    desk, "Note: " + subject(), "", text -> told(() -> model.note(text))));
  }

  private void pieces() {
    desk.navigator()
        .open(
            () ->
                NumberEntryScreen.digits(
                    desk,
                    "Pieces: " + subject(),
                    "How many pieces hang on its wire, under one tag?",
                    2,
                    count -> told(() -> model.pieces(count))));
  }

  /** Of the part in hand; where large text leaves no room for a key of the tray's, of that too. */
  private void photo() {
    if (!desk.touch().isLarge()) {
      model.subject().ifPresent(part -> PhotoTaking.ask(desk, part));
      return;
    }
    List<Choice<Runnable>> of = new ArrayList<>();
    model
        .subject()
        .ifPresent(
            part -> of.add(new Choice<>(() -> PhotoTaking.ask(desk, part), part.words(), "")));
    of.add(new Choice<>(this::tray, "A whole tray", "its parts are logged as out"));
    desk.navigator().open(() -> new ChoiceScreen<>(desk, "Photo", of, Runnable::run));
  }

  /** All that lies on one photograph. */
  private void tray() {
    TrayTaking.ask(desk, TrayPurpose.OUT);
  }

  private void told(Supplier<String> deed) {
    desk.attempt(
        () -> {
          String sentence = deed.get();
          if (!sentence.isEmpty()) {
            desk.say(sentence);
          }
        });
    desk.navigator().changed();
  }
}
