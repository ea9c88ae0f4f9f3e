package wherefrom.scan.grease;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** A live scan at 1280 x 720 in 256 MB of heap, in a process of its own. */
class LiveMemoryTest {
  private static final long GROWTH = 1_000_000;

  @Test
  void liveScanningRunsInAQuarterOfAGigabyteAndDoesNotGrow()
      throws IOException, InterruptedException {
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx256m",
                "-Djava.awt.headless=true",
                "-cp",
                System.getProperty("java.class.path"),
                LiveMemoryRun.class.getName())
            .redirectErrorStream(true)
            .start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor()).as(said).isZero();
    String[] used = said.strip().lines().reduce((one, two) -> two).orElseThrow().split(" ");
    assertThat(Long.parseLong(used[1]) - Long.parseLong(used[0])).as(said).isLessThan(GROWTH);
  }
}
