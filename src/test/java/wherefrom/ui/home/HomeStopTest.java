package wherefrom.ui.home;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.Parent;
import org.junit.jupiter.api.Test;
import wherefrom.job.puttogether.Fitting;
import wherefrom.job.settings.Appearance;
import wherefrom.ui.Toolkit;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.drawn.EngineView;
import wherefrom.ui.sample.Glass;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/** Where a stop waits the engine is drawn with it, on upright glass with large letters too. */
class HomeStopTest {
  private static Stream<Node> all(Node node) {
    Stream<Node> below =
        node instanceof Parent parent
            ? parent.getChildrenUnmodifiable().stream().flatMap(HomeStopTest::all)
            : Stream.empty();
    return Stream.concat(Stream.of(node), below);
  }

  @Test
  void theStopIsDrawnWhereItWaits() {
    for (int percent : new int[] {100, 150, 200}) {
      SampleJob sample = SampleJob.apart();
      new Fitting(sample.job).fit(sample.part("pushrod@3EX"), sample.spot("5EX"), false);
      Toolkit.on(
          () -> {
            SampleWindow window = new SampleWindow(Glass.UPRIGHT, percent, Appearance.LIGHT);
            window.shell.context().open(sample.job);
            window.shell.context().navigator().show(ScreenId.JOB_HOME);
            window.layOut();
            assertThat(all(window.shell.current().view()).filter(EngineView.class::isInstance))
                .as("at " + percent)
                .hasSize(1)
                .allMatch(node -> node.isVisible() && ((EngineView) node).isDrawn());
            assertThat(
                    all(window.shell.current().view())
                        .filter(node -> node.getStyleClass().contains("drawn-wrong-ring")))
                .hasSize(1);
            return 0;
          });
    }
  }
}
