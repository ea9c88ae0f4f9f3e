package wherefrom.ui.controls;

import java.util.List;
import javafx.css.PseudoClass;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.layout.VBox;

/** A row of a list: a heading and lines of small text below it. */
public final class ListRow extends VBox implements Levelled {
  private static final PseudoClass SELECTED = PseudoClass.getPseudoClass("selected");

  private final double least;
  private final double aside;
  private final double lead;
  private final ChosenMark chosen;
  private final FitText title;
  private boolean sparing;

  private ListRow(Touch touch, String heading, List<FitText> lines) {
    super(touch.scale().px(0.3));
    setAlignment(Pos.CENTER_LEFT);
    setFillWidth(true);
    least = Math.ceil(touch.scale().px(Scale.KEY_MM));
    lead = touch.scale().px(1.4);
    aside = touch.scale().px(4);
    chosen = new ChosenMark(touch.scale(), getChildren());
    setPadding(new Insets(lead, aside, lead, aside));
    title = touch.heading(heading);
    if (!heading.isEmpty()) {
      getChildren().add(title);
    }
    getChildren().addAll(lines);
  }

  /** A row that is pressed to open what it tells of. */
  public static ListRow key(Touch touch, String heading, List<String> lines, Runnable act) {
    ListRow row = new ListRow(touch, heading, small(touch, lines));
    row.getStyleClass().addAll("key", "plain");
    row.setAccessibleText(heading + ". " + String.join(" ", lines));
    return touch.target(row, act);
  }

  private static List<FitText> small(Touch touch, List<String> lines) {
    return lines.stream().filter(line -> !line.isEmpty()).map(touch::small).toList();
  }

  /** A row that only tells, in small text. */
  public static ListRow plain(Touch touch, String heading, List<String> lines) {
    return plain(new ListRow(touch, heading, small(touch, lines)));
  }

  /** A row that only tells, in small text, and goes on in the next: no line parts the two. */
  public static ListRow begun(Touch touch, String heading, List<String> lines) {
    return new ListRow(touch, heading, small(touch, lines));
  }

  /** A row that only tells, in working text. */
  public static ListRow told(Touch touch, String heading, String words) {
    return plain(new ListRow(touch, heading, List.of(touch.text(words))));
  }

  private static ListRow plain(ListRow row) {
    row.getStyleClass().add("row");
    return row;
  }

  /** Its lines are seen only where the whole list has room with them; the heading says enough. */
  public ListRow sparing() {
    sparing = true;
    return this;
  }

  private boolean showsLines() {
    return !sparing || super.computeMinHeight(getWidth()) <= getHeight() + 1;
  }

  /** Shows it as the one that is chosen now: a ticked box at its end, on a dark plate. */
  public ListRow select(boolean on) {
    chosen.show(this, on);
    pseudoClassStateChanged(SELECTED, on);
    setPadding(new Insets(lead, aside + chosen.room(), lead, aside));
    return this;
  }

  private double innerWidth() {
    return getWidth() - getPadding().getLeft() - getPadding().getRight();
  }

  /** What stands below the title has its height first. */
  @Override
  public double fitted() {
    if (!getChildren().contains(title)) {
      return Double.MAX_VALUE;
    }
    double lines =
        getManagedChildren().stream()
            .filter(line -> line != title && showsLines())
            .mapToDouble(line -> line.minHeight(innerWidth()) + getSpacing())
            .sum();
    double room = getHeight() - getPadding().getTop() - getPadding().getBottom() - lines;
    return title.fit(innerWidth(), room);
  }

  @Override
  public void cap(double sizePx) {
    title.cap(sizePx);
  }

  @Override
  protected void layoutChildren() {
    boolean whole = showsLines();
    if (sparing) {
      getManagedChildren().forEach(line -> line.setVisible(whole || line == title));
    }
    if (whole) {
      super.layoutChildren();
    } else {
      Insets edge = getPadding();
      double high = getHeight() - edge.getTop() - edge.getBottom();
      Panes.place(title, edge.getLeft(), edge.getTop(), innerWidth(), high);
    }
    chosen.atRight(this, aside);
  }

  @Override
  protected double computeMinHeight(double width) {
    return Math.max(least, sparing ? alone(width) : super.computeMinHeight(width));
  }

  /** What the heading needs. */
  private double alone(double width) {
    Insets edge = getPadding();
    double inner = width < 0 ? width : width - edge.getLeft() - edge.getRight();
    return edge.getTop() + title.minHeight(inner) + edge.getBottom();
  }

  @Override
  protected double computePrefHeight(double width) {
    return Math.max(least, super.computePrefHeight(width));
  }
}
