package wherefrom.ui.camera;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.job.image.Camera;
import wherefrom.parts.Place;
import wherefrom.parts.TagCode;
import wherefrom.parts.Whereabouts;
import wherefrom.scan.PipelineReader;
import wherefrom.scan.camera.BenchFilm;
import wherefrom.scan.camera.FfmpegCameras;
import wherefrom.ui.Toolkit;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.camera.WatchedCamera.Noted;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/** From a clip through FFmpeg and the live reader to what stands on the shown work screen. */
class LiveCameraTest {
  /** Frames from the first on which a decoder from outside reads the tag to the answer shown. */
  private static final int MOST_BEHIND = 3;

  @TempDir Path folder;

  private final ExecutorService workers =
      Executors.newCachedThreadPool(
          work -> {
            Thread thread = new Thread(work, "live camera test");
            thread.setDaemon(true);
            return thread;
          });

  private SampleJob sample;
  private SampleWindow window;
  private WatchedCamera camera;

  @AfterEach
  void closeTheWindow() throws InterruptedException {
    Toolkit.on(
        () -> {
          window.shell.close();
          return true;
        });
    workers.shutdown();
    assertThat(workers.awaitTermination(10, TimeUnit.SECONDS)).isTrue();
  }

  private void open(Camera clip, ScreenId screen, SampleJob job) {
    sample = job;
    camera = new WatchedCamera(clip, this::words);
    window =
        Toolkit.on(
            () ->
                new SampleWindow(
                    96,
                    100,
                    Optional.empty(),
                    workers,
                    services -> {
                      services.ownCameras = Optional.of(camera);
                      services.ownReader = Optional.of(new PipelineReader());
                    }));
    Toolkit.on(
        () -> {
          window.shell.context().open(sample.job);
          window.shell.context().navigator().show(screen);
          window.layOut();
          window.press("Cam");
          return true;
        });
  }

  private String words() {
    return Toolkit.on(window::words);
  }

  private TagCode tag(SampleJob job, String placeKey) {
    return TagCode.find(job.tag(placeKey)).orElseThrow();
  }

  private TagCode card(SampleJob job, String spotKey) {
    return TagCode.find(job.card(spotKey)).orElseThrow();
  }

  private static int first(List<Noted> noted, int from, String words) {
    for (int at = from; at < noted.size(); at++) {
      if (noted.get(at).screen().contains(words)) {
        return at;
      }
    }
    throw new AssertionError(
        words
            + " is never shown from frame "
            + from
            + " on, but "
            + noted.stream().map(Noted::screen).distinct().toList());
  }

  /** The frame on which the words come up; the tag must be readable, and not for long. */
  private static int shown(List<Noted> noted, int from, TagCode tag, String words) {
    int readable = from;
    while (!noted.get(readable).readable().equals(Optional.of(tag.digits()))) {
      readable++;
    }
    int answered = first(noted, from, words);
    assertThat(answered).as(words).isLessThanOrEqualTo(readable + MOST_BEHIND);
    return answered;
  }

  @Test
  void verdictsOfAWholeSittingStandWithinThreeFramesOfAReadableTag() throws InterruptedException {
    SampleJob job = SampleJob.apart();
    TagCode three = tag(job, "pushrod@3EX");
    TagCode five = tag(job, "pushrod@5EX");
    TagCode seven = tag(job, "pushrod@7EX");
    Path clip =
        new BenchFilm()
            .bare(5)
            .slidesIn(three, 6)
            .bare()
            .lies(card(job, "3EX"), 8)
            .bare()
            .slidesIn(five, 6)
            .bare()
            .lies(card(job, "7EX"), 8)
            .bare()
            .bothLie(three, five, 16)
            .bare()
            .lies(seven, 8)
            .bare()
            .write(folder.resolve("sitting.avi"));
    open(Camera.ofClip(clip), ScreenId.PUT_TOGETHER, job);
    List<Noted> noted = camera.toItsEnd();

    int hand = shown(noted, 0, three, inHand(three, "3 EX pushrod"));
    int right = shown(noted, hand, card(job, "3EX"), "RIGHT PLACE 3 EX pushrod");
    int next = shown(noted, right, five, inHand(five, "5 EX pushrod"));
    int stop = shown(noted, next, card(job, "7EX"), "STOP");
    assertThat(noted.get(stop).screen()).contains("From: 5 EX", "Here: 7 EX");
    int solved = shown(noted, stop, seven, "RIGHT PLACE 7 EX pushrod");
    int two = first(noted, stop, "2 tags are in view. Cover all but one.");
    assertThat(two).isLessThan(solved);
    assertThat(noted.subList(stop, solved)).allMatch(frame -> frame.screen().contains("STOP"));
    assertThat(camera.isClosedWithin(5)).isTrue();
    assertThat(job.job.state().fitted().keySet())
        .extracting(Place::key)
        .containsExactlyInAnyOrder("pushrod@3EX", "pushrod@7EX");
  }

