package wherefrom.ui.numbers;

import java.util.List;
import javafx.scene.layout.Region;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Screen;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;

/** Rows of words to be read. */
public final class RowsScreen implements Screen {
  private final String title;
  private final Pager<ResultRows.Row> rows;

  RowsScreen(Desk desk, String title, List<ResultRows.Row> all) {
    this.title = title;
    rows = Pager.list(desk.touch(), row -> ListRow.plain(desk.touch(), row.heading(), row.lines()));
    rows.setItems(all);
  }

  @Override
  public String title() {
    return title;
  }

  @Override
  public Region view() {
    return rows;
  }

  @Override
  public boolean onJob() {
    return false;
  }
}
