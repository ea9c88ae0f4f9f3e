package wherefrom.ui.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.engine.ReadyLayouts;
import wherefrom.files.Progress;
import wherefrom.job.entry.NoteAdded;
import wherefrom.job.ports.Backups;
import wherefrom.job.shelf.Shelf.NewJob;
import wherefrom.logbook.BackupFolder;
import wherefrom.logbook.FileShelf;
import wherefrom.parts.PartKind;
import wherefrom.quantity.UnitSystem;
import wherefrom.ui.Toolkit;
import wherefrom.ui.sample.HandClock;
import wherefrom.ui.sample.SampleWindow;

/** Real jobs in a real folder, copied to another one that may not be there. */
class CopyingTest {
  @TempDir Path folder;
  private final HandClock clock = new HandClock();
  private final List<Runnable> waiting = new ArrayList<>();
  private Backups backups = new BackupFolder();
  private Executor workers = Runnable::run;
  private FileShelf shelf;
  private Path stick;
  private Path job;

  @BeforeEach
  void begin() throws IOException {
    shelf = new FileShelf(folder.resolve("shop"), clock, () -> 7);
    stick = Files.createDirectories(folder.resolve("stick"));
    job = folder.resolve("shop/launch");
    NewJob begun =
        new NewJob(
            "Launch V8",
            ReadyLayouts.find("v8-odd-even").orElseThrow(),
            PartKind.alwaysOn(),
            UnitSystem.INCH);
    shelf.createIn(job, begun).close();
  }

  private SampleWindow window() {
    return Toolkit.on(
        () -> {
          SampleWindow window =
              new SampleWindow(
                  96,
                  100,
                  Optional.of(shelf),
                  workers,
                  services -> {
                    services.clock = clock;
                    services.backups = (from, to) -> backups.copy(from, to);
                    services.settings =
                        services
                            .settings
                            .withShop(folder.resolve("shop"))
                            .withSecondCopy(Optional.of(stick));
                  });
          window.shell.context().open(shelf.open(job));
          window.shell.context().getJob().record(new NoteAdded(1, "oil in it"));
          return window;
        });
  }

  private static void in(SampleWindow window, Runnable deed) {
    Toolkit.on(
        () -> {
          deed.run();
          return 0;
        });
    // What was handed to the window's thread meanwhile has been done when this has.
    Toolkit.on(
        () -> {
          window.layOut();
          return 0;
        });
  }

  private static void leave(SampleWindow window) {
    in(window, () -> window.shell.context().navigator().jobs());
  }

  /** The list of jobs is read away from the window, too: it is what waits last. */
  private void readTheList(SampleWindow window) {
    in(window, () -> waiting.remove(waiting.size() - 1).run());
  }

  private void idleAfter(SampleWindow window, Duration quiet) {
    clock.pass(quiet);
    in(window, () -> window.shell.context().copying().idle());
  }

  private static String words(SampleWindow window) {
    return Toolkit.on(window::words);
  }

  /** The copy is there and is the job to the byte. */
  private void isCopied() throws IOException {
    assertThat(stick.resolve("launch")).isDirectory();
    try (Stream<Path> files = Files.list(job)) {
      for (Path file : files.filter(each -> each.toString().endsWith(".jsonl")).toList()) {
        assertThat(stick.resolve("launch").resolve(file.getFileName()))
            .hasSameBinaryContentAs(file);
      }
    }
    assertThat(files(stick)).isNotEmpty();
  }

  private static List<Path> files(Path inside) throws IOException {
    try (Stream<Path> files = Files.walk(inside)) {
      return files.filter(Files::isRegularFile).toList();
    }
  }

  @Test
  void aJobThatIsPutAwayIsCopiedAndTheListSaysWhen() throws IOException {
    SampleWindow window = window();
    leave(window);
    isCopied();
    assertThat(words(window)).contains("Last copied 4 May 2026, today.");
    clock.pass(Duration.ofDays(90));
    in(window, () -> window.shell.context().open(shelf.open(job)));
    in(window, () -> window.pressRail("More"));
    assertThat(words(window)).contains("Copy to USB drive Last copied 4 May 2026, 90 days ago.");
    assertThat(window.services.settings.findCopied(job)).isPresent();
  }

