package wherefrom.ui.controls;

import javafx.scene.Node;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;

/**
 * The ticked box on a key that is chosen, as on a form: its shape says it, the dark plate only
 * repeats it. A screen reader says it after the key's words.
 */
final class ChosenMark {
  private static final String SPOKEN = ", chosen";
  private static final double SIDE_MM = 4.6;
  private static final double GAP_MM = 1.6;

  private final Pane box;
  private final double side;
  private final double gap;

  ChosenMark(Scale scale) {
    double factor = Math.min(scale.textFactor(), 1.5);
    side = Math.ceil(factor * scale.px(SIDE_MM));
    gap = scale.px(GAP_MM);
    box = Icon.CHOSEN.draw(side);
    box.setManaged(false);
    box.setVisible(false);
  }

  Node node() {
    return box;
  }

  /** Shows it on a key, or not, and lets the key say so. */
  void show(Region key, boolean on) {
    box.setVisible(on);
    String spoken = key.getAccessibleText();
    String words = spoken == null ? "" : spoken;
    String bare =
        words.endsWith(SPOKEN) ? words.substring(0, words.length() - SPOKEN.length()) : words;
    key.setAccessibleText(on ? bare + SPOKEN : bare);
    key.requestLayout();
  }

  boolean isShown() {
    return box.isVisible();
  }

  /** The width that it takes from the words beside it; none where it is not shown. */
  double room() {
    return isShown() ? side + gap : 0;
  }

  /** Puts it at the right end of a key. */
  void atRight(Region key, double aside) {
    box.relocate(key.getWidth() - aside - side, (key.getHeight() - side) / 2);
  }

  /** Puts it into the upper right corner of a key, beside a drawing. */
  void inCorner(Region key, double aside) {
    box.relocate(key.getWidth() - aside - side, aside);
  }
}
