package wherefrom.ui.app;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javafx.scene.layout.Region;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.PictureKey;
import wherefrom.ui.controls.Touch;

/** The keys of the rail that have no room on it, as with large text. */
public final class RestOfRailScreen extends Page {
  private static final double SIGN_MM = 9;

  public RestOfRailScreen(ScreenContext context, List<RailKey> keys) {
    super(context, Rail.REST, false);
    Pager<RailKey> list = Pager.list(context.touch(), key -> key(context, key));
    list.setItems(keys);
    lay(list);
  }

  /** As on the rail: its sign and its word. */
  private static Region key(ScreenContext context, RailKey key) {
    Touch touch = context.touch();
    Region sign = key.icon().draw(touch.scale().px(SIGN_MM));
    return PictureKey.of(
            touch,
            Optional.of(sign),
            key.words(),
            "",
            OptionalDouble.empty(),
            () -> press(context, key))
        .select(key.on());
  }

  private static void press(ScreenContext context, RailKey key) {
    context.navigator().back();
    key.act().run();
  }
}
