package wherefrom.ui.numbers;

import java.util.ArrayList;
import java.util.List;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.workings.InputSpec;
import wherefrom.workings.WorkingCard;

/** A working's formula, its source, what is not known, and what each figure means. */
public final class AboutWorkingScreen extends Page {
  private final String title;
  private final Pager<ResultRows.Row> rows;

  AboutWorkingScreen(ScreenContext context, WorkingCard card) {
    super(context, "", false);
    title = card.title();
    rows =
        Pager.list(
            context.touch(), row -> ListRow.plain(context.touch(), row.heading(), row.lines()));
    lay(rows);
    List<ResultRows.Row> all = new ArrayList<>();
    all.add(ResultRows.Row.of("Formula", card.formula()));
    all.add(ResultRows.Row.of("Source", card.source().text()));
    card.limits().forEach(limit -> all.add(ResultRows.Row.of("Not known", limit)));
    for (InputSpec input : card.inputs()) {
      all.add(ResultRows.Row.of(input.words(), input.meaning()));
    }
    rows.setItems(all);
  }

  @Override
  public String title() {
    return title;
  }
}
