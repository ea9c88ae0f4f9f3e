package wherefrom.ui.controls;

import java.util.List;
import javafx.scene.layout.Region;

/**
 * The work, and a pane on its right, or above it on upright glass, where there is room for both;
 * else the work alone.
 */
public final class Beside extends Region {
  /** The pane's part of upright glass; a sentence in it may need more. */
  private static final double STRIP = 0.2;

  private final Region work;
  private final Region pane;
  private final double paneWidth;
  private final double gap;
  private final boolean roomy;

  /**
   * @param paneWidth in pixels
   * @param roomy false where the words are so large that the work needs all the room
   */
  public Beside(Region work, Region pane, double paneWidth, double gap, boolean roomy) {
    this.work = work;
    this.pane = pane;
    this.paneWidth = paneWidth;
    this.gap = gap;
    this.roomy = roomy;
    getChildren().setAll(List.of(work, pane));
    Panes.grow(this);
  }

  private boolean fits(double width, double height) {
    double left = width - paneWidth - gap;
    return roomy
        && work.minWidth(-1) <= left
        && work.minHeight(left) <= height
        && pane.minHeight(paneWidth) <= height;
  }

  @Override
  protected double computeMinWidth(double height) {
    return work.minWidth(height);
  }

  @Override
  protected double computeMinHeight(double width) {
    return work.minHeight(width);
  }

  @Override
  protected double computePrefHeight(double width) {
    return work.prefHeight(width);
  }

  private void over(double width, double height) {
    double high = Math.ceil(Math.max(STRIP * height, pane.minHeight(width)));
    double left = height - high - gap;
    boolean both = roomy && work.minHeight(width) <= left;
    pane.setVisible(both);
    Panes.place(pane, 0, 0, width, high);
    Panes.place(work, 0, both ? high + gap : 0, width, both ? left : height);
  }

  @Override
  protected void layoutChildren() {
    double width = getWidth();
    double height = getHeight();
    if (height > width) {
      over(width, height);
      return;
    }
    boolean both = fits(width, height);
    pane.setVisible(both);
    double wide = both ? Math.floor(width - paneWidth - gap) : width;
    Panes.place(work, 0, 0, wide, height);
    Panes.place(pane, wide + gap, 0, paneWidth, height);
  }
}