  @Test
  void theCopyHasABarAndCanBeStopped() throws Exception {
    ExecutorService one = Executors.newSingleThreadExecutor();
    workers = one;
    CountDownLatch half = new CountDownLatch(1);
    CountDownLatch goOn = new CountDownLatch(1);
    SampleWindow window = window();
    backups = (from, to) -> slowly(window, half, goOn);
    clock.pass(Duration.ofMinutes(3));
    in(window, () -> window.shell.context().copying().idle());
    assertThat(half.await(20, TimeUnit.SECONDS)).isTrue();
    in(window, () -> {});
    assertThat(words(window)).contains("Copying the job: 3 of 9", "Stop");
    in(window, () -> window.press("Stop"));
    goOn.countDown();
    one.shutdown();
    assertThat(one.awaitTermination(20, TimeUnit.SECONDS)).isTrue();
    in(window, () -> window.pressRail("More"));
    assertThat(words(window))
        .contains("The copy was stopped. It starts again after the next step")
        .contains("Not copied yet.")
        .doesNotContain("Copying the job");
  }

  private static Backups.Copied slowly(SampleWindow window, CountDownLatch half, CountDownLatch on)
      throws IOException {
    window.nanos.addAndGet(700_000_000L);
    Progress.step(3, 9);
    half.countDown();
    try {
      assertThat(on.await(20, TimeUnit.SECONDS)).isTrue();
    } catch (InterruptedException e) {
      throw new IOException(e);
    }
    Progress.step(4, 9);
    throw new AssertionError("it goes on though it was stopped");
  }

  @Test
  void theScreenDoesNotWaitForTheStick() throws IOException {
    workers = waiting::add;
    SampleWindow window = window();
    leave(window);
    readTheList(window);
    assertThat(words(window)).contains("Launch V8", "Not copied yet.");
    assertThat(files(stick)).isEmpty();
    in(window, () -> waiting.remove(waiting.size() - 1).run());
    isCopied();
    readTheList(window);
    assertThat(words(window)).contains("Last copied");
  }

  @Test
  void closingTheWindowWaitsUntilTheCopyIsThere() throws IOException {
    ExecutorService one = Executors.newSingleThreadExecutor();
    workers = one;
    BackupFolder real = new BackupFolder();
    CompletableFuture<Thread> closing = new CompletableFuture<>();
    backups =
        (from, to) -> {
          untilItWaits(closing.join());
          return real.copy(from, to);
        };
    SampleWindow window = window();
    Toolkit.on(
        () -> {
          closing.complete(Thread.currentThread());
          window.shell.close();
          return 0;
        });
    one.shutdownNow();
    isCopied();
    assertThat(window.services.settings.findCopied(job)).isPresent();
  }

  /** The copy goes on only when the window's thread waits for it. */
  private static void untilItWaits(Thread window) throws IOException {
    while (window.getState() != Thread.State.TIMED_WAITING) {
      if (Thread.interrupted()) {
        throw new IOException("The window has closed and did not wait.");
      }
      Thread.onSpinWait();
    }
  }

  @Test
  void afterTwoQuietMinutesTheOpenJobIsCopiedOnce() throws IOException {
    SampleWindow window = window();
    idleAfter(window, Duration.ofSeconds(119));
    assertThat(files(stick)).isEmpty();
    idleAfter(window, Duration.ofSeconds(1));
    isCopied();
    in(window, () -> window.pressRail("More"));
    assertThat(words(window)).contains("Copy to USB drive Last copied 4 May 2026, today.");
    Files.delete(files(stick).get(0));
    idleAfter(window, Duration.ofMinutes(5));
    assertThat(files(stick)).isEmpty();
    in(window, () -> window.shell.context().getJob().record(new NoteAdded(2, "a nick")));
    idleAfter(window, Duration.ofMinutes(2));
    isCopied();
  }

  /** The clock ran ahead by a year when the last step was kept, and was put right since. */
  @Test
  void aClockThatWasPutRightHidesNothing() throws IOException {
    SampleWindow window = window();
    leave(window);
    assertThat(words(window)).contains("Last copied 4 May 2026, today. Safe to pull out.");
    in(window, () -> window.shell.context().open(shelf.open(job)));
    clock.pass(Duration.ofDays(365));
    in(window, () -> window.shell.context().getJob().record(new NoteAdded(2, "a nick")));
    clock.pass(Duration.ofDays(-365));
    in(window, () -> window.shell.context().copying().idle());
    assertThat(Files.size(stick.resolve("launch/logbook-0001.jsonl"))).isLessThan(size());
    idleAfter(window, Duration.ofMinutes(2));
    isCopied();
    assertThat(Files.size(stick.resolve("launch/logbook-0001.jsonl"))).isEqualTo(size());
  }

  private long size() throws IOException {
    return Files.size(job.resolve("logbook-0001.jsonl"));
  }

