package wherefrom.ui.torque;

import java.util.Locale;
import javafx.geometry.Insets;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Touch;

/** A bolt seen from above: a disc with its number; the one in turn fills all of its room. */
final class BoltKey extends Region {
  private static final double LARGEST_MM = 8;
  private static final double SMALLER = 0.86;

  /** Two figures in the square that this leaves on each side of a disc keep off its rim. */
  private static final double RIM = 0.1;

  /** The height of such figures, as a part of the disc. */
  private static final double FIGURES = 0.47;

  private final StackPane disc;
  private final double least;
  private final double part;

  /**
   * @param room its height, in heights of a key
   */
  BoltKey(Touch touch, BoltFace face, double room) {
    Scale scale = touch.scale();
    least = scale.px(Scale.KEY_MM);
    setMinSize(least, room * least);
    setPrefSize(least, room * least);
    boolean turn = face.look() == BoltFace.Look.TURN;
    // A large figure needs all of the disc.
    part = turn ? 1 : Math.min(0.97, SMALLER + 0.23 * (scale.textFactor() - 1));
    double most = FIGURES * part * Math.min(room, 2) * Scale.KEY_MM / scale.textFactor();
    double figures = Math.min(most, room > 1.5 ? LARGEST_MM : Scale.SMALL_MM);
    FitText number = touch.fit(face.number(), LARGEST_MM, figures, true).centred();
    disc = new StackPane(number);
    disc.getStyleClass().addAll("bolt", "bolt-" + face.look().name().toLowerCase(Locale.ROOT));
    getChildren().add(disc);
    setAccessibleText("Bolt " + face.number());
  }

  @Override
  protected void layoutChildren() {
    double side = part * Math.min(Math.min(getWidth(), getHeight()), 2 * least);
    disc.setPadding(new Insets(RIM * side));
    Panes.place(disc, (getWidth() - side) / 2, (getHeight() - side) / 2, side, side);
  }
}
