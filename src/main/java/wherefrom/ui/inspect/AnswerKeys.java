package wherefrom.ui.inspect;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import wherefrom.inspection.Check;
import wherefrom.inspection.Look;
import wherefrom.rules.Cue;
import wherefrom.ui.controls.CueMark;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.PictureKey;
import wherefrom.ui.controls.Touch;

/** The three answers of a quick test, one below the other, the one that was given marked. */
final class AnswerKeys {
  private static final double WIDE_MM = 106;
  private static final double MARK_MM = 10;

  private final Touch touch;
  private final Look given;
  private final Consumer<Look> answer;

  /**
   * @param given what was answered
   * @param answer is given what is pressed
   */
  AnswerKeys(Touch touch, Look given, Consumer<Look> answer) {
    this.touch = touch;
    this.given = given;
    this.answer = answer;
  }

  VBox of(Check check) {
    VBox answers =
        new VBox(touch.scale().gap()) {
          @Override
          protected double computeMinWidth(double height) {
            return Math.max(touch.scale().px(WIDE_MM), super.computeMinWidth(height));
          }
        };
    answers
        .getChildren()
        .setAll(
            Panes.grow(key(Cue.RIGHT, "Pass", check.pass(), Look.PASS)),
            Panes.grow(key(Cue.ASK, "Suspect", check.suspect(), Look.SUSPECT)),
            Panes.grow(key(Cue.STOP, "Fail", check.fail(), Look.FAIL)));
    return answers;
  }

  private Region key(Cue cue, String word, String words, Look look) {
    return PictureKey.of(
            touch,
            Optional.of(mark(cue)),
            word,
            words,
            OptionalDouble.empty(),
            () -> answer.accept(look))
        .select(given == look);
  }

  private Region mark(Cue cue) {
    return new StackPane(CueMark.of(cue, touch.scale().px(MARK_MM) * touch.scale().textFactor()));
  }
}
