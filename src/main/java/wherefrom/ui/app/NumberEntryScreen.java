package wherefrom.ui.app;

import java.util.Locale;
import java.util.function.Consumer;
import javafx.scene.layout.Region;
import wherefrom.ui.controls.Keypad;
import wherefrom.ui.controls.Panes;

/** Asks for figures on a large pad, or on a real keyboard. */
public final class NumberEntryScreen extends Asking {

  private NumberEntryScreen(
      Desk desk, String title, String question, Keypad pad, Consumer<String> done) {
    super(desk, title, pad, done);
    Region side =
        Panes.column(
            desk.scale(),
            Panes.grow(desk.touch().text(question)),
            desk.touch().primary("Done", this::enter));
    pad.setMinWidth(desk.scale().px(130));
    lay(Panes.row(desk.scale(), Panes.grow(pad), Panes.grow(side)));
  }

  /** Asks for whole figures, such as the six digits of a tag. */
  public static NumberEntryScreen digits(
      Desk desk, String title, String question, int most, Consumer<String> done) {
    return new NumberEntryScreen(desk, title, question, Keypad.digits(desk.touch(), most), done);
  }

  /** Asks for a size, with the decimal mark of the person's language. */
  public static NumberEntryScreen size(
      Desk desk, String title, String question, int most, Consumer<String> done) {
    Keypad pad = Keypad.decimal(desk.touch(), most, Locale.getDefault());
    return new NumberEntryScreen(desk, title, question, pad, done);
  }
}
