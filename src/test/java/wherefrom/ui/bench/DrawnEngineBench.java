package wherefrom.ui.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.scene.shape.Circle;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import wherefrom.drawing.Asked;
import wherefrom.drawing.BelowPanRail;
import wherefrom.drawing.Glass;
import wherefrom.drawing.PartState;
import wherefrom.engine.Layout;
import wherefrom.engine.ReadyLayouts;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.ui.Toolkit;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.drawn.Drawn;
import wherefrom.ui.drawn.DrawnEngine;

/**
 * A V8 drawn from its layout: shapes worked out, made nodes of, styled and laid out. The baseline
 * is as many plain circles in a pane, made, styled and laid out the same way.
 */
@Tag("bench")
class DrawnEngineBench {
  private static final Layout V8 = ReadyLayouts.find("v8-odd-even").orElseThrow();
  private static final int WARM = 250;
  private static final int ROUNDS = 60;
  private static final double MOST_MS = 8;

  private final Scale scale = new Scale(Glass.UNITS_PER_MM, 1);
  private final Touch touch = new Touch(scale, System::nanoTime);
  private final Asked asked = Asked.of(PartKind.all());
  private final Map<Place, PartState> states = new HashMap<>();

  private PartState state(Place place) {
    return states.getOrDefault(place, place.hashCode() % 3 == 0 ? PartState.OUT : PartState.FITTED);
  }

  private DrawnEngine drawn(boolean above) {
    Drawn maker = new Drawn(V8, asked, scale);
    DrawnEngine drawn =
        DrawnEngine.shown(
            touch, V8, asked, above ? maker.above() : maker.below(BelowPanRail.NAMES));
    drawn.show(this::state, Set.of());
    return drawn;
  }

  private static Pane circles(int count) {
    Pane pane = new Pane();
    for (int at = 0; at < count; at++) {
      Circle circle = new Circle(at % 40 * 30, at / 40 * 30, 12);
      circle.getStyleClass().add("drawn-metal");
      pane.getChildren().add(circle);
    }
    return pane;
  }

  private static int shapes(Node node) {
    if (node instanceof javafx.scene.Parent parent) {
      return parent.getChildrenUnmodifiable().stream().mapToInt(DrawnEngineBench::shapes).sum();
    }
    return 1;
  }

  private static Pane window() {
    Pane root = new Pane();
    root.getStyleClass().add("bench");
    Scene scene = new Scene(root, 1280, 800);
    scene
        .getStylesheets()
        .add(
            Objects.requireNonNull(
                    DrawnEngineBench.class.getResource("/wherefrom/ui/wherefrom.css"))
                .toExternalForm());
    return root;
  }

  private static double lay(Pane root, Supplier<Region> maker) {
    root.getChildren().clear();
    root.applyCss();
    root.layout();
    long start = processor();
    Region region = maker.get();
    region.setPrefSize(1232, 626);
    root.getChildren().add(region);
    root.layout();
    root.applyCss();
    root.layout();
    return (processor() - start) / 1e6;
  }

  /** The processor's time of this thread: the same on a machine with other work. */
  private static long processor() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  private static double median(Pane root, Supplier<Region> maker) {
    List<Double> times = new ArrayList<>();
    for (int round = 0; round < WARM + ROUNDS; round++) {
      double ms = lay(root, maker);
      if (round >= WARM) {
        times.add(ms);
      }
    }
    return times.stream().sorted().toList().get(ROUNDS / 2);
  }

  @Test
  void aV8IsDrawnWithinEightMilliseconds() {
    Map<Boolean, Double> drawn = new HashMap<>();
    for (boolean above : new boolean[] {true, false}) {
      double[] ms =
          Toolkit.on(
              () -> {
                Pane root = window();
                lay(root, () -> drawn(above));
                int count = shapes(root);
                double plain = median(root, () -> circles(count));
                double engine = median(root, () -> drawn(above));
                return new double[] {engine, plain, count, update(root)};
              });
      System.out.printf(
          Locale.ROOT,
          "V8 from %s: %.0f shapes drawn in %.2f ms, as many plain circles in %.2f ms: %.2f"
              + " times; one place changed in %.3f ms, %.3f times%n",
          above ? "above" : "below",
          ms[2],
          ms[0],
          ms[1],
          ms[0] / ms[1],
          ms[3],
          ms[3] / ms[1]);
      drawn.put(above, ms[0]);
    }
    assertThat(drawn.get(true)).isLessThan(MOST_MS);
    assertThat(drawn.get(false)).isLessThan(MOST_MS);
  }

  /** One place changes its state in a drawing that stands. */
  private double update(Pane root) {
    DrawnEngine engine = (DrawnEngine) root.getChildren().get(0);
    Place place = engine.drawing().orElseThrow().parts().get(0).place();
    List<Double> times = new ArrayList<>();
    for (int round = 0; round < WARM + ROUNDS; round++) {
      states.put(place, round % 2 == 0 ? PartState.FITTED : PartState.OUT);
      long start = processor();
      engine.show(this::state, Set.of());
      root.applyCss();
      root.layout();
      times.add((processor() - start) / 1e6);
    }
    return times.subList(WARM, times.size()).stream().sorted().toList().get(ROUNDS / 2);
  }
}
