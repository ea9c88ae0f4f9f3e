package wherefrom.ui.subject;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.Touch;

/** Any number of keys, some beside each other, in pages of whole rows. */
public final class CellGrid {
  private final Touch touch;
  private final int columns;
  private final Pager<List<Cell>> rows;

  public CellGrid(Touch touch, int columns) {
    this.touch = touch;
    this.columns = touch.isLarge() ? Math.max(2, columns - 1) : columns;
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
      String words = cell.more().isEmpty() ? cell.words() : cell.words() + "\n" + cell.more();
      keys.add(touch.key(words, cell.act()));
    }
    while (keys.size() < columns) {
      keys.add(new javafx.scene.layout.Region());
    }
    return Tiles.row(touch.scale(), keys.toArray(Node[]::new));
  }
}