  /** What stands on the screen while a part waits for its place. */
  private static String inHand(TagCode tag, String part) {
    return part + " " + tag.typed() + " Now scan the place card";
  }

  @Test
  void twoTagsInViewAreAskedAboutAndTheOneLeftIsRead() throws InterruptedException {
    SampleJob job = SampleJob.apart();
    TagCode three = tag(job, "pushrod@3EX");
    Path clip =
        new BenchFilm()
            .bare(4)
            .bothLie(three, tag(job, "pushrod@5EX"), 20)
            .bare(4)
            .lies(three, 10)
            .write(folder.resolve("two.avi"));
    open(Camera.ofClip(clip), ScreenId.PUT_TOGETHER, job);
    List<Noted> noted = camera.toItsEnd();
    int asked = first(noted, 4, "Not read yet 2 tags are in view. Cover all but one.");
    assertThat(asked).isBetween(4 + Hints.SEVERAL_STAY - 1, 4 + Hints.SEVERAL_STAY + MOST_BEHIND);
    assertThat(noted.get(noted.size() - 1).screen())
        .contains(inHand(three, "3 EX pushrod"), "tagged end up")
        .doesNotContain("Not read yet");
  }

  @Test
  void partsComeOutByCameraAloneAndATagThatLiesOnIsLoggedOnce() throws InterruptedException {
    SampleJob job = SampleJob.whole();
    Path clip =
        new BenchFilm()
            .bare(3)
            .lies(tag(job, "rocker@1IN"), 1)
            .write(folder.resolve("endless.avi"));
    open(FfmpegCameras.endlessClip(clip), ScreenId.TAKE_APART, job);
    camera.frames(40);
    assertThat(words()).contains("1 of 74 out");
    assertThat(job.job.history().size()).isEqualTo(SampleJob.whole().job.history().size() + 1);
    assertThat(job.job.state().getPart(job.part("rocker@1IN").item()).where())
        .isEqualTo(Whereabouts.OUT);
  }

  @Test
  void theWindowAnswersWhileTheCameraRunsAndLeavingFreesTheDevice() throws InterruptedException {
    open(FfmpegCameras.testPicture(640, 360), ScreenId.PUT_TOGETHER, SampleJob.apart());
    camera.frames(8);
    long before = System.nanoTime();
    assertThat(words()).contains("Put together", "Scan a part", "and its place card");
    assertThat(System.nanoTime() - before).isLessThan(TimeUnit.MILLISECONDS.toNanos(500));
    assertThat(camera.noted())
        .noneMatch(frame -> frame.screen().contains("Now scan the place card"));
    // The job's first screen takes scans, too: the camera goes on there.
    Toolkit.on(
        () -> {
          window.shell.context().navigator().home();
          return true;
        });
    camera.frames(camera.noted().size() + 3);
    assertThat(words()).contains("Launch V8").doesNotContain("Put together");
    assertThat(camera.isClosedWithin(0)).isFalse();
    Toolkit.on(
        () -> {
          window.shell.context().navigator().show(ScreenId.SETTINGS);
          return true;
        });
    assertThat(camera.isClosedWithin(3)).isTrue();
    Toolkit.on(
        () -> {
          assertThat(window.shell.context().settings().cameraOn()).isTrue();
          window.shell.context().navigator().show(ScreenId.TAKE_APART);
          return true;
        });
    int frames = camera.noted().size();
    camera.frames(frames + 3);
  }
}
