package wherefrom.ui.settings;

import java.util.List;
import javafx.scene.layout.Region;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Screen;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;

/** One license, in pages. */
public final class LicenseScreen implements Screen {
  private final LicenseText text;
  private final Pager<String> list;

  LicenseScreen(Desk desk, LicenseText text) {
    this.text = text;
    list =
        Pager.list(desk.touch(), paragraph -> ListRow.plain(desk.touch(), "", List.of(paragraph)));
    list.setItems(text.paragraphs());
  }

  @Override
  public String title() {
    return text.title();
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
