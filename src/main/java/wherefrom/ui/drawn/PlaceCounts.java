package wherefrom.ui.drawn;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.Region;
import wherefrom.drawing.Sign;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Touch;

/**
 * How many parts stand how: a mark, how many, in a word how or where. Below each other, or beside
 * each other in columns.
 */
public final class PlaceCounts extends Region {
  private static final double ROW_MM = 11.7;

  /** Rows come as near to each other as their marks let them before one is left out. */
  private static final double LEAST_ROW_MM = 9.5;

  /**
   * How many parts stand so.
   *
   * @param words where they are, or how they stand
   */
  public record Count(Sign sign, int parts, String words) {}

  private record Row(SignMark mark, FitText figure, FitText words) {}

  private final Touch touch;
  private final List<Row> rows = new ArrayList<>();
  private int columns = 1;

  public PlaceCounts(Touch touch) {
    this.touch = touch;
  }

  public void show(List<Count> counts) {
    rows.clear();
    getChildren().clear();
    for (Count count : counts) {
      String parts = Integer.toString(count.parts());
      Row row =
          new Row(
              new SignMark(touch.scale(), count.sign()),
              touch.fit(parts, Scale.WORKING_MM, Scale.SMALL_MM, true),
              touch.small(count.words()));
      rows.add(row);
      getChildren().addAll(row.mark(), row.figure(), row.words());
    }
    requestLayout();
  }

  /** How many marks are told. */
  public int count() {
    return rows.size();
  }

  /** Stands them in so many columns. */
  public void columns(int number) {
    if (number != columns) {
      columns = number;
      requestLayout();
    }
  }

  /** How wide so many columns are, in pixels. */
  public double widthOf(int number) {
    double widest = 0;
    for (Row row : rows) {
      widest =
          Math.max(
              widest,
              row.mark().prefWidth(-1)
                  + row.figure().prefWidth(-1)
                  + row.words().leastLineWidth()
                  + 2 * gap());
    }
    return number * widest + (number - 1) * touch.scale().gap();
  }

  private double row(double mm) {
    return touch.scale().px(mm) * touch.scale().textFactor();
  }

  /** How high so many columns are, in pixels. */
  public double heightOf(int number) {
    return Math.ceil(lines(number) * row(ROW_MM));
  }

  private int lines(int number) {
    return (rows.size() + number - 1) / number;
  }

  /** The height of a row where all of them share this height. */
  private double share(double height) {
    return Math.min(row(ROW_MM), Math.max(row(LEAST_ROW_MM), height / Math.max(1, lines(columns))));
  }

  /** How many of them find room in a height. */
  public int fitting(double height) {
    return columns * (int) Math.floor(height / share(height));
  }

  @Override
  protected double computeMinHeight(double width) {
    return heightOf(columns);
  }

  @Override
  protected double computePrefHeight(double width) {
    return computeMinHeight(width);
  }

  @Override
  protected double computeMinWidth(double height) {
    return widthOf(columns);
  }

  @Override
  protected double computePrefWidth(double height) {
    return computeMinWidth(height);
  }

  private double gap() {
    return touch.scale().px(2.7);
  }

  @Override
  protected void layoutChildren() {
    double wide = (getWidth() - (columns - 1) * touch.scale().gap()) / columns;
    int most = fitting(getHeight());
    double high = share(getHeight());
    for (int at = 0; at < rows.size(); at++) {
      int line = at / columns;
      double y = line * high;
      place(rows.get(at), at % columns * (wide + touch.scale().gap()), y, wide, high);
      boolean shown = at < most;
      rows.get(at).mark().setVisible(shown);
      rows.get(at).figure().setVisible(shown);
      rows.get(at).words().setVisible(shown);
    }
  }

  private void place(Row row, double x, double y, double wide, double high) {
    double mark = row.mark().prefWidth(-1);
    double markHigh = row.mark().prefHeight(-1);
    Panes.place(row.mark(), x, y + (high - markHigh) / 2, mark, markHigh);
    double figureX = x + mark + gap();
    double figure = row.figure().prefWidth(-1);
    Panes.place(row.figure(), figureX, y, figure, high);
    double wordsX = figureX + figure + gap();
    Panes.place(row.words(), wordsX, y, Math.max(1, x + wide - wordsX), high);
  }
}
