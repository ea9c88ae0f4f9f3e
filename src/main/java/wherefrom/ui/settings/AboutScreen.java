package wherefrom.ui.settings;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.Region;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Screen;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;

/** What the program is, and under which terms it and its libraries come. */
public final class AboutScreen implements Screen {
  private final Desk desk;
  private final Pager<Region> list;

  public AboutScreen(Desk desk) {
    this.desk = desk;
    list = Pager.list(desk.touch(), row -> row);
    List<Region> rows = new ArrayList<>();
    rows.add(
        ListRow.plain(
            desk.touch(),
            "Wherefrom " + desk.equipment().program().version(),
            List.of(LicenseText.OUTRANKED, LicenseText.QR)));
    LicenseText.ALL.forEach(text -> rows.add(row(text)));
    list.setItems(rows);
  }

  private Region row(LicenseText text) {
    return ListRow.key(
        desk.touch(),
        text.title(),
        List.of(text.of()),
        () -> desk.navigator().open(() -> new LicenseScreen(desk, text)));
  }

  @Override
  public String title() {
    return "About";
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
