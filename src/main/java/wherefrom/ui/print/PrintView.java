package wherefrom.ui.print;

import java.util.List;
import javafx.geometry.Orientation;
import javafx.scene.layout.Region;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.controls.TouchKey;

/** The sheet to scale with its pages, beside it what is chosen, the tag that prints. */
final class PrintView extends Region {
  private static final double SHEET = 0.46;
  private static final double LEAST_SHEET_MM = 60;

  /** The tag stands below the sheet where that is as wide as this, as on glass that lies. */
  private static final double TAG_MM = 66;

  /** A tag may be so much lower where the rows leave no more. */
  private static final double SPARE_MM = 2.5;

  /** Of the foot's width: the key beside the tag, where its words have room in it. */
  private static final double SIDE = 0.36;

  private final Touch touch;
  private final double gap;
  private final Region sheet;
  private final TouchKey page;
  private final List<? extends Region> rows;
  private final FitText note;
  private final TagKey tag;
  private final Region beside;

  /**
   * @param page turns the pages of the sheet
   * @param rows what is chosen, from the top
   * @param note what is to be known before it is printed
   * @param beside what stands beside the tag
   */
  PrintView(
      Touch touch,
      Region sheet,
      TouchKey page,
      List<? extends Region> rows,
      FitText note,
      TagKey tag,
      Region beside) {
    this.touch = touch;
    this.gap = touch.scale().gap();
    this.sheet = sheet;
    this.page = page;
    this.rows = rows;
    this.note = note;
    this.tag = tag;
    this.beside = beside;
    getChildren().addAll(sheet, page);
    getChildren().addAll(rows);
    getChildren().addAll(note, tag, beside);
    setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
  }

  private double rowsHeight(double width) {
    return rows.stream().mapToDouble(row -> row.minHeight(width) + gap).sum();
  }

  private double tagHeight(double width) {
    double wide = width - beside.prefWidth(-1) - gap;
    return Math.max(touch.scale().px(Scale.PRIMARY_MM), tag.minHeight(wide));
  }

  private double columnHeight(double width) {
    return rowsHeight(width) + tagHeight(width);
  }

  private static double left(double width) {
    return Math.floor(SHEET * width);
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computeMinWidth(double height) {
    double widest = rows.stream().mapToDouble(row -> row.minWidth(-1)).max().orElse(0);
    return Math.max(widest, tag.minWidth(-1) + beside.prefWidth(-1) + gap);
  }

  @Override
  protected double computeMinHeight(double width) {
    double left = left(width);
    boolean low =
        left >= touch.scale().px(TAG_MM)
            && left >= tag.minWidth(-1) + gap + beside.minWidth(-1)
            && width - left - gap >= computeMinWidth(-1);
    return low ? rowsHeight(width - left - gap) - gap : columnHeight(width);
  }

  @Override
  protected void layoutChildren() {
    double width = getWidth();
    if (getHeight() > width) {
      double low = columnHeight(width) + noteHeight(width);
      double above = getHeight() - low - gap;
      sheet(0, 0, width, above);
      column(0, getHeight() - low, width, low);
      return;
    }
    double left = left(width);
    double column = width - left - gap;
    boolean drawn = left >= touch.scale().px(LEAST_SHEET_MM) && column >= computeMinWidth(-1);
    if (drawn && columnHeight(column) - touch.scale().px(SPARE_MM) > getHeight()) {
      tagBelowSheet(left);
      return;
    }
    sheet.setVisible(drawn);
    page.setVisible(drawn && !page.words().isEmpty());
    if (drawn) {
      sheet(0, 0, left, getHeight());
    }
    double x = drawn ? left + gap : 0;
    column(x, 0, width - x, getHeight());
  }

  /** Low glass: the rows take all the height beside the sheet, which turns its pages itself. */
  private void tagBelowSheet(double left) {
    double x = left + gap;
    rows(x, 0, getWidth() - x);
    double low = tagHeight(left);
    foot(0, getHeight() - low, left, low);
    sheet.setVisible(true);
    page.setVisible(false);
    note.setVisible(false);
    Panes.place(sheet, 0, 0, left, Math.max(1, getHeight() - low - gap));
  }

  private void foot(double x, double y, double width, double height) {
    double side = Math.min(beside.prefWidth(-1), Math.max(beside.minWidth(-1), SIDE * width));
    Panes.place(tag, x, y, width - side - gap, height);
    Panes.place(beside, x + width - side, y, side, height);
  }

  /** Where the next one would stand. */
  private double rows(double x, double y, double width) {
    double top = y;
    for (Region row : rows) {
      double high = row.minHeight(width);
      Panes.place(row, x, top, width, high);
      top += high + gap;
    }
    return top;
  }

  private double noteHeight(double width) {
    return note.words().isEmpty() ? 0 : note.minHeight(width) + gap;
  }

  private void sheet(double x, double y, double width, double height) {
    boolean paged = !page.words().isEmpty();
    if (paged && height < width) {
      flat(x, y, width, height);
      return;
    }
    double low = paged ? page.minHeight(width) + gap : 0;
    boolean drawn = height - low >= touch.scale().px(Scale.KEY_MM);
    sheet.setVisible(drawn);
    page.setVisible(drawn && paged);
    Panes.place(sheet, x, y, width, Math.max(1, height - low));
    Panes.place(page, x, y + height - low + gap, width, Math.max(1, low - gap));
  }

  /** The key that turns the pages beside the sheet. */
  private void flat(double x, double y, double width, double height) {
    boolean drawn = height >= touch.scale().px(Scale.KEY_MM);
    double half = Math.floor((width - gap) / 2);
    double key = page.minHeight(half);
    sheet.setVisible(drawn);
    page.setVisible(drawn);
    Panes.place(sheet, x, y, half, Math.max(1, height));
    Panes.place(page, x + half + gap, y + height - key, half, key);
  }

  private void column(double x, double y, double width, double height) {
    double top = rows(x, y, width);
    double bottom = Math.max(top, y + height - tagHeight(width));
    foot(x, bottom, width, y + height - bottom);
    double said = noteHeight(width);
    boolean told = said > 0 && top + said <= bottom + gap;
    note.setVisible(told);
    Panes.place(note, x, top, width, Math.max(1, said - gap));
  }
}
