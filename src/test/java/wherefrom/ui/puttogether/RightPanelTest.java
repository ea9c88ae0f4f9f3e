package wherefrom.ui.puttogether;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.text.Text;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wherefrom.job.settings.Appearance;
import wherefrom.ui.Toolkit;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.sample.Glass;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

class RightPanelTest {
  private static void collect(Node node, List<Text> all) {
    if (node instanceof Text text && node.isVisible() && !text.getText().isBlank()) {
      all.add(text);
    } else if (node instanceof Parent parent && node.isVisible()) {
      parent.getChildrenUnmodifiable().forEach(child -> collect(child, all));
    }
  }

  private static Text find(List<Text> all, String words) {
    return all.stream().filter(text -> text.getText().startsWith(words)).findFirst().orElseThrow();
  }

  private static double baseline(Text text) {
    double top = text.getLayoutBounds().getMinY();
    return text.localToScene(0, top + text.getBaselineOffset()).getY();
  }

  /** The part and what to watch are one line, and stand on one. */
  @Test
  void whatToWatchStandsOnTheLineOfThePart() {
    SampleJob sample = SampleJob.apart();
    Toolkit.on(
        () -> {
          SampleWindow window = new SampleWindow(96, 100);
          window.shell.context().open(sample.job);
          window.shell.context().navigator().show(ScreenId.PUT_TOGETHER);
          window.scan(sample.tag("main-shell@M3L"));
          window.scan(sample.card("M3L"));
          window.layOut();
          List<Text> all = new ArrayList<>();
          collect(window.shell.lookup(".right-panel"), all);
          double part = baseline(find(all, "shell"));
          double watch = baseline(find(all, "Tang"));
          assertThat(find(all, "Tang").getText()).isEqualTo("Tang into its notch.");
          assertThat(part).isCloseTo(watch, within(4.0));
          return 0;
        });
  }

  /** Which end goes up is what else can go wrong: it stays on the smallest glass and the narrow. */
  @ParameterizedTest
  @CsvSource({
    "pushrod@3EX, small, 200, agged end",
    "pushrod@3EX, upright, 150, agged end",
    "pushrod@3EX, upright, 200, agged end",
    "rod-shell@R4L, small, 200, Tang",
    "rod-shell@R4L, upright, 150, Tang"
  })
  void theWayRoundIsSaidWithLargeLetters(String part, String glass, int text, String way) {
    SampleJob sample = SampleJob.apart();
    Toolkit.on(
        () -> {
          Glass shown =
              Glass.all().stream().filter(it -> it.name().equals(glass)).findAny().orElseThrow();
          SampleWindow window = new SampleWindow(shown, text, Appearance.LIGHT);
          window.shell.context().open(sample.job);
          window.shell.context().navigator().show(ScreenId.PUT_TOGETHER);
          window.scan(sample.tag(part));
          window.scan(sample.card(part.substring(part.indexOf('@') + 1)));
          window.layOut();
          List<Text> all = new ArrayList<>();
          collect(window.shell.lookup(".right-panel"), all);
          assertThat(all).anyMatch(said -> said.getText().contains(way));
          return 0;
        });
  }
}
