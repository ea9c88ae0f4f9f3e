package wherefrom.ui.app;

import java.util.List;
import wherefrom.ui.controls.Pager;

/** The keys of the rail that have no room on it, as with large text. */
public final class RestOfRailScreen extends Page {
  public RestOfRailScreen(Desk desk, List<RailKey> keys) {
    super(desk, "More", false);
    Pager<RailKey> list =
        Pager.list(
            desk.touch(), key -> desk.touch().key(key.words(), () -> press(desk, key)).left());
    list.setItems(keys);
    lay(list);
  }

  private static void press(Desk desk, RailKey key) {
    desk.navigator().back();
    key.act().run();
  }
}
