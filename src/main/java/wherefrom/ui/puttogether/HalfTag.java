package wherefrom.ui.puttogether;

import javafx.geometry.Orientation;
import javafx.geometry.Pos;
import javafx.scene.layout.Region;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.PaperTag;
import wherefrom.ui.controls.Touch;

/** A half of a fit: a tag where it is known, else its outline with what to scan. */
final class HalfTag extends Region {
  private final FitText large;

  /** The first line alone, and with the part: only measured. */
  private final FitText place;

  private final FitText whole;
  private final FitText bold;
  private final FitText small;
  private final boolean known;
  private final Words written;
  private final PaperTag tag;

  HalfTag(Touch touch, Halves.Lines lines, boolean known) {
    this.known = known;
    large = known ? named(touch, lines.large()) : touch.heading(lines.large());
    place = known ? named(touch, lines.large()) : touch.heading(lines.large());
    whole = named(touch, (lines.large() + " " + lines.bold()).strip());
    bold = touch.fit(lines.bold(), 4.5, 4.5, true);
    small = touch.small(lines.small());
    large.align(Pos.CENTER_LEFT);
    bold.align(Pos.CENTER_LEFT);
    small.align(Pos.CENTER_LEFT);
    written = new Words();
    tag = new PaperTag(touch.scale(), written);
    if (!known) {
      tag.getStyleClass().add("dashed");
    }
    getChildren().setAll(tag);
    setMouseTransparent(true);
  }

  private static FitText named(Touch touch, String words) {
    double largest = 10.7 / touch.scale().textFactor();
    return touch.fit(words.replace(' ', '\u00a0'), largest, 4.5, true);
  }

  /** The lines, one below the other; the part beside its place where it has no line below it. */
  private final class Words extends Region {
    Words() {
      getChildren().setAll(large, bold, small);
    }

    @Override
    public Orientation getContentBias() {
      return Orientation.HORIZONTAL;
    }

    @Override
    protected double computeMinWidth(double height) {
      return Math.max(place.minWidth(-1), Math.max(bold.minWidth(-1), small.minWidth(-1)));
    }

    @Override
    protected double computeMinHeight(double width) {
      return place.minHeight(width);
    }

    @Override
    protected double computePrefHeight(double width) {
      return place.prefHeight(width) + high(bold, width) + high(small, width);
    }

    /** The first two lines at their least. */
    double twoLines(double width) {
      return place.minHeight(width) + high(bold, width);
    }

    private double high(FitText text, double width) {
      return text.words().isEmpty() ? 0 : text.minHeight(width);
    }

    @Override
    protected void layoutChildren() {
      double width = getWidth();
      double second = high(bold, width);
      double third = high(small, width);
      double least = place.minHeight(width);
      boolean two = second > 0 && least + second <= getHeight();
      boolean three = third > 0 && least + (two ? second : 0) + third <= getHeight();
      bold.setVisible(two);
      small.setVisible(three);
      double below = (two ? second : 0) + (three ? third : 0);
      double wanted = known ? place.prefHeight(width) : getHeight();
      double first = Math.min(getHeight() - below, Math.max(least, wanted));
      double top = (getHeight() - first - below) / 2;
      boolean beside = known && second > 0 && !two && whole.fits(width, first);
      large.setWords((beside ? whole : place).words());
      Panes.place(large, 0, top, width, first);
      Panes.place(bold, 0, top + first, width, two ? second : 0);
      Panes.place(small, 0, top + first + (two ? second : 0), width, three ? third : 0);
    }
  }

  /** How high it is with its first two lines, without the third. */
  double highForTwo(double width) {
    return tag.minHeight(width) + written.twoLines(width) - written.minHeight(width);
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computeMinWidth(double height) {
    return tag.minWidth(height);
  }

  @Override
  protected double computeMinHeight(double width) {
    return tag.minHeight(width);
  }

  @Override
  protected double computePrefHeight(double width) {
    return tag.prefHeight(width);
  }

  @Override
  protected void layoutChildren() {
    Panes.place(tag, 0, 0, getWidth(), getHeight());
  }
}
