package wherefrom.ui.controls;

import java.util.Locale;
import javafx.geometry.VPos;
import javafx.scene.layout.Region;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Rectangle;
import javafx.scene.shape.Shape;
import javafx.scene.text.Text;
import javafx.scene.text.TextBoundsType;
import wherefrom.job.PlaceState;

/** The state of a place as a figure with a letter in it; colour only repeats what they say. */
public final class StateMark extends Region {
  private static final double SIDE_MM = 9.2;

  /**
   * @param scale the letter grows with the person's text factor, the figure with the letter
   */
  public StateMark(Scale scale, PlaceState state) {
    double factor = scale.textFactor();
    double side = scale.px(SIDE_MM) * factor;
    double line = scale.px(0.6) * factor;
    Shape figure = figure(state, side);
    figure.setStrokeWidth(line);
    String look = "state-" + state.name().toLowerCase(Locale.ROOT).replace('_', '-');
    getStyleClass().addAll("state", look);
    figure.getStyleClass().add("state-figure");
    Text letter = new Text(state.letter());
    letter.getStyleClass().add("ink");
    letter.setTextOrigin(VPos.BASELINE);
    letter.setBoundsType(TextBoundsType.VISUAL);
    letter.setFont(Fonts.of(scale.fontPx(Scale.SMALL_MM) * factor, true));
    letter.setX((side - letter.getLayoutBounds().getWidth()) / 2);
    double down = state == PlaceState.EXCUSED ? 0.67 : 0.5;
    letter.setY(side * down + scale.px(Scale.SMALL_MM) * factor / 2);
    getChildren().addAll(figure, letter);
    setMinSize(side, side);
    setPrefSize(side, side);
    setMaxSize(side, side);
    setMouseTransparent(true);
  }

  private static Shape figure(PlaceState state, double side) {
    return switch (state) {
      case IN, IN_BUT -> new Rectangle(side * 0.06, side * 0.06, side * 0.88, side * 0.88);
      case OUT, FITTED, FITTED_BUT -> new Circle(side / 2, side / 2, side * 0.46);
      case WASHING -> Outline.through(side, 0.5, 0, 0.95, 0.38, 0.95, 0.95, 0.05, 0.95, 0.05, 0.38);
      case AT_SHOP -> Outline.regular(4, 0, side * 1.06);
      case MISSING -> new Rectangle(side * 0.06, side * 0.06, side * 0.88, side * 0.88);
      case OTHER_FITTED -> Outline.regular(8, 0.5, side);
      case OPEN -> new Rectangle(side * 0.06, side * 0.14, side * 0.88, side * 0.72);
      case EXCUSED -> Outline.through(side, 0.5, 0, 1, 1, 0, 1);
    };
  }
}
