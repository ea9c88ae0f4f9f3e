package wherefrom.ui;

import java.util.EnumMap;
import java.util.Map;
import wherefrom.job.running.RunIn;
import wherefrom.ui.app.LiveCamera;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.app.ScreenMaker;
import wherefrom.ui.bags.BagScreen;
import wherefrom.ui.bags.BagsScreen;
import wherefrom.ui.bags.BigPartScreen;
import wherefrom.ui.before.BeforeScreen;
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
import wherefrom.ui.phone.PhonesScreen;
import wherefrom.ui.photos.PhotosScreen;
import wherefrom.ui.print.PrintTagsScreen;
import wherefrom.ui.puttogether.PutTogetherScreen;
import wherefrom.ui.record.RecordScreen;
import wherefrom.ui.running.RunInPlanScreen;
import wherefrom.ui.running.RunInScreen;
import wherefrom.ui.running.ServiceScreen;
import wherefrom.ui.settings.SettingsScreen;
import wherefrom.ui.shop.ShopScreen;
import wherefrom.ui.takeapart.TakeApartScreen;
import wherefrom.ui.timing.TimingScreen;
import wherefrom.ui.torque.TorqueScreen;

/**
 * Every screen that others lead to: one line each. Makers of one class, not twenty method
 * references or lambdas: each of those would be a class of its own before the first picture.
 */
public final class Screens {
  private Screens() {}

  public static Map<ScreenId, ScreenMaker> all() {
    Map<ScreenId, ScreenMaker> screens = new EnumMap<>(ScreenId.class);
    for (ScreenId id : ScreenId.values()) {
      screens.put(id, new One(id));
    }
    return screens;
  }

  private record One(ScreenId id) implements ScreenMaker {
    @Override
    public Screen make(ScreenContext context, int item) {
      return switch (id) {
        case JOBS -> new JobsScreen(context);
        case JOB_HOME -> new JobHomeScreen(context);
        case TAKE_APART -> new TakeApartScreen(context);
        case BENCH_MAP -> new BenchMapScreen(context);
        case PART -> new PartScreen(context, item, false);
        case PART_IN_HAND -> new PartScreen(context, item, true);
        case PHOTOGRAPHS -> PhotosScreen.ofAll(context);
        case PRINT_TAGS -> new PrintTagsScreen(context, item);
        case BEFORE -> new BeforeScreen(context);
        case BAGS -> new BagsScreen(context);
        case BAG -> new BagScreen(context, item);
        case BIG_PART -> new BigPartScreen(context, item);
        case BETWEEN -> new BetweenScreen(context);
        case CHANGES -> new ChangesScreen(context);
        case DECIDE -> item == 0 ? new DecideScreen(context) : new DecidePartScreen(context, item);
        case INSPECT -> InspectScreen.of(context, item);
        case MEASURE -> MeasureScreen.of(context, item);
        case MACHINE_SHOP -> new ShopScreen(context);
        case MONEY -> new MoneyScreen(context);
        case BUILD_RECORD -> new RecordScreen(context);
        case PUT_TOGETHER -> new PutTogetherScreen(context);
        case RUN_IN ->
            RunIn.find(context.state()).isPresent()
                ? new RunInScreen(context)
                : new RunInPlanScreen(context);
        case SERVICE -> new ServiceScreen(context);
        case TORQUE -> new TorqueScreen(context);
        case TIMING -> new TimingScreen(context);
        case PHONES -> new PhonesScreen(context);
        case SETTINGS -> new SettingsScreen(context);
        case NEW_JOB -> new NewJobScreen(context);
        case NUMBERS -> new NumbersScreen(context);
      };
    }
  }

  /** The camera's pane beside the work. */
  public static LiveCamera camera(ScreenContext context, LiveCamera.Listener listener) {
    return new CameraPane(context, listener);
  }
}
