package wherefrom.ui.controls;

import javafx.geometry.Orientation;
import javafx.scene.layout.Region;

/** A list, and under it a picture of what it tells of, where the whole list leaves room for it. */
public final class Under extends Region {
  private final Region list;
  private final Region picture;
  private final double gap;

  /**
   * @param picture as high as it likes; as wide too, or all the width where it does not say
   * @param gap above the picture and below it, in pixels
   */
  public Under(Region list, Region picture, double gap) {
    this.list = list;
    this.picture = picture;
    this.gap = gap;
    getChildren().setAll(list, picture);
    Panes.grow(this);
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computeMinWidth(double height) {
    return list.minWidth(height);
  }

  @Override
  protected double computeMinHeight(double width) {
    return list.minHeight(width);
  }

  @Override
  protected double computePrefHeight(double width) {
    return list.prefHeight(width);
  }

  @Override
  protected void layoutChildren() {
    double width = getWidth();
    double above = Math.ceil(list.prefHeight(width));
    double high = Math.ceil(picture.prefHeight(width));
    double left = getHeight() - above - high;
    boolean both = left >= 2 * gap;
    picture.setVisible(both);
    Panes.place(list, 0, 0, width, both ? above : getHeight());
    if (both) {
      double own = picture.prefWidth(-1);
      double wide = own > 0 ? Math.min(width, Math.ceil(own)) : width;
      Panes.place(
          picture, Math.floor((width - wide) / 2), above + Math.floor(left / 2), wide, high);
    }
  }
}
