package wherefrom.ui.controls;

import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.geometry.Orientation;
import javafx.scene.layout.Region;
import wherefrom.engine.Spot;
import wherefrom.job.PlaceState;

/** A spot on the drawn engine: its figures, and its state as a figure with a letter. */
final class SpotKey extends Region {
  private static final double LARGEST_MM = 8;
  private static final PseudoClass LIT = PseudoClass.getPseudoClass("lit");
  private static final PseudoClass FLAGGED = PseudoClass.getPseudoClass("flagged");
  private static final PseudoClass AGAINST = PseudoClass.getPseudoClass("against");

  private final FitText figures;
  private final Optional<StateMark> mark;
  private final double least;
  private final double padding;

  SpotKey(Touch touch, Spot spot, Optional<PlaceState> state, double leastMm) {
    Scale scale = touch.scale();
    least = scale.px(leastMm);
    padding = scale.px(1.8);
    figures = touch.fit(spot.figures(), LARGEST_MM, Scale.SMALL_MM, true).centred();
    mark = state.map(known -> new StateMark(scale, known));
    getStyleClass().addAll("spot", state.isPresent() ? "spot-known" : "spot-other");
    pseudoClassStateChanged(AGAINST, state.filter(PlaceState::isAgainst).isPresent());
    getChildren().add(figures);
    mark.ifPresent(getChildren()::add);
  }

  void light(boolean lit) {
    pseudoClassStateChanged(LIT, lit);
  }

  void flag(boolean flagged) {
    pseudoClassStateChanged(FLAGGED, flagged);
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  private double markSide() {
    return mark.map(shown -> shown.prefWidth(-1)).orElse(0.0);
  }

  private boolean beside(double width) {
    return width - 3 * padding >= markSide() + figures.leastLineWidth();
  }

  @Override
  protected double computeMinWidth(double height) {
    return Math.max(least, Math.max(markSide(), figures.minWidth(-1)) + 2 * padding);
  }

  @Override
  protected double computeMinHeight(double width) {
    double inner = width - 2 * padding;
    double content =
        beside(width)
            ? Math.max(markSide(), figures.minHeight(-1))
            : markSide() + figures.minHeight(inner);
    return Math.max(least, content + 2 * padding);
  }

  @Override
  protected double computePrefHeight(double width) {
    return computeMinHeight(width);
  }

  @Override
  protected void layoutChildren() {
    double side = markSide();
    double inner = getWidth() - 2 * padding;
    double high = getHeight() - 2 * padding;
    if (beside(getWidth())) {
      mark.ifPresent(
          shown ->
              shown.resizeRelocate(
                  getWidth() - padding - side, (getHeight() - side) / 2, side, side));
      figures.resizeRelocate(padding, padding, inner - side - (side > 0 ? padding : 0), high);
    } else {
      figures.resizeRelocate(padding, padding, inner, high - side);
      mark.ifPresent(
          shown ->
              shown.resizeRelocate(
                  (getWidth() - side) / 2, getHeight() - padding - side, side, side));
    }
  }
}
