package wherefrom.ui.controls;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import wherefrom.rules.Cue;

/** An {@link Answer}: as a verdict where there is one, else in large plain words. */
public final class AnswerCard extends StackPane {
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

  public void show(Answer answer) {
    Optional<Cue> cue = answer.cue();
    if (cue.isPresent()) {
      verdict.show(cue.get(), answer.headline(), answer.lines(), answer.small());
    }
    getChildren().setAll(cue.isPresent() ? verdict : words(answer));
  }

  private FitText lines(Answer answer) {
    String lines = String.join("\n", answer.lines());
    return leastMm < Scale.LEAST_VERDICT_MM
        ? touch.fit(lines, Scale.LEAST_VERDICT_MM, leastMm, true)
        : touch.verdict(lines);
  }

  private Region words(Answer answer) {
    List<FitText> words = new ArrayList<>();
    if (!answer.headline().isEmpty()) {
      words.add(touch.heading(answer.headline()));
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
    column.getStyleClass().add("row");
    return Panes.pad(column, 3, touch.scale());
  }
}
