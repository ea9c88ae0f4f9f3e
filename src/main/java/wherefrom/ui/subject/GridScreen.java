package wherefrom.ui.subject;

import java.util.List;
import java.util.function.Supplier;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.Panes;

/** Keys that lead on, asked for anew each time the screen comes up. */
public final class GridScreen extends Page {
  private static final int COLUMNS = 3;

  private final Supplier<List<Cell>> cells;
  private final CellGrid grid;

  /**
   * @param none what is said where there is nothing to choose
   */
  public GridScreen(ScreenContext context, String title, String none, Supplier<List<Cell>> cells) {
    super(context, title);
    this.cells = cells;
    grid = new CellGrid(touch(), COLUMNS);
    lay(
        cells.get().isEmpty()
            ? Panes.column(context.scale(), touch().text(none))
            : Panes.column(context.scale(), grid));
  }

  @Override
  public String aside() {
    int count = cells.get().size();
    return count == 0 ? "none" : String.valueOf(count);
  }

  @Override
  protected void refresh() {
    grid.show(cells.get());
  }
}
