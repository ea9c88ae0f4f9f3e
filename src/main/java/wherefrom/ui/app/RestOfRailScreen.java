package wherefrom.ui.app;

import java.util.List;
import wherefrom.ui.controls.Pager;

/** The keys of the rail that have no room on it, as with large text. */
public final class RestOfRailScreen extends Page {
  public RestOfRailScreen(ScreenContext context, List<RailKey> keys) {
    super(context, Rail.REST, false);
    Pager<RailKey> list =
        Pager.list(
            context.touch(),
            key -> context.touch().key(key.words(), () -> press(context, key)).left());
    list.setItems(keys);
    lay(list);
  }

  private static void press(ScreenContext context, RailKey key) {
    context.navigator().back();
    key.act().run();
  }
}
