package wherefrom.ui.sample;

import java.util.concurrent.atomic.AtomicLong;
import javafx.scene.Scene;
import wherefrom.job.Settings;
import wherefrom.ui.Screens;
import wherefrom.ui.app.Shell;
import wherefrom.ui.app.Sounds;

/** The whole window's contents over sample equipment, with a clock that the test turns. */
public final class SampleWindow {
  public final SampleEquipment equipment = new SampleEquipment();
  public final AtomicLong nanos = new AtomicLong(1_000_000_000L);
  public final Scene scene;
  public final Shell shell;

  /**
   * @param dpi 96 for a window of 1280 by 800, 160 for one of 1920 by 1200
   */
  public SampleWindow(int dpi, int textPercent) {
    Settings fresh = equipment.settings;
    equipment.settings = fresh.withPixelsPerMm(dpi / 25.4).withTextPercent(textPercent);
    shell = new Shell(Screens.all(), equipment.all(), nanos::get, Sounds.NONE, work -> work.run());
    scene = dpi == 96 ? new Scene(shell, 1280, 800) : new Scene(shell, 1920, 1200);
    shell.keys().attach(scene);
    layOut();
  }

  /** Lays everything out, as the next frame would. */
  public void layOut() {
    for (int pass = 0; pass < 3; pass++) {
      shell.applyCss();
      shell.layout();
    }
  }

  /** A moment passes: enough for the next press to count. */
  public void moment() {
    nanos.addAndGet(300_000_000L);
  }
}
