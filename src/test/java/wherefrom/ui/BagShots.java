package wherefrom.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import wherefrom.inspection.Decision;
import wherefrom.inspection.Subject;
import wherefrom.job.bags.Bags;
import wherefrom.job.bags.BigParts;
import wherefrom.job.entry.AtAssembly;
import wherefrom.job.entry.BagFilled;
import wherefrom.job.entry.BoltHole;
import wherefrom.job.photos.Photographing;
import wherefrom.parts.Whereabouts;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.bags.BagAskScreen;
import wherefrom.ui.bags.BagScreen;
import wherefrom.ui.bags.BagsScreen;
import wherefrom.ui.bags.BigPartScreen;
import wherefrom.ui.bags.GasketsScreen;
import wherefrom.ui.bags.HolesScreen;
import wherefrom.ui.home.JobHomeScreen;
import wherefrom.ui.puttogether.MissingScreen;
import wherefrom.ui.puttogether.PutTogetherScreen;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;
import wherefrom.ui.takeapart.TakeApartScreen;

/** Bags of fasteners and big parts. */
final class BagShots {
  /** The numbers of big parts of a V8, as they are named. */
  private static final int LEFT_COVER = 8;

  private static final int LEFT_HEAD = 10;
  private static final int PAN = 17;
  private static final int DAMPER = 13;

  private BagShots() {}

  static List<Shot> all() {
    return List.of(
        shot("bags", BagsScreen.class, window -> {}),
        none("bags-none", BagsScreen.class),
        shot("bags-big-parts", BagsScreen.class, BagShots::bigParts),
        shot("bags-one", BagScreen.class, window -> show(window, ScreenId.BAG, 2)),
        shot("bags-one-holes", BagScreen.class, window -> show(window, ScreenId.BAG, 1)),
        shot("bags-one-empty", BagScreen.class, window -> show(window, ScreenId.BAG, 9)),
        shot("bags-holes", HolesScreen.class, BagShots::holes),
        shot(
            "bags-head", BigPartScreen.class, window -> show(window, ScreenId.BIG_PART, LEFT_HEAD)),
        shot("bags-damper", BigPartScreen.class, window -> show(window, ScreenId.BIG_PART, DAMPER)),
        shot("bags-pan", BigPartScreen.class, window -> show(window, ScreenId.BIG_PART, PAN)),
        shot("bags-other", BigPartScreen.class, window -> show(window, ScreenId.BIG_PART, 3)),
        begun("bags-off", TakeApartScreen.class, ScreenId.TAKE_APART),
        begun("bags-home", JobHomeScreen.class, ScreenId.JOB_HOME),
        shot("bags-on", PutTogetherScreen.class, BagShots::together),
        shot("bags-missing", MissingScreen.class, BagShots::missing),
        shot("bags-ask", BagAskScreen.class, BagShots::ask),
        shot("bags-gaskets", GasketsScreen.class, BagShots::gaskets));
  }

  /** A V8 that nobody has opened, its big parts named and its tags printed. */
  private static Shot begun(String name, Class<? extends Screen> screen, ScreenId id) {
    return new Shot(
        name,
        screen,
        window -> {
          SampleJob sample = SampleJob.whole();
          BigParts parts = new BigParts(sample.job);
          parts.nameUsual();
          for (int number = 1; number < LEFT_COVER; number++) {
            parts.off(number, "it was in the way");
          }
          new Bags(sample.job).fill(bag(1, "intake bolts", 7, 12, List.of()));
          window.shell.context().open(sample.job);
          if (id != ScreenId.JOB_HOME) {
            window.shell.context().navigator().show(id);
          }
        });
  }

  /** Everything on the bench but the covers' own: the left head can go on. */
  private static void together(SampleWindow window) {
    window.shell.context().navigator().show(ScreenId.PUT_TOGETHER);
  }

