package wherefrom.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import javafx.scene.Node;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.demo.DemoJob;
import wherefrom.job.OpenJob;
import wherefrom.logbook.FileShelf;
import wherefrom.parts.Place;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.app.WholeGlass;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/** However somebody went round, Back leads out in no more presses than there are screens. */
class BackWalkTest {
  private static final int WALKS = 4;
  private static final int STEPS = 40;

  /** What a walk must not press: it takes the job away, or leaves the program. */
  private static final Set<String> NOT = Set.of("Jobs", "Back", "Camera", "UNDO");

  @TempDir Path folder;

  private SampleWindow open() {
    SplittableRandom random = new SplittableRandom(7);
    FileShelf shelf = new FileShelf(folder, SampleJob.CLOCK, random::nextInt);
    SampleWindow window = new SampleWindow(96, 100, shelf);
    window.shell.context().open(shelf.open(demo()));
    window.layOut();
    return window;
  }

  private Path demo() {
    try {
      return DemoJob.on(folder);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What a person takes for one screen: what it is, what stands above and beside that. */
  private static List<Object> seen(Screen screen) {
    return List.of(screen.getClass(), screen.identity());
  }

  private static Optional<Node> back(SampleWindow window) {
    return window.targets().stream()
        .filter(window::isOnRail)
        .filter(node -> window.words(node).equals("Back"))
        .findFirst();
  }

  /** How often Back can be pressed. */
  private static int goOut(SampleWindow window) {
    int presses = 0;
    for (Optional<Node> key = back(window); key.isPresent(); key = back(window)) {
      window.press(key.get());
      window.layOut();
      presses++;
    }
    return presses;
  }

  @Test
  void aLoopIsNotGoneBackAllItsRounds() {
    Toolkit.on(
        () -> {
          SampleWindow window = open();
          int item = item(window, "rocker@3EX");
          for (int round = 0; round < 5; round++) {
            window.shell.context().navigator().show(ScreenId.BENCH_MAP);
            window.shell.context().navigator().show(ScreenId.PART, item);
          }
          window.layOut();
          assertThat(goOut(window)).as("part, bench, the job's home").isLessThanOrEqualTo(3);
          window.shell.context().getJob().close();
          return window;
        });
  }

  @Test
  void twoPartsOfOnePlaceAreTwoScreens() {
    Toolkit.on(
        () -> {
          SampleWindow window = open();
          int old = item(window, "rocker@3EX");
          int other = item(window, "rocker@5EX");
          window.shell.context().navigator().show(ScreenId.PART, old);
          Screen first = window.shell.current();
          window.shell.context().navigator().show(ScreenId.PART, other);
          Screen second = window.shell.current();
          window.shell.context().navigator().show(ScreenId.BENCH_MAP);
          window.shell.context().navigator().goBack();
          assertThat(window.shell.current()).isSameAs(second);
          window.shell.context().navigator().goBack();
          assertThat(window.shell.current()).isSameAs(first);
          window.shell.context().getJob().close();
          return window;
        });
  }

  private static int item(SampleWindow window, String key) {
    return window
        .shell
        .context()
        .state()
        .findOwner(Place.find(key).orElseThrow())
        .orElseThrow()
        .item();
  }

  @Test
  void nobodyPressesBackMoreOftenThanThereAreScreens() {
    int[] longest = {0};
    Toolkit.on(
        () -> {
          SampleWindow window = open();
          for (int walk = 0; walk < WALKS; walk++) {
            window.shell.context().navigator().home();
            window.layOut();
            Set<List<Object>> screens = walk(window, new SplittableRandom(1000 + walk));
            int presses = goOut(window);
            assertThat(presses).as("walk %d over %s", walk, screens).isLessThan(screens.size() + 2);
            longest[0] = Math.max(longest[0], presses);
            if (window.shell.context().job().isEmpty()) {
              break;
            }
          }
          window.shell.context().job().ifPresent(OpenJob::close);
          return window;
        });
    assertThat(longest[0]).as("the walks led somewhere").isGreaterThan(3);
  }

  private static Set<List<Object>> walk(SampleWindow window, SplittableRandom random) {
    Set<List<Object>> screens = new HashSet<>();
    screens.add(seen(window.shell.current()));
    for (int step = 0; step < STEPS; step++) {
      List<Node> keys =
          window.targets().stream().filter(node -> !NOT.contains(window.words(node))).toList();
      if (keys.isEmpty() || WholeGlass.is(window.shell.current())) {
        window.shell.context().navigator().back();
      } else {
        window.press(keys.get(random.nextInt(keys.size())));
      }
      window.layOut();
      screens.add(seen(window.shell.current()));
    }
    return screens;
  }
}
