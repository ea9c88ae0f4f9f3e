package wherefrom.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import wherefrom.inspection.Subject;
import wherefrom.job.change.Planning;
import wherefrom.job.handling.Handling;
import wherefrom.job.measure.Instruments;
import wherefrom.job.measure.Measuring;
import wherefrom.job.shop.MachineShop;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.Unit;
import wherefrom.rules.consequence.ChangeKind;
import wherefrom.rules.size.ChangeText;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.NewPartAsking;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;
import wherefrom.ui.shop.MatchScreen;
import wherefrom.ui.shop.RetagScreen;
import wherefrom.ui.shop.ShopScreen;
import wherefrom.ui.shop.TapScreen;
import wherefrom.ui.shop.VisitScreen;
import wherefrom.ui.shop.WashScreen;

/** Washing, the machine shop, and parts without their tags. */
final class ShopShots {
  private static final String[] ENDS = {"1IN", "1EX", "2IN", "2EX", "3IN"};

  private ShopShots() {}

  static List<Shot> all() {
    List<Shot> shots = new ArrayList<>();
    shots.add(shot("shop", ShopScreen.class, (window, sample) -> {}));
    shots.add(away("shop-away", ShopScreen.class, (window, sample) -> {}));
    shots.add(shot("shop-new", VisitScreen.class, (window, sample) -> window.press("New visit")));
    shots.add(
        away(
            "shop-put-on",
            VisitScreen.class,
            (window, sample) -> {
              window.pressOnSomePage("Visit 1");
              window.pressBelow("Add more");
              window.press("What is wanted?");
              window.press("Measure runout");
              scan(window, sample.tag("pushrod@5EX"));
            }));
    shots.add(
        shot(
            "shop-which-work",
            ChoiceScreen.class,
            (window, sample) -> {
              window.press("New visit");
              window.pressBelow("Crank, block");
            }));
    shots.add(
        shot(
            "shop-work-where",
            ChoiceScreen.class,
            (window, sample) -> {
              window.press("New visit");
              window.pressBelow("Crank, block");
              window.pressOnSomePage("Bore");
            }));
    shots.add(
        shot(
            "shop-new-size",
            ChoiceScreen.class,
            (window, sample) -> {
              new Planning(sample.job)
                  .make(ChangeText.read(ChangeKind.ROD_JOURNALS_GROUND, "", "0.010 in", Unit.INCH));
              NewPartAsking.ask(window.shell.context(), sample.part("rod-shell@R3U"), part -> {});
            }));
    shots.add(
        away(
            "shop-check-in",
            VisitScreen.class,
            (window, sample) -> window.pressOnSomePage("Visit 1")));
    shots.add(
        away(
            "shop-tap",
            TapScreen.class,
            (window, sample) -> {
              window.pressOnSomePage("Visit 1");
              window.pressBelow("Tap");
            }));
    shots.add(
        away(
            "shop-washing",
            WashScreen.class,
            (window, sample) -> {
              window.pressOnSomePage("Off for washing");
              scan(window, sample.tag("pushrod@7EX"));
            }));
    shots.add(
        shot(
            "shop-washing-none",
            WashScreen.class,
            (window, sample) -> window.pressBelow("Washing")));
    shots.add(
        shot(
            "shop-tags-unmeasured",
            RetagScreen.class,
            (window, sample) -> window.pressBelow("Tags lost")));
    shots.add(
        away("shop-tags", RetagScreen.class, (window, sample) -> window.pressBelow("Tags lost")));
    shots.add(
        away(
            "shop-tags-read",
            RetagScreen.class,
            (window, sample) -> {
              window.pressBelow("Tags lost");
              measure(window);
            }));
    shots.add(
        away(
            "shop-tags-told",
            MatchScreen.class,
            (window, sample) -> {
              window.pressBelow("Tags lost");
              measure(window);
              window.pressBelow("Which is");
              window.pressOnSomePage("Number 3");
              window.press("Yes");
            }));
    return shots;
  }

  private static void measure(SampleWindow window) {
    for (String figures : List.of("79212", "79213", "7951", "7813")) {
      window.press("Measure number");
      type(window, figures);
    }
  }

  private static void type(SampleWindow window, String figures) {
    window.press(figures.substring(0, 1));
    ((wherefrom.ui.app.Typable) window.shell.current()).type(".");
    for (int at = 1; at < figures.length(); at++) {
      window.press(figures.substring(at, at + 1));
    }
    window.press("Done");
  }

  private static Shot away(
      String name, Class<? extends Screen> screen, BiConsumer<SampleWindow, SampleJob> arrange) {
    return new Shot(
        name,
        screen,
        window -> {
          SampleJob sample = SampleJob.apart();
          sendAway(sample);
          show(window, sample, arrange);
        });
  }

  private static Shot shot(
      String name, Class<? extends Screen> screen, BiConsumer<SampleWindow, SampleJob> arrange) {
    return new Shot(name, screen, window -> show(window, SampleJob.apart(), arrange));
  }

  private static void show(
      SampleWindow window, SampleJob sample, BiConsumer<SampleWindow, SampleJob> arrange) {
    window.shell.context().open(sample.job);
    window.shell.context().navigator().show(ScreenId.MACHINE_SHOP);
    window.layOut();
    arrange.accept(window, sample);
  }

  /** Measured parts in baskets, and a visit of which something is back. */
  private static void sendAway(SampleJob sample) {
    new Instruments(sample.job).list("caliper", Dimension.LENGTH, "0.0005", "0.001", "0.0005");
    String[] lengths = {"7.9000", "7.9210", "7.9214", "7.9500", "8.0100"};
    for (int at = 0; at < ENDS.length; at++) {
      int item = sample.part("pushrod@" + ENDS[at]).item();
      new Measuring(sample.job)
          .take(
              new Measuring.Entry(
                  Subject.ofPart(item),
                  "pushrod-length",
                  "caliper",
                  Map.of("length", List.of(lengths[at])),
                  false,
                  ""));
      new Handling(sample.job).offForWashing(item, at < 3 ? 4 : 7);
    }
    MachineShop shop = new MachineShop(sample.job);
    shop.add(1, "block", 1, "bore and hone to", "3.8900", "0.0005", false);
    shop.add(1, "main cap bolts", 10, "come back with the rest", "", "", true);
    List<Integer> shells =
        List.of(sample.part("rod-shell@R3U").item(), sample.part("rod-shell@R3L").item());
    shop.send(1, shells, "measure the wall");
    shop.backByScan(shells.get(0), "");
    shop.backByCount(1, 2, 7, "", "");
  }

  private static void scan(SampleWindow window, String digits) {
    window.scan(digits);
    window.shell.context().navigator().changed();
  }
}
