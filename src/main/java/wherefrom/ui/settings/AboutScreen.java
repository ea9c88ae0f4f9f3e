package wherefrom.ui.settings;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.Region;
import wherefrom.ui.app.ListPage;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.ListRow;

/** What the program is, and under which terms it and its libraries come. */
public final class AboutScreen extends ListPage {
  public AboutScreen(ScreenContext context) {
    super(context, "About", false);
  }

  @Override
  protected List<Region> rows() {
    List<Region> rows = new ArrayList<>();
    rows.add(
        ListRow.plain(
            context.touch(),
            "Wherefrom " + context.services().program().version(),
            List.of(LicenseText.OUTRANKED)));
    LicenseText.ALL.forEach(text -> rows.add(row(text)));
    rows.add(ListRow.plain(context.touch(), "", List.of(LicenseText.QR)));
    return rows;
  }

  private Region row(LicenseText text) {
    return key(
        text.title(), List.of(text.of()), () -> open(() -> new LicenseScreen(context, text)));
  }
}
