package wherefrom.ui.app;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.controls.Under;

/**
 * A screen that is a list in pages, with what stands above it and the keys below it. Where the list
 * is empty it says what it is for.
 */
public abstract class ListPage extends Page {
  private final Pager<Region> list;

  /** A list of things of the open job. */
  protected ListPage(ScreenContext context, String title) {
    this(context, title, true);
  }

  /**
   * @param onJob whether it works on the open job
   */
  protected ListPage(ScreenContext context, String title, boolean onJob) {
    super(context, title, onJob);
    list = Pager.list(context.touch(), row -> row);
    layOut(List.of(), List.of());
  }

  /** Puts something above the list and below it; once, while the screen is made. */
  protected final void layOut(List<? extends Node> above, List<? extends Node> below) {
    layOut(above, list, below);
  }

  private void layOut(List<? extends Node> above, Region middle, List<? extends Node> below) {
    VBox column = Panes.column(context.scale());
    column.getChildren().addAll(above);
    column.getChildren().add(middle);
    column.getChildren().addAll(below);
    lay(column);
  }

  /** A list with a picture of what it tells of, where there is room for it, and the keys below. */
  protected final void layOutWith(Region picture, Node below) {
    layOut(List.of(), new Under(list, picture, context.scale().gap()), List.of(below));
  }

  /** The rows as things are now. */
  protected abstract List<Region> rows();

  /**
   * What the list is for and what to press; said where it has no rows. Empty where it always has.
   */
  protected String whenEmpty() {
    return "";
  }

  @Override
  protected void refresh() {
    List<Region> rows = new ArrayList<>(rows());
    if (rows.isEmpty() && !whenEmpty().isEmpty()) {
      rows.add(ListRow.told(touch(), "", whenEmpty()));
    }
    list.refill(rows);
  }

  /** A list with the keys below it. */
  protected final void layOut(Node below) {
    layOut(List.of(), List.of(below));
  }

  /** A row that only tells. */
  protected final Region told(String heading, String... lines) {
    return ListRow.plain(touch(), heading, List.of(lines));
  }

  /** A row that leads on, with one line below its heading. */
  protected final Region key(String heading, String line, Runnable act) {
    return key(heading, List.of(line), act);
  }

  /** A row that leads on. */
  protected final Region key(String heading, List<String> lines, Runnable act) {
    return ListRow.key(touch(), heading, lines, act);
  }

  /**
   * A row that leads on, whose heading says enough: large letters show the line below it where the
   * whole list has room with such lines.
   */
  protected final Region spare(String heading, String line, Runnable act) {
    return spare(touch(), heading, line, act);
  }

  /** The same for rows that are made apart from their screen. */
  public static Region spare(Touch touch, String heading, String line, Runnable act) {
    ListRow row = ListRow.key(touch, heading, List.of(line), act);
    return touch.isLarge() ? row.sparing() : row;
  }
}
