package wherefrom.ui.controls;

import javafx.css.PseudoClass;
import javafx.geometry.Orientation;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.layout.Region;

/**
 * A key: a flat plate with a dark outline and words on it, or a drawing above the words. Made by
 * {@link Touch} only, which says how it acts.
 */
public final class TouchKey extends Region implements Levelled {
  private static final PseudoClass SELECTED = PseudoClass.getPseudoClass("selected");

  private final FitText words;
  private final ChosenMark chosen;
  private final double padding;
  private final double inset;
  private double aside;
  private final double least;
  private final double drawingGap;
  private Node drawing;
  private boolean hasDrawing;

  TouchKey(Scale scale, FitText words, double leastMm, String styleClass) {
    this.words = words.centred();
    this.chosen = new ChosenMark(scale, getChildren());
    setAccessibleText(words.words());
    this.padding = scale.px(2.2);
    this.inset = scale.px(4);
    this.aside = padding;
    this.drawingGap = scale.px(1);
    this.drawing = new Region();
    getStyleClass().addAll("key", styleClass);
    getChildren().add(words);
    this.least = scale.px(leastMm);
    setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
  }

  public void setWords(String text) {
    words.setWords(text);
    setAccessibleText(text);
    chosen.show(this, chosen.isShown());
  }

  public String words() {
    return words.words();
  }

  /** Lets the words come near the edge, as on the rail. */
  public TouchKey tight() {
    aside = padding / 2;
    return this;
  }

  /** Sets the words on the left, as in a list. */
  public TouchKey left() {
    words.align(Pos.CENTER_LEFT);
    aside = inset;
    return this;
  }

  /** Shows a key as chosen: a ticked box, and light words on a dark plate. */
  public TouchKey select(boolean on) {
    chosen.show(this, on);
    return stress(on);
  }

  /** Has light words on a dark plate, where the words themselves say why. */
  public TouchKey stress(boolean on) {
    pseudoClassStateChanged(SELECTED, on);
    return this;
  }

  /** Puts a drawing of a fixed size above the words. */
  public TouchKey draw(Node picture) {
    getChildren().setAll(words, picture);
    chosen.stay();
    picture.setMouseTransparent(true);
    drawing = picture;
    hasDrawing = true;
    return this;
  }

  /** A key that cannot be used now is not shown at all, but keeps its room. */
  public TouchKey offer(boolean offered) {
    setVisible(offered);
    return this;
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  /** What the ticked box takes beside the words: beside a drawing it stands in the corner. */
  private double boxWidth() {
    return hasDrawing ? 0 : chosen.room();
  }

  private double drawingHeight() {
    return hasDrawing ? drawing.getLayoutBounds().getHeight() + drawingGap : 0;
  }

  @Override
  protected double computePrefWidth(double height) {
    double drawn = hasDrawing ? drawing.getLayoutBounds().getWidth() : 0;
    return Math.max(least, Math.max(drawn, words.prefWidth(-1)) + 2 * aside + boxWidth());
  }

  @Override
  protected double computeMinWidth(double height) {
    return Math.max(least, words.minWidth(-1) + 2 * aside + boxWidth());
  }

  @Override
  protected double computeMinHeight(double width) {
    double inner = width <= 0 ? words.prefWidth(-1) : width - 2 * aside - boxWidth();
    double written = words.words().isEmpty() ? 0 : words.minHeight(inner);
    return Math.max(least, written + drawingHeight() + 2 * padding);
  }

  @Override
  protected double computePrefHeight(double width) {
    return computeMinHeight(width);
  }

  @Override
  public double fitted() {
    return fitted(getWidth(), getHeight());
  }

  /** The size of letters that its words would have in a key of this size. */
  double fitted(double width, double height) {
    double room = height - drawingHeight() - 2 * padding;
    return words.fit(width - 2 * aside - boxWidth(), Math.max(0, room));
  }

  /** Whether it is a key of a pad with a single letter or figure on it. */
  boolean isLetter() {
    return getStyleClass().contains("pad") && words.words().length() == 1;
  }

  @Override
  public void cap(double sizePx) {
    words.cap(sizePx);
  }

  @Override
  protected void layoutChildren() {
    double width = getWidth() - 2 * aside - boxWidth();
    if (hasDrawing) {
      chosen.inCorner(this, padding);
    } else {
      chosen.atRight(this, aside);
    }
    double top = padding;
    if (hasDrawing && words.words().isEmpty()) {
      drawing.relocate(
          (getWidth() - drawing.getLayoutBounds().getWidth()) / 2,
          (getHeight() - drawing.getLayoutBounds().getHeight()) / 2);
      return;
    }
    if (hasDrawing) {
      double w = drawing.getLayoutBounds().getWidth();
      drawing.relocate((getWidth() - w) / 2, top);
      top += drawingHeight();
    }
    Panes.place(words, aside, top, width, Math.max(0, getHeight() - top - padding));
  }
}
