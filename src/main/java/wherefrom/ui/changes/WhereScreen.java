package wherefrom.ui.changes;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.EngineSide;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Tiles;

/** Asks where, by keys that lie as the engine does. */
public final class WhereScreen extends Page {
  private static final double NAME_MM = 24;
  private static final char UNBROKEN = '\u00a0';

  private final Consumer<String> done;

  WhereScreen(
      ScreenContext context,
      String title,
      EngineSide side,
      List<WhereRows.Row> rows,
      Consumer<String> done) {
    super(context, title, false);
    this.done = done;
    Pager<WhereRows.Row> list = Pager.stretched(context.touch(), this::row);
    list.setItems(rows);
    FitText front = context.touch().small("FRONT");
    FitText rear = context.touch().small("FLYWHEEL").align(Pos.CENTER_RIGHT);
    front.setMinWidth(Region.USE_PREF_SIZE);
    rear.setMinWidth(Region.USE_PREF_SIZE);
    FitText seen = Panes.grow(context.touch().small(side.seen()).centred());
    HBox caption = Panes.row(context.scale(), front, seen, rear);
    lay(Panes.column(context.scale(), caption, list));
  }

  private Region row(WhereRows.Row row) {
    List<Node> keys = new ArrayList<>();
    for (WhereRows.Cell cell : row.cells()) {
      String words = cell.words().replace(' ', UNBROKEN);
      keys.add(touch().key(words, () -> chosen(cell.where())));
    }
    Tiles tiles = Panes.grow(new Tiles(context.scale(), keys.size(), Scale.GAP_MM, keys));
    if (row.words().isEmpty()) {
      return tiles;
    }
    FitText name = context.touch().small(row.words());
    name.setMinWidth(Math.max(context.scale().px(NAME_MM), name.minWidth(-1)));
    name.setMaxWidth(name.getMinWidth());
    return Panes.row(context.scale(), name, tiles);
  }

  private void chosen(String where) {
    context.navigator().back();
    done.accept(where);
  }
}
