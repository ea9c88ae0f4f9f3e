package wherefrom.ui.torque;

import java.util.Locale;
import java.util.function.Consumer;
import javafx.scene.layout.Region;
import wherefrom.quantity.Unit;
import wherefrom.ui.app.Asking;
import wherefrom.ui.app.Desk;
import wherefrom.ui.controls.Keypad;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Split;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.TouchKey;

/** Asks for one stage: the figure, then its unit, which ends the entry. */
public final class StageScreen extends Asking {
  private static final int MOST = 8;

  private final Keypad pad;

  StageScreen(Desk desk, String title, Consumer<String> done) {
    this(
        desk,
        title,
        Panes.grow(Keypad.decimal(desk.touch(), MOST, Locale.getDefault(Locale.Category.FORMAT))),
        done);
  }

  private StageScreen(Desk desk, String title, Keypad pad, Consumer<String> done) {
    super(desk, title, pad, done);
    this.pad = pad;
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
    lay(new Split(desk.scale(), pad, side));
  }

  private TouchKey unit(String words, Unit unit) {
    return desk.touch().key(words, () -> finish(unit));
  }

  private void finish(Unit unit) {
    if (!isEmpty()) {
      answer(pad.typed() + " " + unit.symbol());
    }
  }

  @Override
  public void enter() {
    desk.say("Press the unit of the figure: N·m, lb·ft or degrees.");
  }
}
