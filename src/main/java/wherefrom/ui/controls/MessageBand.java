package wherefrom.ui.controls;

import javafx.geometry.Pos;
import javafx.scene.layout.HBox;

/**
 * A sentence at the foot of the window that stays until it is put away. Its row then stays free, so
 * that no key slides under the finger; only another screen takes the row back.
 */
public final class MessageBand extends HBox {
  private final Touch touch;
  private final FitText words;
  private double kept;

  public MessageBand(Touch touch) {
    super(touch.scale().gap());
    this.touch = touch;
    words = Panes.grow(touch.text(""));
    TouchKey away = touch.key("Put away", this::clear);
    setAlignment(Pos.CENTER_LEFT);
    getStyleClass().add("band");
    Panes.pad(this, 2, touch.scale());
    getChildren().addAll(words, away);
    release();
  }

  /** Shows a sentence; a newer one takes the place of an older. */
  public void say(String sentence) {
    kept = isManaged() ? getHeight() : 0;
    words.setWords(sentence);
    setVisible(true);
    setManaged(true);
    if (Math.abs(prefHeight(getWidth()) - kept) > 1) {
      touch.moved();
    }
  }

  /** Puts the sentence away and keeps its row. */
  public void clear() {
    kept = getHeight();
    words.setWords("");
    setVisible(false);
  }

  /** Gives the row back to the screen. */
  public void release() {
    kept = 0;
    words.setWords("");
    setVisible(false);
    setManaged(false);
  }

  public String words() {
    return words.words();
  }

  @Override
  protected double computeMinHeight(double width) {
    return Math.max(kept, super.computeMinHeight(width));
  }

  @Override
  protected double computePrefHeight(double width) {
    return Math.max(kept, super.computePrefHeight(width));
  }
}
