package wherefrom.ui.controls;

import java.util.List;
import java.util.function.DoubleSupplier;
import javafx.geometry.Orientation;
import javafx.geometry.Pos;
import javafx.geometry.VPos;
import javafx.scene.layout.Region;
import javafx.scene.text.Text;
import javafx.scene.text.TextAlignment;
import javafx.scene.text.TextBoundsType;

/**
 * Words that fill the room they are given: as large as they may be, wrapped between words, smaller
 * where the room is narrow, never smaller than their least size, never cut unless they are asked to
 * keep within a few lines.
 */
public final class FitText extends Region {
  private static final int STEPS = 6;
  private static final double MEASURED_PX = 100;
  private static final String ELLIPSIS = " …";

  /** A width is asked for with fractions of a pixel and given in whole ones. */
  private static final double ROUNDING = 0.9;

  /** A room on whole pixels may be so many lower than what was worked out for it. */
  private static final double SHORT = 1;

  private final Text shown = new Text();
  private final DoubleSupplier largestPx;
  private final DoubleSupplier leastPx;
  private final boolean bold;
  private Pos alignment = Pos.CENTER_LEFT;
  private String words;
  private Wrapping wrapping;
  private int lines;
  private boolean asNeeded;
  private boolean tight;
  private double ink;
  private double cap = Double.MAX_VALUE;
  private boolean cut;

  /**
   * Words whose letters may change their size while they are shown.
   *
   * @param largestPx the size that they have where there is room
   * @param leastPx the size that they keep
   */
  FitText(DoubleSupplier largestPx, DoubleSupplier leastPx, boolean bold, String words) {
    this.largestPx = largestPx;
    this.leastPx = leastPx;
    this.bold = bold;
    this.words = words;
    this.wrapping = new Wrapping(words, bold);
    getStyleClass().add("words");
    shown.getStyleClass().add("ink");
    // First of all: what is done to words without a font looks for the system's.
    shown.setFont(Fonts.of(leastPx.getAsDouble(), bold));
    shown.setTextOrigin(VPos.TOP);
    shown.setManaged(false);
    getChildren().add(shown);
    setMouseTransparent(true);
  }

  private double least() {
    return leastPx.getAsDouble();
  }

  private double largest() {
    return Math.max(largestPx.getAsDouble(), least());
  }

  /** Where the words stand in the room they are given. */
  public FitText align(Pos where) {
    alignment = where;
    shown.setTextAlignment(TextAlignment.valueOf(where.getHpos().name()));
    requestLayout();
    return this;
  }

  /** Takes no more height than its letters have: for a line of few words. */
  public FitText tight() {
    tight = true;
    shown.setBoundsType(TextBoundsType.VISUAL);
    return this;
  }

  /** Keeps within so many lines, whatever the words are; what is left out shows as an ellipsis. */
  public FitText within(int mostLines) {
    if (lines != mostLines) {
      lines = mostLines;
      requestLayout();
    }
    return this;
  }

  /** Takes as many lines as its words have, and never more than so many, as {@link #within}. */
  public FitText upTo(int mostLines) {
    asNeeded = true;
    return within(mostLines);
  }

  /** No larger than this, whatever the room. */
  void cap(double sizePx) {
    if (sizePx != cap) {
      cap = sizePx;
      requestLayout();
    }
  }

  /** Rather smaller than in two lines, where one line of this width can hold them. */
  void keepInLine(double width) {
    double part = width / Math.max(1, leastLineWidth());
    cap(part >= 1 ? part * least() : Double.MAX_VALUE);
  }

  /** Whether some of the words were left out for want of room. */
  public boolean isCut() {
    return cut;
  }

  /** Whether all the words can stand in a room of this size. */
  public boolean fits(double width, double height) {
    return height(least(), width) <= height + SHORT;
  }

  /** Whether all the words can stand in a room of this size in their largest letters. */
  public boolean fitsLarge(double width, double height) {
    return width > 0 && height(largest(), width) <= height + SHORT;
  }

  /** Whether other words in the same letters could stand in a room of this size. */
  public boolean wouldFit(String others, double width, double height) {
    return new FitText(largestPx, leastPx, bold, others).fits(width, height);
  }

  public FitText centred() {
    return align(Pos.CENTER);
  }

  public void setWords(String newWords) {
    if (!newWords.equals(words)) {
      words = newWords;
      ink = 0;
      wrapping = new Wrapping(newWords, bold);
      requestLayout();
    }
  }

  public String words() {
    return words;
  }

  /** How many lines the words need in this width at their least size. */
  public int leastLines(double width) {
    return wrapping.count(least(), width - ROUNDING);
  }

