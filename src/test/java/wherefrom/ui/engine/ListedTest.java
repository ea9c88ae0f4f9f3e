package wherefrom.ui.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wherefrom.parts.Place;
import wherefrom.ui.Toolkit;
import wherefrom.ui.app.Scanned;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/** Where a list asks which part is meant, the part in the hand is an answer too. */
class ListedTest {

  @Test
  void aTagThatIsScannedAtTheListIsTakenAsAtTheDrawing() {
    Toolkit.on(
        () -> {
          SampleWindow window = new SampleWindow(96, 100);
          SampleJob sample = SampleJob.whole();
          window.shell.context().open(sample.job);
          List<Scanned> taken = new ArrayList<>();
          WorkIndex index =
              new WorkIndex(
                  window.shell.context(),
                  () -> "Which is out?",
                  Optional::empty,
                  place -> {},
                  taken::add);
          new EnginePages(window.shell.context(), index)
              .choose(List.of(place("rocker@3EX"), place("pushrod@3EX")));
          window.layOut();
          window.scan(sample.tag("rocker@3EX"));
          assertThat(taken).hasSize(1);
          assertThat(window.shell.message()).isEmpty();
          return window;
        });
  }

  private static Place place(String key) {
    return Place.find(key).orElseThrow();
  }
}
