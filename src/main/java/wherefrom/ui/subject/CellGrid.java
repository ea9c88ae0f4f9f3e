package wherefrom.ui.subject;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.PictureKey;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.Touch;

/** Any number of keys, some beside each other, in pages of whole rows. */
public final class CellGrid {
  private final Touch touch;
  private final int columns;
  private final Pager<List<Cell>> rows;

  /**
   * @param columns with usual text; larger text has fewer
   */
  public CellGrid(Touch touch, int columns) {
    this.touch = touch;
    this.columns = Math.max(1, (int) Math.ceil(columns / touch.scale().textFactor() - 0.3));
    rows = Pager.list(touch, this::row);
  }

  public Pager<List<Cell>> view() {
    return rows;
  }

  /** Shows these keys where the list stood. */
  public void show(List<Cell> cells) {
    List<List<Cell>> lines = new ArrayList<>();
    for (int at = 0; at < cells.size(); at += columns) {
      lines.add(cells.subList(at, Math.min(cells.size(), at + columns)));
    }
    rows.refill(lines);
  }

  private Tiles row(List<Cell> cells) {
    List<Node> keys = new ArrayList<>();
    for (Cell cell : cells) {
      keys.add(
          PictureKey.of(touch, cell.picture(), cell.words(), cell.more(), cell.done(), cell.act()));
    }
    while (keys.size() < columns) {
      keys.add(new Region());
    }
    return Tiles.row(touch.scale(), keys.toArray(Node[]::new));
  }
}
