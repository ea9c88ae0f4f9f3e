package wherefrom.ui;

import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import wherefrom.job.image.Camera;
import wherefrom.job.reader.LiveAnswer;
import wherefrom.job.reader.Unread;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.benchmap.BenchMapScreen;
import wherefrom.ui.part.PartScreen;
import wherefrom.ui.puttogether.PutTogetherScreen;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;
import wherefrom.ui.sample.StandingPicture;
import wherefrom.ui.takeapart.TakeApartScreen;

/** The work screens with the camera on. */
final class CameraShots {
  private CameraShots() {}

  static List<Shot> all() {
    return List.of(
        shot("camera-together", PutTogetherScreen.class, ScreenId.PUT_TOGETHER, (w, job) -> {}),
        shot(
            "camera-together-stop",
            PutTogetherScreen.class,
            ScreenId.PUT_TOGETHER,
            (window, job) -> {
              scan(window, job.tag("pushrod@3EX"));
              scan(window, job.card("5EX"));
            }),
        new Shot("camera-together-ask", PutTogetherScreen.class, CameraShots::unread),
        new Shot("camera-together-none", PutTogetherScreen.class, CameraShots::none),
        shot("camera-take-apart", TakeApartScreen.class, ScreenId.TAKE_APART, (w, job) -> {}),
        shot("camera-bench-map", BenchMapScreen.class, ScreenId.BENCH_MAP, (w, job) -> {}),
        shot("camera-part", PartScreen.class, ScreenId.PART, (w, job) -> {}));
  }

  private static Shot shot(
      String name,
      Class<? extends Screen> screen,
      ScreenId id,
      BiConsumer<SampleWindow, SampleJob> then) {
    return new Shot(
        name,
        screen,
        window -> {
          window.services.cameras.add(new Camera("0", "Camera over the bench"));
          SampleJob job = SampleJob.apart();
          window.shell.context().open(job.job);
          window.shell.context().navigator().show(id, 20);
          turnOn(window);
          then.accept(window, job);
        });
  }

  private static void turnOn(SampleWindow window) {
    window.layOut();
    window.workers = StandingPicture.untilItStands();
    window.pressRail("Camera");
    window.workers = Runnable::run;
  }

  private static void unread(SampleWindow window) {
    window.services.cameras.add(new Camera("0", "Camera over the bench"));
    window.services.seen = new LiveAnswer.Nothing(Optional.of(Unread.Cause.GLARE));
    SampleJob job = SampleJob.apart();
    window.shell.context().open(job.job);
    window.shell.context().navigator().show(ScreenId.PUT_TOGETHER);
    scan(window, job.tag("pushrod@3EX"));
    turnOn(window);
  }

  private static void none(SampleWindow window) {
    window.shell.context().open(SampleJob.apart().job);
    window.shell.context().navigator().show(ScreenId.PUT_TOGETHER);
    window.layOut();
    window.pressRail("Camera");
  }

  private static void scan(SampleWindow window, String digits) {
    window.scan(digits);
  }
}
