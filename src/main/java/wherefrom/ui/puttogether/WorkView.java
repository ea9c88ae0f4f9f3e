package wherefrom.ui.puttogether;

import java.util.EnumMap;
import java.util.Map;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import wherefrom.engine.Spot;
import wherefrom.job.puttogether.PutTogether.Mode;
import wherefrom.job.puttogether.ToFit;
import wherefrom.parts.PartKind;
import wherefrom.rules.Cue;
import wherefrom.text.Words;
import wherefrom.ui.controls.Answer;
import wherefrom.ui.controls.AnswerCard;
import wherefrom.ui.controls.EngineDrawing;
import wherefrom.ui.controls.EngineSide;
import wherefrom.ui.controls.Fold;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.controls.TouchKey;

/** The screen while nothing is stopped: the modes, the answer, the drawn engine. */
final class WorkView extends VBox {

  /** What the keys do. */
  interface Keys {
    void choose(Mode mode);

    void tap(Spot spot);

    void typeCode();

    void missing();

    void turned();

    void chooseKind();

    void skip();

    void print();

    void decide();
  }

  private final Touch touch;
  private final Keys keys;
  private final Map<Mode, TouchKey> modes = new EnumMap<>(Mode.class);
  private final AnswerCard card;
  private final EngineDrawing drawing;
  private final Tiles bar;
  private final TouchKey missing;

  WorkView(Touch touch, PutTogetherModel model, Keys keys) {
    super(touch.scale().gap());
    this.touch = touch;
    this.keys = keys;
    card = new AnswerCard(touch);
    drawing = new EngineDrawing(touch, model.state().layout(), keys::tap);
    missing = touch.primary("", keys::missing);
    bar =
        Tiles.row(
            touch.scale(),
            mode(Mode.FOLLOW_THE_LIST, touch.brief("Follow the list", "Follow")),
            mode(Mode.SCAN_BOTH, touch.brief("Scan both", "Both")),
            mode(Mode.WHERE_DOES_THIS_GO, touch.brief("Where does this go?", "Where?")),
            touch.primary(touch.brief("Type a code", "Type"), keys::typeCode),
            missing);
    Panes.grow(this);
  }

  private TouchKey mode(Mode mode, String title) {
    TouchKey key = touch.primary(title, () -> keys.choose(mode));
    modes.put(mode, key);
    return key;
  }

  void show(PutTogetherModel model) {
    modes.forEach((mode, key) -> key.select(mode == model.mode()));
    missing.setWords(
        ToFit.isNothing(model.state())
            ? touch.brief("Close up", "Close")
            : touch.brief("Still missing", "Missing"));
    Answer answer = model.answer();
    card.show(answer);
    drawing.show(EngineSide.of(model.kind()), model::stateAt);
    drawing.light(answer.lit());
    HBox middle = Panes.row(touch.scale(), card, side(model));
    getChildren()
        .setAll(new Fold(touch, Panes.column(touch.scale(), bar, Panes.grow(middle)), drawing));
  }

  private VBox side(PutTogetherModel model) {
    VBox side = Panes.column(touch.scale());
    if (model.canBeTurned()) {
      side.getChildren().add(touch.primary(turnedWords(model.kind()), keys::turned));
    } else if (model.mode() == Mode.FOLLOW_THE_LIST) {
      side.getChildren().add(touch.primary("Skip", keys::skip));
    }
    if (model.decisionsWait()) {
      side.getChildren().add(touch.primary("Decide", keys::decide));
    }
    if (model.answer().cue().filter(Cue.ASK::equals).isPresent()) {
      side.getChildren().add(touch.key(touch.brief("Print a tag anew", "Print"), keys::print));
    }
    // Large text leaves room for one key; the kind follows what is scanned anyway.
    if (side.getChildren().isEmpty() || touch.scale().textFactor() <= 1) {
      side.getChildren()
          .add(
              touch.key(
                  touch.brief(
                      "Shown: " + model.kind().plural(), Words.capital(model.kind().plural())),
                  keys::chooseKind));
    }
    double least = side.minWidth(-1) / touch.scale().pixelsPerMm();
    return Panes.wide(side, Math.max(50, least), touch.scale());
  }

  private static String turnedWords(PartKind kind) {
    return switch (kind.orientation()) {
      case TOP_END -> "I held it upside down";
      case NONE, HALF, FACING -> "I held it back to front";
    };
  }
}
