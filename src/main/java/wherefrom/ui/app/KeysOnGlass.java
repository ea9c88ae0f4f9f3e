package wherefrom.ui.app;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.Parent;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Touch;

/** The words of the keys that are on the glass now. */
final class KeysOnGlass {
  private KeysOnGlass() {}

  /** Those in the window of a screen; none where it is in none. */
  static List<String> around(Screen screen) {
    return screen.view().getScene() == null
        ? List.of()
        : shown(screen.view().getScene().getRoot())
            .filter(Touch::isTarget)
            .map(KeysOnGlass::words)
            .toList();
  }

  private static Stream<Node> shown(Node node) {
    if (!node.isVisible()) {
      return Stream.empty();
    }
    return node instanceof Parent parent
        ? Stream.concat(
            Stream.of(node), parent.getChildrenUnmodifiable().stream().flatMap(KeysOnGlass::shown))
        : Stream.of(node);
  }

  private static String words(Node key) {
    return shown(key)
        .filter(FitText.class::isInstance)
        .map(text -> ((FitText) text).words().replace('\n', ' ').replace('\u00a0', ' '))
        .collect(Collectors.joining(" "));
  }
}
