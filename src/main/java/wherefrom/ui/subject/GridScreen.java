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
  private List<Cell> asked;
  private boolean isFresh = true;

  /**
   * @param none what is said where there is nothing to choose
   */
  public GridScreen(ScreenContext context, String title, String none, Supplier<List<Cell>> cells) {
    super(context, title);
    this.cells = cells;
    grid = new CellGrid(touch(), COLUMNS);
    asked = cells.get();
    lay(
        asked.isEmpty()
            ? Panes.column(context.scale(), touch().text(none))
            : Panes.column(context.scale(), grid));
  }

  @Override
  public String aside() {
    int count = asked.size();
    return count == 0 ? "none" : count + " in the list";
  }

  @Override
  protected void refresh() {
    // A screen that has just been made asked as it was made: its keys have pictures.
    asked = isFresh ? asked : cells.get();
    isFresh = false;
    grid.show(asked);
  }
}
