package wherefrom.ui.app;

import java.util.List;
import javafx.scene.layout.Region;
import wherefrom.ui.controls.Pager;

/** The keys of the rail that have no room on it, as with large text. */
public final class RestOfRailScreen implements Screen {
  private final Pager<RailKey> list;

  public RestOfRailScreen(Desk desk, List<RailKey> keys) {
    list =
        Pager.list(
            desk.touch(), key -> desk.touch().key(key.words(), () -> press(desk, key)).left());
    list.setItems(keys);
  }

  private static void press(Desk desk, RailKey key) {
    desk.navigator().back();
    key.act().run();
  }

  @Override
  public String title() {
    return "More";
  }

  @Override
  public Region view() {
    return list;
  }

  @Override
  public boolean onJob() {
    return false;
  }
}
