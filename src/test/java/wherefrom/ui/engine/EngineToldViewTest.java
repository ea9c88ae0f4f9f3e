package wherefrom.ui.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import javafx.geometry.Rectangle2D;
import javafx.scene.Node;
import org.junit.jupiter.api.Test;
import wherefrom.drawing.View;
import wherefrom.job.entry.PartOut;
import wherefrom.job.handling.Handling;
import wherefrom.job.settings.Appearance;
import wherefrom.parts.PartKind;
import wherefrom.ui.Toolkit;
import wherefrom.ui.drawn.EngineView;
import wherefrom.ui.drawn.PlaceCounts;
import wherefrom.ui.sample.Glass;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/** Where the marks of an engine are told. */
class EngineToldViewTest {
  private SampleWindow window;

  private void open(String layout, Glass glass, int percent) {
    SampleJob sample = SampleJob.whole(layout, PartKind.alwaysOn());
    for (String place : List.of("rocker@1EX", "rocker@1IN", "rocker@2EX")) {
      sample.job.record(new PartOut(sample.part(place).item()));
    }
    new Handling(sample.job).offForWashing(sample.part("rocker@2EX").item(), 4);
    window = new SampleWindow(glass, percent, Appearance.LIGHT);
    window.shell.context().open(sample.job);
    PartIndex parts = new PartIndex(window.shell.context(), Optional.empty());
    new EnginePages(window.shell.context(), parts).open(View.ABOVE);
    window.layOut();
  }

  private <N> N one(Class<N> kind) {
    return window.scene.getRoot().lookupAll("*").stream()
        .filter(kind::isInstance)
        .filter(Node::isVisible)
        .map(kind::cast)
        .findFirst()
        .orElseThrow();
  }

  /** An engine that is higher than wide leaves its sides empty: it is no smaller for the words. */
  @Test
  void besideAnEngineThatNeedsTheHeight() {
    Toolkit.on(
        () -> {
          open("opposed-4", Glass.TABLET, 100);
          EngineView engine = one(EngineView.class);
          PlaceCounts counts = one(PlaceCounts.class);
          assertThat(counts.getLayoutX()).isGreaterThan(frame(engine).getMaxX());
          assertThat(frame(engine).getHeight()).isGreaterThan(0.75 * engine.getHeight());
          assertThat(counts.count()).as("in the engine, out, washing").isEqualTo(3);
          return 0;
        });
  }

  private static Rectangle2D frame(EngineView engine) {
    return engine.frame().orElseThrow();
  }

  /**
   * What is in the engine bears no mark there: where there is little room it goes without saying.
   */
  @Test
  void whatBearsNoMarkIsLeftOutFirst() {
    Toolkit.on(
        () -> {
          open("v8-odd-even", Glass.UPRIGHT, 200);
          EngineView engine = one(EngineView.class);
          PlaceCounts counts = one(PlaceCounts.class);
          assertThat(counts.getLayoutY())
              .isGreaterThan(engine.getLayoutY() + frame(engine).getMaxY());
          assertThat(counts.count()).as("out, washing").isEqualTo(2);
          return 0;
        });
  }
}
