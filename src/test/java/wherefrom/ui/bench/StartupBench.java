package wherefrom.ui.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.Main;

/** The window must be up within half as long again as an empty window takes, started alike. */
@Tag("bench")
class StartupBench {
  private static final int RUNS = 9;
  private static final double GOAL = 1.5;

  @TempDir Path home;

  @Test
  void theWindowIsUpWithinHalfAsLongAgainAsAnEmptyOne() throws Exception {
    up(EmptyWindow.class);
    up(Main.class);
    List<Long> empty = new ArrayList<>();
    List<Long> whole = new ArrayList<>();
    for (int run = 0; run < RUNS; run++) {
      empty.add(up(EmptyWindow.class));
      whole.add(up(Main.class));
    }
    double ratio = (double) median(whole) / median(empty);
    System.out.printf(
        Locale.ROOT,
        "window up: empty %s ms, whole %s ms; medians %d and %d, ratio %.2f%n",
        empty,
        whole,
        median(empty),
        median(whole),
        ratio);
    assertThat(ratio).isLessThanOrEqualTo(GOAL);
  }

  private static long median(List<Long> times) {
    List<Long> sorted = new ArrayList<>(times);
    Collections.sort(sorted);
    return sorted.get(sorted.size() / 2);
  }

  /** Milliseconds until the window of this class is up, in a Java machine of its own. */
  private long up(Class<?> main) throws IOException, InterruptedException {
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Dglass.platform=Monocle",
                "-Dmonocle.platform=Headless",
                "-Dprism.order=sw",
                "-Djava.awt.headless=true",
                "-Duser.home=" + home,
                "-Djavafx.cachedir=" + home.resolve("fx"),
                "-cp",
                System.getProperty("java.class.path"),
                StartProbe.class.getName(),
                main.getName())
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor(1, TimeUnit.MINUTES)).isTrue();
    assertThat(said).startsWith("up ");
    return Long.parseLong(said.strip().substring(3));
  }
}
