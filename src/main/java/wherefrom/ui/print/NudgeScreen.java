package wherefrom.ui.print;

import java.util.Locale;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.job.print.Nudge;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Screen;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.Touch;

/** Moves the print on the paper by half millimetres. */
public final class NudgeScreen implements Screen {
  private final PrintTagsModel model;
  private final FitText now;
  private final VBox view;

  NudgeScreen(Desk desk, PrintTagsModel model) {
    this.model = model;
    Touch touch = desk.touch();
    now = touch.heading("").centred();
    view =
        Panes.column(
            desk.scale(),
            touch.text(
                "Print the test page. Hold it against a sheet of the stock. Then move the"
                + " print: each press is 0.5 mm."),
            now,
            Panes.grow(
                Tiles.of(
                    desk.scale(),
                    3,
                    new Region(),
                    touch.primary("Up", () -> move(0, -1)),
                    new Region(),
                    touch.primary("Left", () -> move(-1, 0)),
                    touch.key("Back to 0", this::reset),
                    touch.primary("Right", () -> move(1, 0)),
                    new Region(),
                    touch.primary("Down", () -> move(0, 1)),
                    new Region())));
    now.setWords(words(model.nudge()));
  }

  /** {@code Position: 1.0 mm right, 0.5 mm up}. */
  static String words(Nudge nudge) {
    if (nudge.equals(Nudge.NONE)) {
      return "Position: not moved";
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
      return "Position: " + across;
    }
    return nudge.right() == 0 ? "Position: " + down : "Position: " + across + ", " + down;
  }

  private void move(int right, int down) {
    model.nudge(right, down);
    now.setWords(words(model.nudge()));
  }

  private void reset() {
    model.nudge(-model.nudge().right(), -model.nudge().down());
    now.setWords(words(model.nudge()));
  }

  @Override
  public String title() {
    return "Move the print";
  }

  @Override
  public Region view() {
    return view;
  }

  @Override
  public boolean onJob() {
    return false;
  }
}
