package wherefrom.ui.print;

import java.util.Locale;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.job.print.Nudge;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.Either;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.controls.TouchKey;

/** Moves the print on the paper by half millimetres. */
public final class NudgeScreen extends Page {
  private final PrintTagsModel model;
  private final FitText how;
  private final FitText now;
  private final VBox view;

  NudgeScreen(ScreenContext context, PrintTagsModel model) {
    super(context, "Move the print", false);
    this.model = model;
    Touch touch = context.touch();
    now = touch.heading("").centred();
    how = touch.text("Hold the test page against a sheet. Each press moves the print 0.5 mm.");
    Tiles keys = Panes.grow(touch.isLarge() ? row() : cross());
    view = Panes.column(context.scale(), now, keys, touch.key("Back to 0", this::reset));
    now.setWords(words(model.nudge()));
    lay(new Either(room -> withHow(room.width(), room.height())).needing(view));
  }

  /** What to do leaves where large words need the room for the keys. */
  private Region withHow(double width, double height) {
    view.getChildren().remove(how);
    double needed = view.minHeight(width) + context.scale().gap() + how.minHeight(width);
    if (needed <= height) {
      view.getChildren().add(0, how);
    }
    return view;
  }

  private TouchKey left() {
    return touch().key("Left", () -> move(-1, 0));
  }

  private TouchKey up() {
    return touch().key("Up", () -> move(0, -1));
  }

  private TouchKey down() {
    return touch().key("Down", () -> move(0, 1));
  }

  private TouchKey right() {
    return touch().key("Right", () -> move(1, 0));
  }

  private Tiles row() {
    return Tiles.row(context.scale(), left(), up(), down(), right());
  }

  /** Each key lies where it moves the print. */
  private Tiles cross() {
    return Tiles.row(context.scale(), left(), Tiles.of(context.scale(), 1, up(), down()), right());
  }

  /** {@code 1.0 mm right, 0.5 mm up}. */
  static String words(Nudge nudge) {
    if (nudge.equals(Nudge.NONE)) {
      return "Not moved";
    }
    String across =
        String.format(
            Locale.ROOT,
            "%.1f mm %s",
            Math.abs(nudge.rightMm()),
            nudge.right() < 0 ? "left" : "right");
    String down =
        String.format(
            Locale.ROOT, "%.1f mm %s", Math.abs(nudge.downMm()), nudge.down() < 0 ? "up" : "down");
    if (nudge.down() == 0) {
      return across;
    }
    return nudge.right() == 0 ? down : across + ", " + down;
  }

  private void move(int right, int down) {
    model.nudge(right, down);
    now.setWords(words(model.nudge()));
  }

  private void reset() {
    model.nudge(-model.nudge().right(), -model.nudge().down());
    now.setWords(words(model.nudge()));
  }
}
