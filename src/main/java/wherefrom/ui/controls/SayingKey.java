package wherefrom.ui.controls;

import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.layout.HBox;

/** A key that says beside its name what it would do now. */
public final class SayingKey extends HBox {
  private static final double WORDS_MM = 54;
  private static final int LINES = 2;

  private final FitText words;

  public SayingKey(Touch touch, String name, Runnable act) {
    super(touch.scale().px(3));
    FitText named = touch.heading(name);
    named.setMinWidth(USE_PREF_SIZE);
    words = touch.small("").within(LINES);
    setMinHeight(touch.scale().px(Scale.PRIMARY_MM));
    double aside = touch.scale().px(2.2);
    double above = touch.scale().px(1.6);
    setPadding(new Insets(above, aside, above, aside));
    setAlignment(Pos.CENTER_LEFT);
    getStyleClass().addAll("key", "primary");
    getChildren().addAll(named, Panes.wide(words, WORDS_MM, touch.scale()));
    setMinWidth(USE_PREF_SIZE);
    touch.target(this, act);
  }

  /** What it would do now. */
  public void say(String now) {
    words.setWords(now);
  }
}
