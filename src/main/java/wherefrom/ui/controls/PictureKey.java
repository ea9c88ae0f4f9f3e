package wherefrom.ui.controls;

import java.util.Optional;
import java.util.OptionalDouble;
import javafx.css.PseudoClass;
import javafx.geometry.Orientation;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.layout.Region;

/**
 * A key with a bold word and a line on how it stands; beside them a picture, below them a bar as
 * long as it is done. Large letters leave the picture out where it would break the word.
 */
public final class PictureKey extends Region {
  private static final PseudoClass SELECTED = PseudoClass.getPseudoClass("selected");
  private static final String ON_PAPER = "kind-key";
  private static final double PADDING_MM = 1.4;
  private static final double ASIDE_MM = 3;
  private static final double BAR_MM = 2;

  private final FitText word;
  private final ChosenMark chosen;
  private final FitText line;
  private final Optional<Region> picture;
  private final OptionalDouble done;
  private final Region track = new Region();
  private final Region bar = new Region();
  private final double padding;
  private final double aside;
  private final double thick;
  private final double least;

  private PictureKey(
      Touch touch, Optional<Region> picture, String word, String line, OptionalDouble done) {
    this.word = touch.fit(word, Scale.SMALL_MM, Scale.SMALL_MM, true).align(Pos.CENTER_LEFT);
    this.chosen = new ChosenMark(touch.scale(), getChildren());
    this.line = touch.small(line).align(Pos.CENTER_LEFT);
    this.line.getStyleClass().add("second");
    this.picture = touch.isLarge() ? Optional.empty() : picture;
    // Large letters say how many of how many are done; a bar would leave the next key no room.
    this.done = touch.isLarge() ? OptionalDouble.empty() : done;
    this.padding = touch.scale().px(PADDING_MM);
    this.aside = touch.scale().px(ASIDE_MM);
    this.thick = touch.scale().px(BAR_MM);
    this.least = Math.ceil(touch.scale().px(Scale.KEY_MM));
    track.getStyleClass().add("done-bar");
    bar.getStyleClass().add("done-bar-done");
    getStyleClass().addAll("key", "plain");
    getChildren().addAll(this.word, this.line);
    this.picture.ifPresent(getChildren()::add);
    if (this.done.isPresent()) {
      getChildren().addAll(track, bar);
    }
    getChildren().forEach(node -> node.setMouseTransparent(true));
    setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
    setAccessibleRole(AccessibleRole.BUTTON);
    setAccessibleText(line.isEmpty() ? word : word + ", " + line);
  }

  /**
   * A key.
   *
   * @param picture of a fixed size
   * @param done from 0 to 1; empty for no bar
   */
  public static PictureKey of(
      Touch touch,
      Optional<Region> picture,
      String word,
      String line,
      OptionalDouble done,
      Runnable act) {
    return touch.target(new PictureKey(touch, picture, word, line, done), act);
  }

  /** Shows it as chosen: on paper, in a heavy frame, so that its picture stays as it is. */
  public PictureKey select(boolean on) {
    chosen.show(this, on);
    getStyleClass().remove(ON_PAPER);
    if (on) {
      getStyleClass().add(ON_PAPER);
    }
    pseudoClassStateChanged(SELECTED, on);
    return this;
  }

  private double left() {
    return aside + picture.map(drawn -> drawn.prefWidth(-1) + aside).orElse(0.0);
  }

  private double right() {
    return aside + chosen.room();
  }

  private double inner(double width) {
    return Math.max(0, width - left() - right());
  }

  private boolean isTold() {
    return !line.words().isEmpty();
  }

  private double barHigh() {
    return done.isPresent() ? thick + padding : 0;
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computeMinWidth(double height) {
    double widest = Math.max(word.minWidth(-1), isTold() ? line.minWidth(-1) : 0);
    return Math.max(least, widest + left() + right());
  }

  @Override
  protected double computePrefWidth(double height) {
    double widest = Math.max(word.prefWidth(-1), isTold() ? line.prefWidth(-1) : 0);
    return Math.max(least, widest + left() + right());
  }

  @Override
  protected double computeMinHeight(double width) {
    double inner = width <= 0 ? -1 : inner(width);
    double words = word.minHeight(inner) + (isTold() ? line.minHeight(inner) : 0) + barHigh();
    double drawn = picture.map(node -> node.prefHeight(-1)).orElse(0.0);
    return Math.max(least, Math.max(words, drawn) + 2 * padding);
  }

  @Override
  protected double computePrefHeight(double width) {
    return computeMinHeight(width);
  }

  @Override
  protected void layoutChildren() {
    double left = left();
    double inner = inner(getWidth());
    double high = word.minHeight(inner);
    double low = isTold() ? line.minHeight(inner) : 0;
    double top = (getHeight() - high - low - barHigh()) / 2;
    Panes.place(word, left, top, inner, high);
    line.setVisible(isTold());
    chosen.atRight(this, aside);
    Panes.place(line, left, top + high, inner, low);
    double under = top + high + low + padding;
    Panes.place(track, left, under, inner, thick);
    Panes.place(bar, left, under, inner * done.orElse(0), thick);
    picture.ifPresent(
        drawn ->
            Panes.place(
                drawn,
                aside,
                (getHeight() - drawn.prefHeight(-1)) / 2,
                drawn.prefWidth(-1),
                drawn.prefHeight(-1)));
  }
}
