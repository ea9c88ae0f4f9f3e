package wherefrom.ui.controls;

import javafx.scene.shape.Polygon;

/** Corners of plain figures in a square of side 1, turned into polygons of any size. */
final class FigureOutline {
  private FigureOutline() {}

  /**
   * A regular figure that fills the square.
   *
   * @param turn where the first corner stands, in parts of a corner step: 0 for a corner on top,
   *     0.5 for a flat top
   */
  static Polygon regular(int corners, double turn, double side) {
    Polygon figure = new Polygon();
    double reach = turn == 0 ? 0.5 : 0.5 / Math.cos(Math.PI / corners);
    for (int at = 0; at < corners; at++) {
      double angle = 2 * Math.PI * (at + turn) / corners - Math.PI / 2;
      figure
          .getPoints()
          .addAll(side * (0.5 + reach * Math.cos(angle)), side * (0.5 + reach * Math.sin(angle)));
    }
    return figure;
  }
}
