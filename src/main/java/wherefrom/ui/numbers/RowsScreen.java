package wherefrom.ui.numbers;

import java.util.List;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Page;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;

/** Rows of words to be read. */
public final class RowsScreen extends Page {
  private final String title;
  private final Pager<ResultRows.Row> rows;

  RowsScreen(Desk desk, String title, List<ResultRows.Row> all) {
    super(desk, title, false);
    this.title = title;
    rows = Pager.list(desk.touch(), row -> ListRow.plain(desk.touch(), row.heading(), row.lines()));
    lay(rows);
    rows.setItems(all);
  }

  @Override
  public String title() {
    return title;
  }
}
