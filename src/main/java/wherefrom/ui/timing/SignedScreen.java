package wherefrom.ui.timing;

import java.util.Locale;
import java.util.function.Consumer;
import javafx.scene.layout.Region;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.Typable;
import wherefrom.ui.controls.Keypad;
import wherefrom.ui.controls.Panes;

/** Asks for a figure that can be less than nothing, such as an angle before top dead centre. */
public final class SignedScreen implements Screen, Typable {
  private static final int MOST = 9;

  private final Desk desk;
  private final String title;
  private final Consumer<String> done;
  private final Keypad pad;
  private final Region view;

  SignedScreen(Desk desk, String title, String question, Consumer<String> done) {
    this.desk = desk;
    this.title = title;
    this.done = done;
    pad = Panes.grow(Keypad.decimal(desk.touch(), MOST, Locale.getDefault(Locale.Category.FORMAT)));
    pad.setMinWidth(desk.scale().px(120));
    Region side =
        Panes.column(
            desk.scale(),
            Panes.grow(desk.touch().text(question)),
            desk.touch().primary("+ / −", pad::turnSign),
            desk.touch().primary("Done", this::enter));
    view = Panes.row(desk.scale(), pad, Panes.grow(side));
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
