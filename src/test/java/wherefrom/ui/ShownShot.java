package wherefrom.ui;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.Parent;
import wherefrom.job.settings.Appearance;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.sample.Glass;
import wherefrom.ui.sample.SampleWindow;

/** A shot of the gallery in a window of its own, on a piece of glass with letters of a size. */
final class ShownShot {
  private ShownShot() {}

  /** A window that shows it in light colors; asked for on the toolkit's thread. */
  static SampleWindow window(String glass, int percent, String shot) {
    return window(Glass.named(glass), percent, shot);
  }

  /** A window that shows it in light colors; asked for on the toolkit's thread. */
  static SampleWindow window(Glass glass, int percent, String shot) {
    return window(glass, percent, Appearance.LIGHT, shot);
  }

  private static SampleWindow window(Glass glass, int percent, Appearance look, String shot) {
    SampleWindow window = new SampleWindow(glass, percent, look);
    Gallery.shot(shot).arrange().accept(window);
    window.layOut();
    return window;
  }

  /** Looks at it once all is done that was put off, and takes the window down. */
  static <T> T find(Glass glass, int percent, String shot, Function<SampleWindow, T> looked) {
    SampleWindow window = Toolkit.on(() -> window(glass, percent, shot));
    return find(window, looked);
  }

  /** Looks at it once all is done that was put off, and takes the window down. */
  static void look(
      Glass glass, int percent, Appearance look, String shot, Consumer<SampleWindow> looked) {
    SampleWindow window = Toolkit.on(() -> window(glass, percent, look, shot));
    find(
        window,
        open -> {
          looked.accept(open);
          return 0;
        });
  }

  private static <T> T find(SampleWindow window, Function<SampleWindow, T> looked) {
    return Toolkit.on(
        () -> {
          window.layOut();
          T seen = looked.apply(window);
          window.takeDown();
          return seen;
        });
  }

  /** A node and all in it that is seen: what has no room is hidden. */
  static Stream<Node> seen(Node node) {
    if (!node.isVisible()) {
      return Stream.empty();
    }
    Stream<Node> below =
        node instanceof Parent parent
            ? parent.getChildrenUnmodifiable().stream().flatMap(ShownShot::seen)
            : Stream.empty();
    return Stream.concat(Stream.of(node), below);
  }

  /** The tags that can be pressed. */
  static List<TagKey> tags(SampleWindow window) {
    return window.targets().stream()
        .filter(TagKey.class::isInstance)
        .map(TagKey.class::cast)
        .toList();
  }
}