  /** The copy was made while the clock ran ahead: what is done since has an earlier time. */
  @Test
  void whatChangedSinceACopyFromTheFutureIsSaid() throws IOException {
    clock.pass(Duration.ofDays(365));
    SampleWindow window = window();
    leave(window);
    clock.pass(Duration.ofDays(-365));
    workers = waiting::add;
    SampleWindow later = window();
    Toolkit.on(
        () -> {
          later.shell.context().change(window.shell.context().settings());
          return 0;
        });
    leave(later);
    readTheList(later);
    assertThat(words(later)).contains("It has changed since.");
  }

  @Test
  void aStickThatIsNotThereIsSaidCalmlyAndCopiedToOnceItIs() throws IOException {
    Files.delete(stick);
    SampleWindow window = window();
    leave(window);
    assertThat(words(window))
        .contains("USB drive not found: " + stick)
        .contains("Plug it in, and the job is copied. Not copied yet.");
    assertThat(stick).doesNotExist();
    in(window, () -> window.shell.context().open(shelf.open(job)));
    assertThat(words(window)).contains("USB drive not found");
    Files.createDirectory(stick);
    idleAfter(window, Duration.ofMinutes(2));
    isCopied();
    assertThat(words(window)).doesNotContain("is not there");
  }

  /** As after a restart: nothing was tried yet. */
  @Test
  void aStickThatIsNotThereIsSaidBeforeAnyCopyIsTried() throws IOException {
    Files.delete(stick);
    SampleWindow window = window();
    in(window, () -> {});
    assertThat(words(window)).contains("USB drive not found: " + stick);
  }

  @Test
  void aStickThatWasTakenAwaySaysWhenTheLastCopyWasMade() throws IOException {
    SampleWindow window = window();
    leave(window);
    Files.move(stick, folder.resolve("pocket"));
    clock.pass(Duration.ofDays(3));
    in(window, () -> window.shell.context().open(shelf.open(job)));
    in(window, () -> window.shell.context().getJob().record(new NoteAdded(1, "a nick")));
    leave(window);
    assertThat(words(window)).contains("USB drive not found", "Last copied 4 May 2026, 3 days");
  }

  @Test
  void whatHasChangedSinceTheLastCopyIsSaid() throws IOException {
    SampleWindow window = window();
    leave(window);
    workers = waiting::add;
    clock.pass(Duration.ofDays(3));
    SampleWindow later = window();
    Toolkit.on(
        () -> {
          later.shell.context().change(window.shell.context().settings());
          return 0;
        });
    leave(later);
    readTheList(later);
    assertThat(words(later)).contains("4 May 2026, 3 days ago. It has changed since.");
  }

  @Test
  void aFolderThatCannotBeWrittenToIsSaidWithWhatToDo() throws IOException {
    Path nowhere = Path.of("/proc");
    assumeThat(nowhere).isDirectory();
    stick = nowhere;
    SampleWindow window = window();
    leave(window);
    assertThat(words(window))
        .contains("The copy could not be written: ")
        .contains("Make room there and check that it can be written to")
        .contains("The job itself is safe here. Not copied yet.");
  }

  @Test
  void aFullStickIsTriedOnceForEachSitting() throws IOException {
    int[] tries = {0};
    backups =
        (from, to) -> {
          tries[0]++;
          throw new IOException("The copy could not be written: no space left on it.");
        };
    SampleWindow window = window();
    idleAfter(window, Duration.ofMinutes(2));
    idleAfter(window, Duration.ofMinutes(2));
    idleAfter(window, Duration.ofMinutes(2));
    assertThat(tries[0]).isEqualTo(1);
    assertThat(words(window)).contains("no space left on it. The job itself is safe here.");
    leave(window);
    assertThat(tries[0]).isEqualTo(2);
    assertThat(words(window)).contains("no space left on it.");
  }

  @Test
  void somethingElseOfThatNameOnTheStickIsLeftAlone() throws IOException {
    Path other = Files.writeString(stick.resolve("launch"), "not a job");
    SampleWindow window = window();
    leave(window);
    assertThat(other).hasContent("not a job");
    assertThat(words(window)).contains("The copy could not be written", "safe here");
  }

  @Test
  void withoutAFolderForItNothingIsCopiedAndNothingIsSaid() throws IOException {
    SampleWindow window = window();
    in(
        window,
        () -> {
          ScreenContext context = window.shell.context();
          context.change(context.settings().withSecondCopy(Optional.empty()));
        });
    leave(window);
    assertThat(files(stick)).isEmpty();
    assertThat(words(window)).doesNotContain("copied", "USB drive");
  }
}
