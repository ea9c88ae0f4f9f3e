package wherefrom.ui.controls;

import javafx.geometry.Pos;
import javafx.scene.layout.HBox;

/** A sentence at the foot of the window that stays until it is put away. */
public final class MessageBand extends HBox {
  private final FitText words;

  public MessageBand(Touch touch) {
    super(touch.scale().gap());
    words = Panes.grow(touch.text(""));
    TouchKey away = touch.key("Put away", this::clear);
    setAlignment(Pos.CENTER_LEFT);
    getStyleClass().add("band");
    Panes.pad(this, 2, touch.scale());
    getChildren().addAll(words, away);
    clear();
  }

  /** Shows a sentence; a newer one takes the place of an older. */
  public void say(String sentence) {
    words.setWords(sentence);
    setVisible(true);
    setManaged(true);
  }

  public void clear() {
    words.setWords("");
    setVisible(false);
    setManaged(false);
  }

  public String words() {
    return words.words();
  }
}
