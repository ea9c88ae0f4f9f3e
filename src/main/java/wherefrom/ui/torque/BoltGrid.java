package wherefrom.ui.torque;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.Touch;

/** The bolts on their grid, one target each; rows that do not fit are turned to by pages. */
final class BoltGrid extends StackPane {
  /** What two figures of twice the size need, in heights of a key. */
  private static final double LARGE = 1.1;

  private final Touch touch;
  private final int rows;
  private final int columns;
  private final Function<Integer, Optional<BoltFace>> faces;
  private final IntConsumer touched;
  private final Pager<List<Integer>> pager;

  /**
   * @param faces what is drawn at a position, row by row from 1; nothing where there is no bolt
   * @param touched told of each position that is touched
   */
  BoltGrid(
      Touch touch,
      int rows,
      int columns,
      Function<Integer, Optional<BoltFace>> faces,
      IntConsumer touched) {
    this.touch = touch;
    this.rows = rows;
    this.columns = columns;
    this.faces = faces;
    this.touched = touched;
    pager = Pager.stretched(touch, this::row);
    getStyleClass().add("engine");
    getChildren().add(pager);
    Panes.grow(this);
    setMinWidth(columns * (touch.scale().px(Scale.KEY_MM) + touch.scale().gap()));
    draw();
  }

  void draw() {
    List<List<Integer>> positions = new ArrayList<>();
    for (int row = 0; row < rows; row++) {
      positions.add(IntStream.rangeClosed(row * columns + 1, (row + 1) * columns).boxed().toList());
    }
    pager.refill(positions);
  }

  /** Few rows are drawn larger, where the words leave room; so are the largest figures. */
  private double room() {
    if (touch.scale().textFactor() >= 2) {
      return LARGE;
    }
    return touch.isLarge() || rows > 3 ? 1 : rows > 2 ? 1.2 : 1.6;
  }

  private Region row(List<Integer> positions) {
    List<Node> cells = new ArrayList<>();
    for (int position : positions) {
      cells.add(
          faces
              .apply(position)
              .<Node>map(
                  face ->
                      touch.target(
                          new BoltKey(touch, face, room()), () -> touched.accept(position)))
              .orElseGet(Region::new));
    }
    return Panes.grow(new Tiles(touch.scale(), columns, Scale.GAP_MM, cells));
  }
}
