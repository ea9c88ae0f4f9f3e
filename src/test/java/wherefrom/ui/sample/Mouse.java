package wherefrom.ui.sample;

import javafx.event.EventType;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;

/** What a mouse or a finger does to a node: one click of the primary button. */
public final class Mouse {
  private Mouse() {}

  /** An event at a point of the node, in pixels from its left upper corner. */
  public static MouseEvent event(EventType<MouseEvent> type, double x, double y) {
    return new MouseEvent(
        type,
        x,
        y,
        x,
        y,
        MouseButton.PRIMARY,
        1,
        false,
        false,
        false,
        false,
        true,
        false,
        false,
        false,
        false,
        true,
        null);
  }
}
