package wherefrom.ui.controls;

import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;

/**
 * The ticked box on a key that is chosen, as on a form: its shape says it, the dark plate only
 * repeats it. A screen reader says it after the key's words. Few keys are ever chosen: the box is
 * drawn when it is first shown.
 */
final class ChosenMark {
  private static final String SPOKEN = ", chosen";
  private static final double SIDE_MM = 4.6;
  private static final double GAP_MM = 1.6;

  private final List<Node> children;
  private final double side;
  private final double gap;
  private Optional<Pane> box = Optional.empty();

  /**
   * @param children of the key, which get the box
   */
  ChosenMark(Scale scale, List<Node> children) {
    this.children = children;
    double factor = Math.min(scale.textFactor(), 1.5);
    side = Math.ceil(factor * scale.px(SIDE_MM));
    gap = scale.px(GAP_MM);
  }

  private Pane drawn() {
    Pane drawn = Icon.CHOSEN.draw(side);
    drawn.setManaged(false);
    return drawn;
  }

  /** To be told when the key has got other children. */
  void stay() {
    box.filter(drawn -> !children.contains(drawn)).ifPresent(children::add);
  }

  /** Shows it on a key, or not, and lets the key say so. */
  void show(Region key, boolean on) {
    if (on && box.isEmpty()) {
      box = Optional.of(drawn());
      stay();
    }
    box.ifPresent(drawn -> drawn.setVisible(on));
    String spoken = key.getAccessibleText();
    String words = spoken == null ? "" : spoken;
    String bare =
        words.endsWith(SPOKEN) ? words.substring(0, words.length() - SPOKEN.length()) : words;
    key.setAccessibleText(on ? bare + SPOKEN : bare);
    key.requestLayout();
  }

  boolean isShown() {
    return box.filter(Node::isVisible).isPresent();
  }

  /** The width that it takes from the words beside it; none where it is not shown. */
  double room() {
    return isShown() ? side + gap : 0;
  }

  /** Puts it at the right end of a key. */
  void atRight(Region key, double aside) {
    box.ifPresent(
        drawn -> drawn.relocate(key.getWidth() - aside - side, (key.getHeight() - side) / 2));
  }

  /** Puts it into the upper right corner of a key, beside a drawing. */
  void inCorner(Region key, double aside) {
    box.ifPresent(drawn -> drawn.relocate(key.getWidth() - aside - side, aside));
  }
}
