package wherefrom.ui.torque;

import java.util.Locale;
import java.util.function.Consumer;
import javafx.scene.layout.Region;
import wherefrom.quantity.Unit;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.Typable;
import wherefrom.ui.controls.Keypad;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.TouchKey;

/** Asks for one stage: the figure, then its unit, which ends the entry. */
public final class StageScreen implements Screen, Typable {
  private static final int MOST = 8;

  private final Desk desk;
  private final String title;
  private final Consumer<String> done;
  private final Keypad pad;
  private final Region view;

  StageScreen(Desk desk, String title, Consumer<String> done) {
    this.desk = desk;
    this.title = title;
    this.done = done;
    pad = Panes.grow(Keypad.decimal(desk.touch(), MOST, Locale.getDefault(Locale.Category.FORMAT)));
    pad.setMinWidth(desk.scale().px(120));
    Region side =
        Panes.column(
            desk.scale(),
            Panes.grow(desk.touch().text("The figure, then its unit.")),
            Panes.grow(
                Tiles.of(
                    desk.scale(),
                    1,
                    unit("N·m", Unit.NEWTON_METRE),
                    unit("lb·ft", Unit.POUND_FOOT),
                    unit("degrees on", Unit.DEGREE))));
    view = Panes.row(desk.scale(), pad, Panes.grow(side));
  }

  private TouchKey unit(String words, Unit unit) {
    return desk.touch().primary(words, () -> finish(unit));
  }

  private void finish(Unit unit) {
    if (pad.typed().isEmpty()) {
      desk.say("Type the figure first.");
      return;
    }
    desk.navigator().back();
    done.accept(pad.typed() + " " + unit.symbol());
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
    desk.say("Press the unit of the figure: N·m, lb·ft or degrees.");
  }
}
