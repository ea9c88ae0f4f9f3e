package wherefrom.ui.puttogether;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.stream.Stream;
import javafx.scene.Node;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import wherefrom.ui.Toolkit;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/**
 * Whatever stood in putting together before, however somebody came to a stop and whatever was
 * looked at from there: Back leads to that stop, and no right place of another part is shown while
 * it stands.
 */
class BackToTheStopTest {
  private static final String PART = "rocker@8IN";

  /** A way from one screen to another, with its name. */
  record Way(String name, BiConsumer<SampleWindow, SampleJob> go) {
    @Override
    public String toString() {
      return name;
    }
  }

  private final SampleJob sample = SampleJob.apart();

  private static Way presses(String... keys) {
    return new Way(
        String.join(" > ", keys), (window, sample) -> List.of(keys).forEach(window::press));
  }

  private static void fit(SampleWindow window, SampleJob sample) {
    window.scan(sample.tag("rocker@1EX"));
    window.scan(sample.card("1EX"));
  }

  private static List<Way> before() {
    return List.of(
        new Way("nothing", (window, sample) -> {}),
        new Way("right place", BackToTheStopTest::fit),
        new Way(
            "already fitted",
            (window, sample) -> {
              fit(window, sample);
              fit(window, sample);
            }),
        new Way("a part in hand", (window, sample) -> window.scan(sample.tag("rocker@1EX"))));
  }

  private static Way page(String name, ScreenId from) {
    return new Way(
        name,
        (window, sample) -> {
          window.shell.context().navigator().show(from);
          window.scan(sample.tag(PART));
          window.layOut();
          window.press("Put it back");
          window.scan(sample.card("5EX"));
        });
  }

  private static List<Way> in() {
    return List.of(
        page("the bench, Put it back", ScreenId.BENCH_MAP),
        page("home, Put it back", ScreenId.JOB_HOME),
        new Way(
            "the place card on the part's page",
            (window, sample) -> {
              int item = sample.part(PART).item();
              window.shell.context().navigator().show(ScreenId.PART_IN_HAND, item);
              window.scan(sample.card("5EX"));
            }),
        new Way(
            "the bench, Together",
            (window, sample) -> {
              window.shell.context().navigator().show(ScreenId.BENCH_MAP);
              window.shell.context().navigator().show(ScreenId.PUT_TOGETHER);
              window.scan(sample.tag(PART));
              window.scan(sample.card("5EX"));
            }));
  }

  private static List<Way> out() {
    return List.of(
        presses("More"),
        presses("More", "See the bench"),
        new Way(
            "More, the bench, another part's page",
            (window, sample) -> {
              window.press("More");
              window.press("See the bench");
              window.scan(sample.tag("rocker@1EX"));
              window.layOut();
            }),
        presses("Scan the right part"),
        presses("Fit it here on purpose"));
  }

  static Stream<Arguments> walks() {
    return before().stream()
        .flatMap(
            first ->
                in().stream()
                    .flatMap(in -> out().stream().map(out -> Arguments.of(first, in, out))));
  }

  private static Optional<Node> back(SampleWindow window) {
    return window.targets().stream()
        .filter(window::isOnRail)
        .filter(node -> window.words(node).equals("Back"))
        .findFirst();
  }

  private static String words(SampleWindow window) {
    return window.words().replace('\u00a0', ' ');
  }

  private static void standsOnTheStop(SampleWindow window) {
    assertThat(words(window)).contains("STOP", "From: 8 IN", "Here: 5 EX");
  }

  @ParameterizedTest
  @MethodSource("walks")
  void backLeadsToTheStop(Way first, Way in, Way out) {
    Toolkit.on(
        () -> {
          SampleWindow window = new SampleWindow(96, 100);
          window.shell.context().open(sample.job);
          window.shell.context().navigator().show(ScreenId.PUT_TOGETHER);
          first.go().accept(window, sample);
          window.layOut();
          in.go().accept(window, sample);
          window.layOut();
          standsOnTheStop(window);
          Screen stopped = window.shell.current();
          out.go().accept(window, sample);
          for (Optional<Node> key = back(window); key.isPresent(); key = back(window)) {
            assertThat(words(window)).doesNotContain("RIGHT PLACE", "ALREADY FITTED");
            window.press(key.get());
          }
          standsOnTheStop(window);
          assertThat(window.shell.current()).isSameAs(stopped);
          return 0;
        });
  }

  /** A stop that was given on another screen stands where the screen comes up that said right. */
  static Stream<Arguments> waysIn() {
    return before().stream().flatMap(first -> in().stream().map(in -> Arguments.of(first, in)));
  }

  @ParameterizedTest
  @MethodSource("waysIn")
  void whatSaidRightBeforeDoesNotSayItOverTheStop(Way first, Way in) {
    Toolkit.on(
        () -> {
          SampleWindow window = new SampleWindow(96, 100);
          window.shell.context().open(sample.job);
          window.shell.context().navigator().show(ScreenId.PUT_TOGETHER);
          Screen lower = window.shell.current();
          first.go().accept(window, sample);
          in.go().accept(window, sample);
          window.shell.context().navigator().backTo(lower);
          window.layOut();
          assertThat(words(window)).doesNotContain("RIGHT PLACE", "ALREADY FITTED");
          return 0;
        });
  }
}
