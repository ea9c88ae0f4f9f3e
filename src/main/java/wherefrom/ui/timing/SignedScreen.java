package wherefrom.ui.timing;

import java.util.Locale;
import java.util.function.Consumer;
import javafx.scene.layout.Region;
import wherefrom.ui.app.Asking;
import wherefrom.ui.app.Desk;
import wherefrom.ui.controls.Keypad;
import wherefrom.ui.controls.Panes;

/** Asks for a figure that can be less than nothing, such as an angle before top dead centre. */
public final class SignedScreen extends Asking {
  private static final int MOST = 9;

  SignedScreen(Desk desk, String title, String question, Consumer<String> done) {
    this(
        desk,
        title,
        question,
        Panes.grow(Keypad.decimal(desk.touch(), MOST, Locale.getDefault(Locale.Category.FORMAT))),
        done);
  }

  private SignedScreen(
      Desk desk, String title, String question, Keypad pad, Consumer<String> done) {
    super(desk, title, pad, done);
    pad.setMinWidth(desk.scale().px(120));
    Region side =
        Panes.column(
            desk.scale(),
            Panes.grow(desk.touch().text(question)),
            desk.touch().primary("+ / −", pad::turnSign),
            desk.touch().primary("Done", this::enter));
    lay(Panes.row(desk.scale(), pad, Panes.grow(side)));
  }
}
