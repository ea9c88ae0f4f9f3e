package wherefrom.ui.controls;

import javafx.css.PseudoClass;
import javafx.geometry.Orientation;
import javafx.scene.AccessibleRole;
import javafx.scene.layout.Region;

/** A key with a bold word and a line below it on how it stands. */
public final class LinedKey extends Region {
  private static final PseudoClass SELECTED = PseudoClass.getPseudoClass("selected");
  private static final String ON_PAPER = "kind-key";
  private static final double PADDING_MM = 1.2;

  private final FitText word;
  private final FitText line;
  private final double least;
  private final double padding;
  private boolean told;
  private boolean present;

  private LinedKey(Touch touch, String word, String line) {
    this.word = touch.fit(word, Scale.SMALL_MM, Scale.SMALL_MM, true).centred();
    this.line = touch.small(line).centred();
    this.least = touch.scale().px(Scale.KEY_MM);
    this.padding = touch.scale().px(PADDING_MM);
    this.line.getStyleClass().add("second");
    getStyleClass().addAll("key", "plain");
    getChildren().setAll(this.word, this.line);
    setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
    setAccessibleRole(AccessibleRole.BUTTON);
    say(line);
  }

  /** A key; where the person's text is large the line is spoken and not shown. */
  public static LinedKey key(Touch touch, String word, String line, Runnable act) {
    return touch.target(new LinedKey(touch, word, line), act);
  }

  /** Says how it stands now. */
  public void say(String words) {
    line.setWords(words);
    speak();
    tell(told);
  }

  private void speak() {
    String further = line.words().isEmpty() ? "" : ", " + line.words();
    setAccessibleText(word.words() + further + (present ? ", now" : ""));
  }

  /** Shows the line below the word, or the word alone. */
  public void tell(boolean shown) {
    told = shown;
    line.setVisible(shown && !line.words().isEmpty());
    requestLayout();
  }

  /** Shows it as the present one: on paper, in a heavy frame. */
  public LinedKey select(boolean on) {
    pseudoClassStateChanged(SELECTED, on);
    getStyleClass().remove(ON_PAPER);
    if (on) {
      getStyleClass().add(ON_PAPER);
    }
    present = on;
    speak();
    return this;
  }

  private boolean isTold() {
    return line.isVisible();
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computeMinWidth(double height) {
    double widest = Math.max(word.leastLineWidth(), isTold() ? line.leastLineWidth() : 0);
    return Math.max(least, widest + 2 * padding);
  }

  @Override
  protected double computePrefWidth(double height) {
    return computeMinWidth(height);
  }

  @Override
  protected double computeMinHeight(double width) {
    double inner = width < 0 ? -1 : width - 2 * padding;
    double lines = word.minHeight(inner) + (isTold() ? line.minHeight(inner) : 0);
    return Math.max(least, lines + 2 * padding);
  }

  @Override
  protected double computePrefHeight(double width) {
    return computeMinHeight(width);
  }

  @Override
  protected void layoutChildren() {
    double inner = getWidth() - 2 * padding;
    double room = getHeight() - 2 * padding;
    double low = isTold() ? line.minHeight(inner) : 0;
    double high = Math.min(room - low, word.minHeight(inner));
    double top = padding + (room - high - low) / 2;
    Panes.place(word, padding, top, inner, high);
    Panes.place(line, padding, top + high, inner, low);
  }
}