  /** Behind the last letter of each line that other words in these letters would need. */
  List<Integer> leastEnds(String others, double width) {
    return new Wrapping(others, bold).ends(least(), width - ROUNDING);
  }

  /** The width that the words need in one line at their least size. */
  public double leastLineWidth() {
    return Math.ceil(wrapping.lineWidth(least())) + 1;
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computeMinWidth(double height) {
    if (lines > 0) {
      return least();
    }
    return Math.ceil(wrapping.widestPiece(least())) + 1;
  }

  @Override
  protected double computePrefWidth(double height) {
    return Math.ceil(wrapping.lineWidth(largest())) + 1;
  }

  @Override
  protected double computeMaxWidth(double height) {
    return Double.MAX_VALUE;
  }

  @Override
  protected double computeMinHeight(double width) {
    return Math.ceil(lines > 0 ? keptLines(width) : height(least(), width));
  }

  /** The height of the lines that it keeps within. */
  private double keptLines(double width) {
    boolean all = !asNeeded || width <= 0;
    return (all ? lines : Math.min(lines, leastLines(width))) * Wrapping.lineHeight(least());
  }

  @Override
  protected double computePrefHeight(double width) {
    if (lines > 0 && !asNeeded) {
      return minHeight(width);
    }
    double most = lines > 0 ? lines * Wrapping.lineHeight(largest()) : Double.MAX_VALUE;
    double all = height(width <= 0 ? largest() : largestForWidth(width), width);
    return Math.ceil(Math.min(all, most));
  }

  @Override
  protected double computeMaxHeight(double width) {
    return Double.MAX_VALUE;
  }

  private double largestForWidth(double width) {
    double widest = wrapping.widestPiece(largest());
    return widest <= width ? largest() : Math.max(least(), largest() * width / widest);
  }

  /** The height of the words at a size; without a width in one line each. */
  private double height(double size, double width) {
    int lines = wrapping.count(size, width <= 0 ? Double.MAX_VALUE : width - ROUNDING);
    return tight ? size * inkHigh() : lines * Wrapping.lineHeight(size);
  }

  /** The height of the letters as a part of their size: some stand out above the capitals. */
  private double inkHigh() {
    if (ink == 0) {
      Text measured = new Text(words);
      measured.setFont(Fonts.of(MEASURED_PX, bold));
      measured.setBoundsType(TextBoundsType.VISUAL);
      ink = Math.max(Scale.CAPITAL, measured.getLayoutBounds().getHeight() / MEASURED_PX);
    }
    return ink;
  }

  /** The size of letters that a room of this size has. */
  double fit(double width, double height) {
    double high = largestForWidth(width);
    if (height(high, width) <= height + SHORT) {
      return high;
    }
    double low = least();
    for (int step = 0; step < STEPS; step++) {
      double middle = (low + high) / 2;
      if (height(middle, width) <= height + SHORT) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** As many of the words as there is room for, at their least size. */
  private String cut(double width, double height) {
    int end = words.length();
    String broken;
    do {
      end = Math.max(words.lastIndexOf(' ', end - 1), words.lastIndexOf('\n', end - 1));
      Wrapping begun = new Wrapping(words.substring(0, Math.max(0, end)) + ELLIPSIS, bold);
      broken = begun.broken(least(), width);
    } while (end > 0 && broken.lines().count() * Wrapping.lineHeight(least()) > height + SHORT);
    return broken;
  }

  @Override
  protected void layoutChildren() {
    double width = getWidth() - snappedLeftInset() - snappedRightInset();
    double height = getHeight() - snappedTopInset() - snappedBottomInset();
    // Letters from before stand outside of no room.
    boolean room = width > 0 && height > 0 && !words.isEmpty();
    shown.setVisible(room);
    if (!room) {
      return;
    }
    double size = Math.min(cap, fit(width, height));
    shown.setFont(Fonts.of(size, bold));
    cut = lines > 0 && !fits(width, height);
    shown.setText(cut ? cut(width, height) : wrapping.broken(size, width));
    double across = width - shown.getLayoutBounds().getWidth();
    double spare = height - shown.getLayoutBounds().getHeight();
    double down =
        switch (alignment.getVpos()) {
          case TOP, BASELINE -> 0;
          case CENTER -> spare / 2;
          case BOTTOM -> spare;
        };
    double aside =
        switch (alignment.getHpos()) {
          case LEFT -> 0;
          case CENTER -> across / 2;
          case RIGHT -> across;
        };
    shown.relocate(snappedLeftInset() + aside, snappedTopInset() + Math.max(0, down));
  }
}
