package wherefrom.ui.controls;

import java.util.function.Consumer;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.layout.HBox;

/**
 * A sentence that stays until it is put away, in a place of its own for which nothing else moves.
 * Where the place is too small for it, its key leads to all of it.
 */
public final class MessageBand extends HBox {
  private final String putAway;
  private final String readOn;
  private final Consumer<String> reading;
  private final FitText words;
  private final TouchKey key;

  /**
   * @param reading shows a sentence that is too long to stand here whole
   */
  public MessageBand(Touch touch, Consumer<String> reading) {
    super(touch.scale().gap());
    this.reading = reading;
    putAway = touch.brief("OK", "OK");
    readOn = touch.brief("Read on", "More");
    // Large words need one line at least, and have more where the title beside them does.
    words = Panes.grow(touch.text("").within(touch.isLarge() ? 1 : 2));
    key = touch.primary(putAway, this::press);
    key.setMinWidth(Math.max(key.minWidth(-1), touch.primary(readOn, this::press).minWidth(-1)));
    HBox.setMargin(words, new Insets(touch.scale().px(1.2), 0, touch.scale().px(1.2), 0));
    setPadding(new Insets(0, 0, 0, touch.scale().px(2.2)));
    setAlignment(Pos.CENTER_LEFT);
    getStyleClass().add("band");
    getChildren().addAll(words, key);
    clear();
  }

  private boolean isWhole() {
    return words.fits(words.getWidth(), words.getHeight());
  }

  private void press() {
    String sentence = words();
    boolean whole = isWhole();
    clear();
    if (!whole) {
      reading.accept(sentence);
    }
  }

  /** Shows a sentence; a newer one takes the place of an older. */
  public void say(String sentence) {
    words.setWords(sentence);
    setVisible(!sentence.isEmpty());
    requestLayout();
  }

  /** Puts the sentence away. */
  public void clear() {
    words.setWords("");
    setVisible(false);
  }

  public String words() {
    return words.words();
  }

  @Override
  protected void layoutChildren() {
    super.layoutChildren();
    key.setWords(isWhole() ? putAway : readOn);
  }
}
