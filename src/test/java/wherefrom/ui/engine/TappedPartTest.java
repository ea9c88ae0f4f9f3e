package wherefrom.ui.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.event.Event;
import javafx.event.EventType;
import javafx.geometry.Bounds;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.input.MouseEvent;
import org.junit.jupiter.api.Test;
import wherefrom.drawing.View;
import wherefrom.job.settings.Appearance;
import wherefrom.parts.PartKind;
import wherefrom.ui.Toolkit;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.sample.Glass;
import wherefrom.ui.sample.Mouse;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/** What a finger meant on a small drawing is found again on the page that opens. */
class TappedPartTest {
  private final SampleJob sample = SampleJob.apart();
  private SampleWindow window;

  private void bench(String kind) {
    window = new SampleWindow(Glass.LAPTOP, 100, Appearance.LIGHT);
    window.shell.context().open(sample.job);
    window.shell.context().navigator().show(ScreenId.BENCH_MAP);
    window.layOut();
    window.press(kind);
  }

  /** A finger on a zone, so far across it. */
  private void tap(String zone, double share) {
    tap(zone, share, 0.5);
  }

  private void tap(String zone, double share, double down) {
    window.moment();
    Node node =
        window.targets().stream()
            .filter(it -> Optional.ofNullable(it.getAccessibleText()).orElse("").startsWith(zone))
            .findFirst()
            .orElseThrow();
    Bounds box = node.getLayoutBounds();
    Point2D at = node.localToScene(share * box.getWidth(), down * box.getHeight());
    for (EventType<MouseEvent> type :
        List.of(MouseEvent.MOUSE_PRESSED, MouseEvent.MOUSE_RELEASED)) {
      Event.fireEvent(node, Mouse.event(type, at.getX(), at.getY()));
    }
    window.layOut();
  }

  private static Stream<Node> all(Node node) {
    Stream<Node> below =
        node instanceof Parent parent
            ? parent.getChildrenUnmodifiable().stream().flatMap(TappedPartTest::all)
            : Stream.empty();
    return Stream.concat(Stream.of(node), below);
  }

  private List<Bounds> rings() {
    return all(window.shell.current().view())
        .filter(node -> node.getStyleClass().contains("drawn-ring"))
        .map(node -> node.localToScene(node.getBoundsInLocal()))
        .toList();
  }

  /** Whether the one ring stands in the left half of the page. */
  private boolean isRingedLeft() {
    assertThat(rings()).hasSize(1);
    Bounds page =
        window.shell.current().view().localToScene(window.shell.current().view().getLayoutBounds());
    return rings().get(0).getCenterX() < page.getCenterX();
  }

  @Test
  void theLifterThatWasTappedIsRinged() {
    for (double share : new double[] {0.2, 0.8}) {
      boolean left =
          Toolkit.on(
              () -> {
                bench("Lifters");
                tap("cylinder 3", share);
                assertThat(window.shell.current()).isInstanceOf(CylinderPageScreen.class);
                return isRingedLeft();
              });
      assertThat(left).as("at " + share).isEqualTo(share < 0.5);
    }
  }

  @Test
  void midwayBetweenBothNoneIsRingedAndNoneWithoutAFinger() {
    Toolkit.on(
        () -> {
          bench("Lifters");
          tap("cylinder 3", 0.5);
          assertThat(window.shell.current()).isInstanceOf(CylinderPageScreen.class);
          assertThat(rings()).isEmpty();
          window.pressRail("Back");
          window.press("cylinder 3");
          assertThat(window.shell.current()).isInstanceOf(CylinderPageScreen.class);
          assertThat(rings()).isEmpty();
          return 0;
        });
  }

  @Test
  void inTheListOfLargeLettersItsRowIsRinged() {
    Toolkit.on(
        () -> {
          window = new SampleWindow(Glass.UPRIGHT, 200, Appearance.LIGHT);
          window.shell.context().open(sample.job);
          PartIndex lifters = new PartIndex(window.shell.context(), Optional.of(PartKind.LIFTER));
          new EnginePages(window.shell.context(), lifters).open(View.ABOVE);
          window.layOut();
          tap("cylinder 4", 0.8);
          assertThat(rings()).hasSize(1);
          assertThat(
                  window.targets().stream()
                      .map(Node::getAccessibleText)
                      .filter(words -> words != null && words.endsWith(", tapped")))
              .hasSize(1);
          return 0;
        });
  }

  @Test
  void fromBelowTheHalfThatWasTappedIsRinged() {
    Toolkit.on(
        () -> {
          window = new SampleWindow(Glass.LAPTOP, 100, Appearance.LIGHT);
          window.shell.context().open(sample.job);
          PartIndex.pages(window.shell.context()).open(View.BELOW);
          window.layOut();
          tap("cylinder 1", 0.5, 0.1);
          assertThat(window.shell.current()).isInstanceOf(CylinderPageScreen.class);
          assertThat(rings()).hasSize(1);
          return 0;
        });
  }
}
