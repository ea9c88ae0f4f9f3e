package wherefrom.ui.app;

import javafx.geometry.Orientation;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.ui.controls.Panes;

/**
 * Answers that must be seen together: with what is said of them where all have room so, else by
 * their names alone. The bad ones never hide behind a page.
 */
final class AllAtOnce extends Region {
  private final VBox told;
  private final VBox names;

  AllAtOnce(VBox told, VBox names) {
    this.told = told;
    this.names = names;
    getChildren().setAll(told, names);
    Panes.grow(this);
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computeMinWidth(double height) {
    return names.minWidth(-1);
  }

  @Override
  protected double computeMinHeight(double width) {
    return names.minHeight(width);
  }

  @Override
  protected double computePrefHeight(double width) {
    return told.prefHeight(width);
  }

  @Override
  protected void layoutChildren() {
    boolean room = told.minWidth(-1) <= getWidth() && told.minHeight(getWidth()) <= getHeight();
    told.setVisible(room);
    names.setVisible(!room);
    VBox shown = room ? told : names;
    double high = Math.min(getHeight(), shown.prefHeight(getWidth()));
    Panes.place(shown, 0, 0, getWidth(), high);
  }
}
