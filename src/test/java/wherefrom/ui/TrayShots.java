package wherefrom.ui;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import wherefrom.job.image.GreyImage;
import wherefrom.job.reader.Corner;
import wherefrom.job.reader.Reading;
import wherefrom.job.reader.Sighting;
import wherefrom.job.reader.Unread;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;
import wherefrom.ui.tray.TrayPurpose;
import wherefrom.ui.tray.TrayScreen;

/** A tray that was photographed. */
final class TrayShots {
  private static final int WIDTH = 400;
  private static final int HEIGHT = 300;
  private static final int ACROSS = 4;

  private TrayShots() {}

  static List<Shot> all() {
    return List.of(
        new Shot("tray-out", TrayScreen.class, window -> out(window, SampleJob.whole())),
        new Shot("tray-out-none", TrayScreen.class, window -> out(window, SampleJob.apart())),
        new Shot("tray-check", TrayScreen.class, TrayShots::check));
  }

  private static void out(SampleWindow window, SampleJob sample) {
    show(window, sample, TrayPurpose.OUT);
  }

  private static void check(SampleWindow window) {
    SampleJob sample = SampleJob.apart();
    show(window, sample, TrayPurpose.CHECK);
  }

  private static void show(SampleWindow window, SampleJob sample, TrayPurpose purpose) {
    ScreenContext context = window.shell.context();
    context.open(sample.job);
    context.navigator().open(() -> new TrayScreen(context, purpose, picture(), reading(sample)));
  }

  private static GreyImage picture() {
    byte[] grey = new byte[WIDTH * HEIGHT];
    Arrays.fill(grey, (byte) 120);
    return new GreyImage(WIDTH, HEIGHT, grey);
  }

  private static Reading reading(SampleJob sample) {
    List<String> places =
        List.of(
            "pushrod@1IN",
            "pushrod@1EX",
            "pushrod@2IN",
            "pushrod@2EX",
            "pushrod@3IN",
            "pushrod@3EX",
            "pushrod@4IN");
    List<Sighting> sightings = new ArrayList<>();
    for (String place : places) {
      sightings.add(
          new Sighting(sample.tag(place), Sighting.Basis.ISSUED, corners(sightings.size())));
    }
    return new Reading(
        sightings, List.of(new Unread(Unread.Cause.DIRTY, corners(sightings.size()))));
  }

  private static List<Corner> corners(int number) {
    double x = 30 + 90.0 * (number % ACROSS);
    double y = 40 + 110.0 * (number / ACROSS);
    return List.of(
        new Corner(x, y),
        new Corner(x + 60, y + 5),
        new Corner(x + 55, y + 65),
        new Corner(x - 5, y + 60));
  }
}
