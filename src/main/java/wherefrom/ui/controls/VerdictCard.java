package wherefrom.ui.controls;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import wherefrom.rules.Cue;

/** A verdict to be read from the engine: figure, word, up to three large lines, the way out. */
public final class VerdictCard extends StackPane {
  /** The figure gives way to the words. */
  private static final List<Double> MARKS_MM = List.of(52.0, 46.0, 40.0, 34.0, 28.0, 22.0);

  /** On upright glass the figure stands above the words: beside it they would have half a line. */
  private static final double UPRIGHT_MARK_MM = 30;

  private static final double BETWEEN_MM = 6;
  private static final double BELOW_MM = 2;

  /** Round figure and words together: a pane of layers asks them for a height without its own. */
  private static final double PAD_MM = 5;

  private final Touch touch;
  private Runnable arrange = () -> {};

  public VerdictCard(Touch touch) {
    this.touch = touch;
    sceneProperty().addListener(shown -> arrange.run());
    getStyleClass().add("card");
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
    List<String> large = new ArrayList<>(List.of(headline(cue, headline)));
    large.addAll(lines);
    VerdictLines words =
        new VerdictLines(
            touch.headlines(String.join("\n", large)),
            touch.text(small),
            touch.scale().px(BELOW_MM));
    arrange = () -> put(cue, words);
    arrange.run();
  }

  private void put(Cue cue, VerdictLines words) {
    double between = touch.scale().px(BETWEEN_MM);
    if (Panes.isUpright(this)) {
      VBox over = new VBox(between, mark(cue, touch.scale().px(UPRIGHT_MARK_MM)), words);
      over.setAlignment(Pos.CENTER_LEFT);
      getChildren().setAll(Panes.pad(over, PAD_MM, touch.scale()));
    } else {
      List<Double> sides = MARKS_MM.stream().map(touch.scale()::px).toList();
      Region beside = new VerdictRow(sides, side -> mark(cue, side), words, between);
      getChildren().setAll(Panes.pad(new VBox(beside), PAD_MM, touch.scale()));
    }
  }

  private static String headline(Cue cue, String words) {
    String upper = words.toUpperCase(Locale.ROOT);
    return cue == Cue.STOP && !upper.startsWith("STOP") ? "STOP: " + upper : upper;
  }

  private static Node mark(Cue cue, double side) {
    StackPane held = new StackPane(CueMark.of(cue, side));
    held.setMinSize(side, side);
    held.setMaxSize(side, side);
    return held;
  }
}
