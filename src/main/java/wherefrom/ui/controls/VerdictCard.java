package wherefrom.ui.controls;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import wherefrom.rules.Cue;

/** A verdict to be read from the engine: figure, word, up to three large lines, the way out. */
public final class VerdictCard extends HBox {
  private static final double MARK_MM = 52;
  private static final double LEAST_MARK_MM = 46;

  private final Touch touch;

  public VerdictCard(Touch touch) {
    super(touch.scale().px(6));
    this.touch = touch;
    setAlignment(Pos.CENTER_LEFT);
    getStyleClass().add("card");
    Panes.pad(this, 5, touch.scale());
    Panes.grow(this);
  }

  /**
   * Shows an answer.
   *
   * @param headline a word or two
   * @param lines at most three, in 20 mm capitals where they fit
   * @param small what to do, in working text; may be empty
   */
  public void show(Cue cue, String headline, List<String> lines, String small) {
    getStyleClass().setAll("card", "card-" + cue.name().toLowerCase(Locale.ROOT));
    VBox words = new VBox(touch.scale().px(2));
    words.setAlignment(Pos.CENTER_LEFT);
    List<String> large = new ArrayList<>(List.of(headline(cue, headline)));
    large.addAll(lines);
    words.getChildren().add(Panes.grow(touch.verdict(String.join("\n", large))));
    if (!small.isEmpty()) {
      words.getChildren().add(touch.text(small));
    }
    Panes.grow(words);
    getChildren().setAll(mark(cue), words);
  }

  private static String headline(Cue cue, String words) {
    String upper = words.toUpperCase(Locale.ROOT);
    return cue == Cue.STOP && !upper.startsWith("STOP") ? "STOP: " + upper : upper;
  }

  /** The figure gives way to the words where the person's text is large. */
  private double markMm() {
    return touch.isLarge() ? LEAST_MARK_MM : MARK_MM;
  }

  private Node mark(Cue cue) {
    double side = touch.scale().px(markMm());
    StackPane held = new StackPane(CueMark.of(cue, side));
    held.setMinSize(side, side);
    held.setMaxHeight(side);
    return held;
  }
}
