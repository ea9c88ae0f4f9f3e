package wherefrom.ui.torque;

import java.util.Locale;
import java.util.function.Consumer;
import javafx.scene.layout.Region;
import wherefrom.quantity.Unit;
import wherefrom.ui.app.Asking;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.Keypad;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Split;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.TouchKey;

/** Asks for one stage: the figure, then its unit, which ends the entry. */
public final class StageScreen extends Asking {
  private static final int MOST = 8;

  private final Keypad pad;

  StageScreen(ScreenContext context, String title, Consumer<String> done) {
    this(
        context,
        title,
        Panes.grow(
            Keypad.decimal(context.touch(), MOST, Locale.getDefault(Locale.Category.FORMAT))),
        done);
  }

  private StageScreen(ScreenContext context, String title, Keypad pad, Consumer<String> done) {
    super(context, title, pad, done);
    this.pad = pad;
    Region side =
        Panes.column(
            context.scale(),
            Panes.grow(context.touch().text("The figure, then its unit.")),
            Panes.grow(
                Tiles.of(
                    context.scale(),
                    1,
                    unit("N·m", Unit.NEWTON_METRE),
                    unit("lb·ft", Unit.POUND_FOOT),
                    unit("degrees on", Unit.DEGREE))));
    lay(new Split(context.scale(), pad, side));
  }

  private TouchKey unit(String words, Unit unit) {
    return context.touch().key(words, () -> finish(unit));
  }

  private void finish(Unit unit) {
    if (!isEmpty()) {
      answer(pad.typed() + " " + unit.symbol());
    }
  }

  @Override
  public void enter() {
    context.say("Press the unit of the figure: N·m, lb·ft or degrees.");
  }
}