  private static void missing(SampleWindow window) {
    together(window);
    window.layOut();
    window.press("Missing");
  }

  private static Shot none(String name, Class<? extends Screen> screen) {
    return new Shot(
        name,
        screen,
        window -> {
          window.shell.context().open(SampleJob.whole().job);
          window.shell.context().navigator().show(ScreenId.BAGS);
        });
  }

  private static Shot shot(
      String name,
      Class<? extends Screen> screen,
      java.util.function.Consumer<SampleWindow> arrange) {
    BiConsumer<SampleWindow, SampleJob> begun =
        (window, sample) -> {
          window.shell.context().open(sample.job);
          window.shell.context().navigator().show(ScreenId.BAGS);
          window.layOut();
          arrange.accept(window);
        };
    return new Shot(name, screen, window -> begun.accept(window, filled()));
  }

  /** A V8 whose left bank is open, with four bags. */
  private static SampleJob filled() {
    SampleJob sample = SampleJob.apart();
    BigParts parts = new BigParts(sample.job);
    parts.nameUsual();
    List<Integer> off = new ArrayList<>(List.of(1, 2, 5, 7, LEFT_COVER, LEFT_HEAD, DAMPER, PAN));
    off.forEach(number -> parts.off(number, "it was in the way"));
    parts.mark(LEFT_HEAD, "cast 1234, 2 dots at the rear");
    parts.decide(LEFT_HEAD, Decision.MACHINE, "it is warped");
    parts.move(LEFT_HEAD, Whereabouts.AT_SHOP, "");
    parts.move(LEFT_COVER, Whereabouts.WASHING, "");
    Bags bags = new Bags(sample.job);
    bags.fill(bag(1, "head bolts, long", LEFT_HEAD, 10, map()));
    bags.fill(bag(2, "valve cover bolts", LEFT_COVER, 6, List.of()));
    bags.fill(bag(3, "rod bolts and nuts", 0, 16, List.of()));
    bags.move(3, Whereabouts.AT_SHOP, 0, "");
    bags.fill(bag(4, "damper bolt with its large washer", DAMPER, 1, List.of()));
    new Photographing(sample.job).add(Optional.of(Subject.ofBigPart(LEFT_HEAD)), "", "p1.png", "");
    return sample;
  }

  private static BagFilled bag(
      int number, String what, int bigPart, int pieces, List<BoltHole> holes) {
    String where = bigPart == 0 ? "rods 1 to 8" : "";
    String order = number == 1 ? "bolt, hard washer, head" : "";
    AtAssembly with = number == 1 ? AtAssembly.SEALER : AtAssembly.NOT_SAID;
    return new BagFilled(number, what, bigPart, where, pieces, holes, order, with);
  }

  private static List<BoltHole> map() {
    List<BoltHole> holes = new ArrayList<>();
    for (int at = 0; at < 10; at++) {
      Amount length = Amount.of(at % 2 == 0 ? 2.5 : 3.75, Unit.INCH);
      holes.add(
          new BoltHole(
              at + 1,
              Optional.of(5 + at % 5 * 22),
              Optional.of(at < 5 ? 10 : 85),
              Optional.of(length)));
    }
    return holes;
  }

  private static void show(SampleWindow window, ScreenId id, int number) {
    window.shell.context().navigator().show(id, number);
  }

  private static void bigParts(SampleWindow window) {
    window.press("Big parts");
  }

  private static void holes(SampleWindow window) {
    show(window, ScreenId.BAG, 1);
    window.layOut();
    window.pressBelow("Holes");
  }

  private static void ask(SampleWindow window) {
    show(window, ScreenId.BIG_PART, 11);
    window.layOut();
    window.press("It is off");
  }

  private static void gaskets(SampleWindow window) {
    if (window.shell.context().touch().isLarge()) {
      window.press("More");
      window.pressOnSomePage("Always new");
    } else {
      window.press("Always new");
    }
  }
}
