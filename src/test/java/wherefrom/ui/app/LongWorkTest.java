package wherefrom.ui.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.util.WaitForAsyncUtils;
import wherefrom.files.Progress;
import wherefrom.ui.Toolkit;
import wherefrom.ui.sample.SampleWindow;

/** Long work beside the window: a bar with a count, a key that stops it, a list of what failed. */
class LongWorkTest {
  private static final int ALL = 10;

  @TempDir Path folder;

  private final SampleWindow window =
      Toolkit.on(
          () ->
              new SampleWindow(
                  96, 100, Optional.empty(), CompletableFuture::runAsync, services -> {}));
  private final CountDownLatch half = new CountDownLatch(1);
  private final CountDownLatch goOn = new CountDownLatch(1);
  private final List<Integer> results = new ArrayList<>();

  /** Waits at the fifth of ten pieces. */
  private int count(long nanosEach) throws Exception {
    int done = 0;
    while (done < ALL) {
      window.nanos.addAndGet(nanosEach);
      done++;
      Progress.step(done, ALL);
      if (done == ALL / 2) {
        half.countDown();
        assertThat(goOn.await(20, TimeUnit.SECONDS)).isTrue();
      }
    }
    return done;
  }

  private void begin(long nanosEach) throws Exception {
    Toolkit.on(
        () -> {
          window.shell.context().longWork("Counting", () -> count(nanosEach), results::add);
          return 0;
        });
    assertThat(half.await(20, TimeUnit.SECONDS)).isTrue();
  }

  private String words() {
    WaitForAsyncUtils.waitForFxEvents();
    return Toolkit.on(this::wordsNow);
  }

  /** On the window's thread. */
  private String wordsNow() {
    window.layOut();
    return window.words();
  }

  /** No moment after what was last done. */
  private void tap(String key) {
    Toolkit.on(
        () -> {
          window.layOut();
          window.targets().stream()
              .filter(node -> window.words(node).equals(key))
              .forEach(window::tap);
          return 0;
        });
  }

  private void press(String key) {
    Toolkit.on(
        () -> {
          window.layOut();
          window.press(key);
          return 0;
        });
  }

  private void untilWordsHold(String wanted) {
    Toolkit.until(() -> wordsNow().contains(wanted));
    assertThat(words()).contains(wanted);
  }

  @Test
  void aBarTellsHowFarItIsAndGoesWhenItIsDone() throws Exception {
    begin(200_000_000L);
    untilWordsHold("Counting: 5 of 10");
    assertThat(words()).contains("Stop").contains("Wherefrom");
    goOn.countDown();
    Toolkit.until(() -> !results.isEmpty());
    assertThat(results).containsExactly(ALL);
    assertThat(words()).doesNotContain("Counting", "Stop");
  }

  /** Nothing can be said of how far it is, and it cannot be stopped within. */
  @Test
  void workOfOnePieceShowsThatItGoesOn() throws Exception {
    Toolkit.on(
        () -> {
          window.shell.context().longWork("Printing", this::onePiece, results::add);
          return 0;
        });
    assertThat(half.await(20, TimeUnit.SECONDS)).isTrue();
    assertThat(words()).doesNotContain("Printing");
    window.nanos.addAndGet(600_000_000L);
    untilWordsHold("Printing");
    assertThat(words()).doesNotContain("Stop", "0 of 0");
    goOn.countDown();
    Toolkit.until(() -> !wordsNow().contains("Printing"));
    assertThat(words()).doesNotContain("Printing");
    assertThat(results).containsExactly(1);
  }

  private int onePiece() throws InterruptedException {
    half.countDown();
    assertThat(goOn.await(20, TimeUnit.SECONDS)).isTrue();
    return 1;
  }

  @Test
  void whatIsDoneAtOnceNeedsNoBar() throws Exception {
    begin(1_000_000L);
    assertThat(words()).doesNotContain("Counting");
    goOn.countDown();
  }

  @Test
  void stopEndsItAtTheNextPiece() throws Exception {
    begin(200_000_000L);
    untilWordsHold("Counting: 5 of 10");
    press("Stop");
    goOn.countDown();
    untilWordsHold("Counting: stopped after 6 of 10.");
    assertThat(results).isEmpty();
    // Help stands again where Stop was: a second tap on Stop does not press it.
    tap("Help");
    assertThat(words()).contains("New job");
    press("Settings");
    assertThat(words()).contains("Text size").doesNotContain("New job");
  }

  @Test
  void anErrorInItIsToldToo() {
    Toolkit.on(
        () -> {
          window
              .shell
              .context()
              .longWork(
                  "Counting",
                  () -> {
                    throw new LinkageError("a library");
                  },
                  any -> {});
          return 0;
        });
    untilWordsHold("Something went wrong in Wherefrom that should not.");
  }

  @Test
  void oneBadPictureSpoilsNoneOfTheOthers() throws IOException {
    for (String name : List.of("bad-1.png", "good-1.png", "good-2.png", "bad-2.png")) {
      Files.createFile(folder.resolve(name));
    }
    Toolkit.on(
        () -> {
          window.shell.pictures().read(List.of(folder));
          return 0;
        });
    untilWordsHold("2 of 4 failed; the others are done");
    assertThat(words()).contains("bad-1.png", "bad-2.png", "is no picture that can be read");
  }
}
