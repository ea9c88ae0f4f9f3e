package wherefrom.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import wherefrom.ui.app.Help;
import wherefrom.ui.app.Screen;
import wherefrom.ui.sample.SampleWindow;

/** A key that the help of a screen names is on that screen, in one of its states at least. */
class HelpKeysTest {

  @Test
  void everyKeyThatHelpNamesIsOnItsScreen() {
    Set<String> named = new TreeSet<>();
    Set<String> found = new HashSet<>();
    for (Shot shot : Gallery.all()) {
      Toolkit.on(
          () -> {
            SampleWindow window = new SampleWindow(96, 100);
            shot.arrange().accept(window);
            window.layOut();
            look(window, named, found);
            return window;
          });
    }
    named.removeAll(found);
    assertThat(named).as("named by the help, and on no picture of its screen").isEmpty();
  }

  private static void look(SampleWindow window, Set<String> named, Set<String> found) {
    Screen up = window.shell.current();
    for (String sentence : up.help().sentences()) {
      for (String key : Help.keysOf(sentence)) {
        String what = Help.key(up.getClass()) + ": " + key;
        named.add(what);
        if (window.targets().stream().anyMatch(node -> window.words(node).contains(key))) {
          found.add(what);
        }
      }
    }
  }
}
