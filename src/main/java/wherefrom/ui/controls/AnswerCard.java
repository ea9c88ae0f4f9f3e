package wherefrom.ui.controls;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import wherefrom.rules.Cue;

/** An {@link ScreenAnswer}: as a verdict where there is one, else in large plain words. */
public final class AnswerCard extends StackPane {
  private static final double MARK_MM = 14;

  /** Where the person's text is larger the mark grows with it, as it is a letter of the words. */
  private static final double LETTER_MARK_MM = 8.2;

  private final Touch touch;
  private final VerdictCard verdict;
  private final double leastMm;

  public AnswerCard(Touch touch) {
    this(touch, Scale.LEAST_VERDICT_MM);
  }

  /**
   * @param leastMm what its lines may shrink to where they stand beside a drawing, in mm
   */
  public AnswerCard(Touch touch, double leastMm) {
    this.touch = touch;
    this.leastMm = leastMm;
    verdict = new VerdictCard(touch);
    Panes.grow(this);
  }

  public void show(ScreenAnswer answer) {
    Optional<Cue> cue = answer.cue();
    if (cue.isPresent() && !isBeside()) {
      verdict.show(cue.get(), answer.headline(), answer.lines(), answer.small());
      getChildren().setAll(verdict);
      return;
    }
    getChildren().setAll(cue.map(one -> marked(one, answer)).orElseGet(() -> words(answer)));
  }

  /** Whether it stands beside a drawing, where there is no room for a verdict's large lines. */
  private boolean isBeside() {
    return leastMm < Scale.LEAST_VERDICT_MM;
  }

  /** A small verdict: its figure and its headline, then its words. */
  private Region marked(Cue cue, ScreenAnswer answer) {
    VBox words = column("", answer);
    double mark = Math.max(MARK_MM, LETTER_MARK_MM * touch.scale().textFactor());
    HBox head =
        new HBox(
            touch.scale().gap(),
            CueMark.of(cue, touch.scale().px(mark)),
            Panes.grow(touch.heading(answer.headline().toUpperCase(Locale.ROOT))));
    head.setAlignment(Pos.CENTER_LEFT);
    words.getChildren().add(0, head);
    words.getStyleClass().setAll("card", "card-" + cue.name().toLowerCase(Locale.ROOT));
    return words;
  }

  /** As large as a verdict where there is room; larger letters do not ask for more. */
  private double mostMm() {
    return Math.max(Scale.LEAST_VERDICT_MM, Scale.VERDICT_MM / touch.scale().textFactor());
  }

  private FitText lines(ScreenAnswer answer) {
    String lines = String.join("\n", answer.lines());
    return isBeside() ? touch.fit(lines, mostMm(), leastMm, true) : touch.verdict(lines);
  }

  private Region words(ScreenAnswer answer) {
    VBox column = column(answer.headline(), answer);
    column.getStyleClass().add("row");
    return column;
  }

  private VBox column(String headline, ScreenAnswer answer) {
    List<FitText> words = new ArrayList<>();
    if (!headline.isEmpty()) {
      words.add(touch.heading(headline));
    }
    if (!answer.lines().isEmpty()) {
      words.add(Panes.grow(lines(answer)));
    }
    if (!answer.small().isEmpty()) {
      words.add(touch.text(answer.small()));
    }
    VBox column = new VBox(touch.scale().px(1));
    column.getChildren().setAll(words);
    column.setAlignment(Pos.CENTER_LEFT);
    return Panes.pad(column, 3, touch.scale());
  }
}
