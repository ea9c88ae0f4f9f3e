package wherefrom.ui;

import java.util.List;
import java.util.Locale;
import wherefrom.engine.ValveSide;
import wherefrom.engine.ValveSpot;
import wherefrom.job.OpenJob;
import wherefrom.job.timing.TimingBook;
import wherefrom.job.timing.TimingSetting;
import wherefrom.ui.app.NumberEntryScreen;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;
import wherefrom.ui.timing.CylinderScreen;
import wherefrom.ui.timing.LiftPlotScreen;
import wherefrom.ui.timing.LobeScreen;
import wherefrom.ui.timing.TimingScreen;
import wherefrom.ui.timing.WheelScreen;
import wherefrom.workings.timing.TimingValue;

/** The timing check, in the states worth looking at. */
final class TimingShots {
  private TimingShots() {}

  static List<Shot> all() {
    return List.of(
        shot("timing-none", TimingScreen.class, false),
        shot("timing", TimingScreen.class, true),
        shot("timing-wheel", WheelScreen.class, true, "Wheel and"),
        shot("timing-open", CylinderScreen.class, false, "Degree wheel", "Cylinder 1"),
        shot("timing-cylinder", CylinderScreen.class, true, "Cylinder 1"),
        shot("timing-lobe", LobeScreen.class, true, "Cylinder 1", "Intake"),
        shot(
            "timing-angle", NumberEntryScreen.class, true, "Cylinder 1", "Intake", "Add", "2", "+"),
        shot("timing-plot", LiftPlotScreen.class, true, "Cylinder 1", "Intake", "Plot"));
  }

  private static Shot shot(
      String name, Class<? extends Screen> screen, boolean read, String... presses) {
    return new Shot(
        name,
        screen,
        window -> {
          SampleJob sample = SampleJob.apart();
          if (read) {
            read(sample.job);
          }
          window.shell.context().open(sample.job);
          window.shell.context().navigator().show(ScreenId.TIMING);
          window.layOut();
          for (String press : presses) {
            press(window, press);
          }
        });
  }

  private static void press(SampleWindow window, String words) {
    if (words.equals("Intake")) {
      window.pressExactly(window.shell.context().touch().isLarge() ? "Intake" : "Intake readings");
    } else if (words.startsWith("C") || words.startsWith("D") || words.startsWith("W")) {
      window.pressOnSomePage(words);
    } else {
      window.pressBelow(words);
    }
  }

  static void read(OpenJob job) {
    TimingBook book = new TimingBook(job);
    book.set(TimingSetting.STATED_LIFT, "0.050 in");
    book.set(TimingSetting.WHEEL, "0.5 deg");
    book.set(TimingSetting.DIAL, "0.0005 in");
    book.set(TimingSetting.ZERO, "0.5 deg");
    lobe(book, new ValveSpot(1, ValveSide.INTAKE), 108);
    lobe(book, new ValveSpot(1, ValveSide.EXHAUST), -112);
    book.cardSource("cam card");
    book.card(TimingValue.INTAKE_CENTRE, "106");
    book.card(TimingValue.INTAKE_DURATION, "204");
  }

  /** A raised cosine of 276 degrees from seat to seat. */
  static void lobe(TimingBook book, ValveSpot lobe, int centre) {
    for (int off = -140; off <= 140; off += 10) {
      double lift = Math.abs(off) < 138 ? 0.15 * (1 + Math.cos(Math.PI * off / 138)) : 0;
      book.read(lobe, "" + (centre + off), String.format(Locale.ROOT, "%.4f", lift));
    }
  }
}
