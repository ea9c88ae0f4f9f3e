package wherefrom.ui.controls;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.stream.Stream;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import org.junit.jupiter.api.Test;
import wherefrom.ui.Toolkit;

/** The figures typed so far have room beside the keys that turn their sign and unit. */
class KeypadTest {
  private final Touch touch = new Touch(new Scale(5.9, 1.5), () -> 0);

  private Keypad pad() {
    return Keypad.decimal(touch, 12, Locale.US);
  }

  private Keypad beside(Keypad pad) {
    pad.putBeside(touch.padKey(Keypad.SIGN, () -> {}), touch.padKey("in", () -> {}));
    return pad;
  }

  private static Keypad laid(Keypad pad, double width, double height) {
    new Scene(pad);
    pad.applyCss();
    pad.resize(width, height);
    pad.layout();
    return pad;
  }

  private static Stream<Node> all(Node node) {
    Stream<Node> below =
        node instanceof Parent parent
            ? parent.getChildrenUnmodifiable().stream().flatMap(KeypadTest::all)
            : Stream.empty();
    return Stream.concat(Stream.of(node), below);
  }

  /** The field of a pad of this size, where it stands. */
  private Bounds field(double width, double height) {
    Node field =
        all(laid(beside(pad()), width, height))
            .filter(node -> node.getStyleClass().contains("field"))
            .findFirst()
            .orElseThrow();
    return field.localToScene(field.getLayoutBounds());
  }

  @Test
  void theFieldHasTheWholeWidthWhereTheKeysWouldLeaveItNoFigure() {
    Toolkit.on(
        () -> {
          assertThat(field(480, 1000).getWidth()).isEqualTo(480);
          assertThat(field(1000, 1000).getWidth()).isLessThan(1000);
          return 0;
        });
  }

  @Test
  void whatWasShownElsewhereHasItsRoomAgain() {
    Toolkit.on(
        () -> {
          Keypad once = pad();
          once.showElsewhere(() -> {});
          assertThat(once.minHeight(480)).isLessThan(beside(pad()).minHeight(480));
          assertThat(beside(once).minHeight(480)).isEqualTo(beside(pad()).minHeight(480));
          return 0;
        });
  }
}
