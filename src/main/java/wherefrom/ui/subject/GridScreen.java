package wherefrom.ui.subject;

import java.util.List;
import java.util.function.Supplier;
import javafx.scene.layout.Region;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Screen;
import wherefrom.ui.controls.Panes;

/** Keys that lead on, asked for anew each time the screen comes up. */
public final class GridScreen implements Screen {
  private static final int COLUMNS = 4;

  private final String title;
  private final Supplier<List<Cell>> cells;
  private final CellGrid grid;
  private final Region view;

  /**
   * @param none what is said where there is nothing to choose
   */
  public GridScreen(Desk desk, String title, String none, Supplier<List<Cell>> cells) {
    this.title = title;
    this.cells = cells;
    grid = new CellGrid(desk.touch(), COLUMNS);
    view =
        cells.get().isEmpty()
            ? Panes.column(desk.scale(), desk.touch().text(none))
            : Panes.column(desk.scale(), grid.view());
  }

  @Override
  public String title() {
    return title;
  }

  @Override
  public Region view() {
    return view;
  }

  @Override
  public void shown() {
    grid.show(cells.get());
  }

  @Override
  public void changed() {
    shown();
  }
}
