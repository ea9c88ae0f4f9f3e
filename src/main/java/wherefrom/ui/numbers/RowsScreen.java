package wherefrom.ui.numbers;

import java.util.List;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;

/** Rows of words to be read. */
public final class RowsScreen extends Page {
  private final String title;
  private final Pager<ResultRows.Row> rows;

  RowsScreen(ScreenContext context, String title, List<ResultRows.Row> all) {
    super(context, title, false);
    this.title = title;
    rows =
        Pager.list(
            context.touch(), row -> ListRow.plain(context.touch(), row.heading(), row.lines()));
    lay(rows);
    rows.setItems(all);
  }

  @Override
  public String title() {
    return title;
  }
}
