package wherefrom.ui.phone;

import javafx.scene.layout.Region;
import javafx.scene.shape.ClosePath;
import javafx.scene.shape.LineTo;
import javafx.scene.shape.MoveTo;
import javafx.scene.shape.Path;
import javafx.scene.shape.Rectangle;
import wherefrom.job.phone.Squares;

/** A QR symbol, as large as whole pixels for each square allow; black on white in every look. */
final class SymbolView extends Region {
  /** Light squares on each side, as ISO/IEC 18004 wants them. */
  private static final int MARGIN = 4;

  private final Rectangle ground = new Rectangle();
  private final Path dark = new Path();
  private Squares squares = new Squares(0, new java.util.BitSet());

  SymbolView(double least) {
    ground.getStyleClass().add("symbol-ground");
    dark.getStyleClass().add("symbol-dark");
    getChildren().setAll(ground, dark);
    setMinSize(least, least);
    setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
  }

  void show(Squares shown) {
    squares = shown;
    requestLayout();
  }

  @Override
  protected void layoutChildren() {
    int across = squares.size() + 2 * MARGIN;
    double square = Math.max(1, Math.floor(Math.min(getWidth(), getHeight()) / across));
    double side = square * across;
    double left = Math.floor((getWidth() - side) / 2);
    double top = Math.floor((getHeight() - side) / 2);
    ground.setX(left);
    ground.setY(top);
    ground.setWidth(side);
    ground.setHeight(side);
    dark.getElements().clear();
    for (int row = 0; row < squares.size(); row++) {
      for (int column = 0; column < squares.size(); column++) {
        if (squares.isDark(row, column)) {
          add(left + (column + MARGIN) * square, top + (row + MARGIN) * square, square);
        }
      }
    }
  }

  private void add(double x, double y, double side) {
    dark.getElements()
        .addAll(
            new MoveTo(x, y),
            new LineTo(x + side, y),
            new LineTo(x + side, y + side),
            new LineTo(x, y + side),
            new ClosePath());
  }
}
