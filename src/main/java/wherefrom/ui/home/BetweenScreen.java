package wherefrom.ui.home;

import javafx.scene.layout.Region;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.TouchKey;

/** What is done between taking apart and putting together: a key to each. */
public final class BetweenScreen implements Screen {
  private static final int COLUMNS = 2;

  private final Desk desk;
  private final Region view;

  public BetweenScreen(Desk desk) {
    this.desk = desk;
    view =
        Panes.column(
            desk.scale(),
            Panes.grow(
                Tiles.of(
                    desk.scale(),
                    COLUMNS,
                    to("Inspect", ScreenId.INSPECT),
                    to("Measure", ScreenId.MEASURE),
                    to("Changes", ScreenId.CHANGES),
                    to("Decide", ScreenId.DECIDE),
                    to("Numbers", ScreenId.NUMBERS),
                    to("Machine shop", ScreenId.MACHINE_SHOP),
                    to("Money", ScreenId.MONEY),
                    to("Torque cards", ScreenId.TORQUE),
                    to("Timing check", ScreenId.TIMING),
                    to("Build record", ScreenId.BUILD_RECORD))));
  }

  private TouchKey to(String words, ScreenId id) {
    return desk.touch().primary(words, () -> desk.navigator().show(id));
  }

  @Override
  public String title() {
    return "Between the two days";
  }

  @Override
  public Region view() {
    return view;
  }
}
