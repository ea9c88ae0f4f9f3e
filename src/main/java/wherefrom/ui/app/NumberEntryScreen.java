package wherefrom.ui.app;

import java.util.Locale;
import java.util.function.Consumer;
import javafx.scene.layout.Region;
import wherefrom.ui.controls.Keypad;
import wherefrom.ui.controls.Panes;

/** Asks for figures on a large pad, or on a real keyboard. */
public final class NumberEntryScreen implements Screen, Typable {
  private final Desk desk;
  private final String title;
  private final Consumer<String> done;
  private final Keypad pad;
  private final Region view;

  private NumberEntryScreen(
      Desk desk, String title, String question, Keypad pad, Consumer<String> done) {
    this.desk = desk;
    this.title = title;
    this.done = done;
    this.pad = Panes.grow(pad);
    Region side =
        Panes.column(
            desk.scale(),
            Panes.grow(desk.touch().text(question)),
            desk.touch().primary("Done", this::enter));
    Panes.grow(side);
    this.pad.setMinWidth(desk.scale().px(130));
    view = Panes.row(desk.scale(), this.pad, side);
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

  @Override
  public String title() {
    return title;
  }

  @Override
  public Region view() {
    return view;
  }

  @Override
  public boolean onJob() {
    return false;
  }

  @Override
  public void type(String character) {
    pad.type(character);
  }

  @Override
  public void erase() {
    pad.erase();
  }

  @Override
  public void enter() {
    desk.navigator().back();
    done.accept(pad.typed());
  }
}
