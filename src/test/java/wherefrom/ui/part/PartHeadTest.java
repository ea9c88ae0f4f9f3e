package wherefrom.ui.part;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import wherefrom.parts.Place;
import wherefrom.ui.Toolkit;
import wherefrom.ui.drawn.KindShape;
import wherefrom.ui.drawn.PartShape;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

class PartHeadTest {
  private static Class<?> shape(String home) {
    SampleWindow window = new SampleWindow(96, 100);
    PartHead head =
        new PartHead(
            window.shell.context().touch(),
            SampleJob.apart().job.state().layout(),
            Place.find(home).orElseThrow(),
            "Nothing was found against it.",
            "It is fitted.",
            100);
    return head.getChildrenUnmodifiable().get(0).getClass();
  }

  /** On its page a lower shell lies as on every other drawing: open upward, not as an arch. */
  @Test
  void aLowerShellLiesOpenUpward() {
    Toolkit.on(
        () -> {
          assertThat(shape("main-shell@M3L")).isEqualTo(PartShape.class);
          assertThat(shape("main-shell@M3U")).isEqualTo(KindShape.class);
          assertThat(shape("lifter@3EX")).isEqualTo(KindShape.class);
          return 0;
        });
  }
}
