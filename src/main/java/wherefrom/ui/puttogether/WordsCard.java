package wherefrom.ui.puttogether;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.layout.VBox;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Touch;

/** What is so, in large words with no verdict: the place that is next, the half that waits. */
final class WordsCard extends VBox {
  private final Touch touch;

  WordsCard(Touch touch) {
    super(touch.scale().px(1));
    this.touch = touch;
    setAlignment(Pos.CENTER_LEFT);
    getStyleClass().add("row");
    Panes.pad(this, 3, touch.scale());
    Panes.grow(this);
  }

  void show(Answer answer) {
    List<FitText> words = new ArrayList<>();
    if (!answer.headline().isEmpty()) {
      words.add(touch.heading(answer.headline()));
    }
    if (!answer.lines().isEmpty()) {
      words.add(Panes.grow(touch.verdict(String.join("\n", answer.lines()))));
    }
    if (!answer.small().isEmpty()) {
      words.add(touch.text(answer.small()));
    }
    getChildren().setAll(words);
  }
}
