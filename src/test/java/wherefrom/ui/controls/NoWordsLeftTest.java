package wherefrom.ui.controls;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.scene.Node;
import org.junit.jupiter.api.Test;
import wherefrom.ui.Toolkit;

/** Letters that were shown go with their words, even where they are left no room to go in. */
class NoWordsLeftTest {
  private static Node ink(FitText text) {
    return text.getChildrenUnmodifiable().get(0);
  }

  @Test
  void wordsThatAreGoneLeaveNoLetters() {
    Toolkit.on(
        () -> {
          FitText text = new FitText(() -> 20, () -> 10, false, "A stop waits.");
          text.resize(300, 40);
          text.layout();
          assertThat(ink(text).isVisible()).isTrue();
          text.setWords("");
          text.resize(300, 0);
          text.layout();
          assertThat(ink(text).isVisible()).isFalse();
          text.setWords("Back again.");
          text.resize(300, 40);
          text.layout();
          assertThat(ink(text).isVisible()).isTrue();
          return 0;
        });
  }
}
