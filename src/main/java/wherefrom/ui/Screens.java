package wherefrom.ui;

import java.util.EnumMap;
import java.util.Map;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.LiveCamera;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.app.ScreenMaker;
import wherefrom.ui.benchmap.BenchMapScreen;
import wherefrom.ui.camera.CameraPane;
import wherefrom.ui.changes.ChangesScreen;
import wherefrom.ui.decide.DecidePartScreen;
import wherefrom.ui.decide.DecideScreen;
import wherefrom.ui.home.BetweenScreen;
import wherefrom.ui.home.JobHomeScreen;
import wherefrom.ui.inspect.InspectScreen;
import wherefrom.ui.jobs.JobsScreen;
import wherefrom.ui.measure.MeasureScreen;
import wherefrom.ui.money.MoneyScreen;
import wherefrom.ui.newjob.NewJobScreen;
import wherefrom.ui.numbers.NumbersScreen;
import wherefrom.ui.part.PartScreen;
import wherefrom.ui.print.PrintTagsScreen;
import wherefrom.ui.puttogether.PutTogetherScreen;
import wherefrom.ui.record.RecordScreen;
import wherefrom.ui.settings.SettingsScreen;
import wherefrom.ui.shop.ShopScreen;
import wherefrom.ui.takeapart.TakeApartScreen;
import wherefrom.ui.timing.TimingScreen;
import wherefrom.ui.torque.TorqueScreen;

/** Every screen that others lead to: one line each. */
public final class Screens {
  private Screens() {}

  public static Map<ScreenId, ScreenMaker> all() {
    Map<ScreenId, ScreenMaker> screens = new EnumMap<>(ScreenId.class);
    screens.put(ScreenId.JOBS, (desk, item) -> new JobsScreen(desk));
    screens.put(ScreenId.JOB_HOME, (desk, item) -> new JobHomeScreen(desk));
    screens.put(ScreenId.TAKE_APART, (desk, item) -> new TakeApartScreen(desk));
    screens.put(ScreenId.BENCH_MAP, (desk, item) -> new BenchMapScreen(desk));
    screens.put(ScreenId.PART, PartScreen::new);
    screens.put(ScreenId.PRINT_TAGS, PrintTagsScreen::new);
    screens.put(ScreenId.BETWEEN, (desk, item) -> new BetweenScreen(desk));
    screens.put(ScreenId.CHANGES, (desk, item) -> new ChangesScreen(desk));
    screens.put(
        ScreenId.DECIDE,
        (desk, item) -> item == 0 ? new DecideScreen(desk) : new DecidePartScreen(desk, item));
    screens.put(ScreenId.INSPECT, InspectScreen::of);
    screens.put(ScreenId.MEASURE, MeasureScreen::of);
    screens.put(ScreenId.MACHINE_SHOP, (desk, item) -> new ShopScreen(desk));
    screens.put(ScreenId.MONEY, (desk, item) -> new MoneyScreen(desk));
    screens.put(ScreenId.BUILD_RECORD, (desk, item) -> new RecordScreen(desk));
    screens.put(ScreenId.PUT_TOGETHER, (desk, item) -> new PutTogetherScreen(desk));
    screens.put(ScreenId.TORQUE, (desk, item) -> new TorqueScreen(desk));
    screens.put(ScreenId.TIMING, (desk, item) -> new TimingScreen(desk));
    screens.put(ScreenId.SETTINGS, (desk, item) -> new SettingsScreen(desk));
    screens.put(ScreenId.NEW_JOB, (desk, item) -> new NewJobScreen(desk));
    screens.put(ScreenId.NUMBERS, (desk, item) -> new NumbersScreen(desk));
    return screens;
  }

  /** The camera's pane beside the work. */
  public static LiveCamera camera(Desk desk, LiveCamera.Listener listener) {
    return new CameraPane(desk, listener);
  }
}
