package wherefrom.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Supplier;
import wherefrom.drawing.View;
import wherefrom.engine.Arrangement;
import wherefrom.engine.Bank;
import wherefrom.engine.Layout;
import wherefrom.engine.LifterType;
import wherefrom.engine.ReadyLayouts;
import wherefrom.engine.RockerMount;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.job.bags.BigParts;
import wherefrom.job.entry.PartOut;
import wherefrom.job.entry.SentToShop;
import wherefrom.job.handling.Handling;
import wherefrom.job.inspect.Inspecting;
import wherefrom.job.measure.Instruments;
import wherefrom.job.photos.Photographing;
import wherefrom.parts.PartKind;
import wherefrom.parts.Whereabouts;
import wherefrom.rules.consequence.ShopWork;
import wherefrom.text.Words;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.benchmap.BenchMapScreen;
import wherefrom.ui.engine.CylinderPageScreen;
import wherefrom.ui.engine.EnginePageScreen;
import wherefrom.ui.engine.EnginePages;
import wherefrom.ui.engine.MainsPageScreen;
import wherefrom.ui.engine.PartIndex;
import wherefrom.ui.engine.PlaceListScreen;
import wherefrom.ui.part.PartDetailsScreen;
import wherefrom.ui.part.PartScreen;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/** The engine's pages of every ready layout, the bench with few kinds and with all. */
final class EngineShots {
  private EngineShots() {}

  static List<Shot> all() {
    List<Shot> shots = new ArrayList<>();
    for (String name : ReadyLayouts.all().stream().map(layout -> layout.name()).toList()) {
      Supplier<SampleJob> job = () -> some(SampleJob.whole(name, PartKind.alwaysOn()));
      shots.add(page("engine-above-" + name, job, View.ABOVE, Optional.empty()));
      shots.add(page("engine-below-" + name, job, View.BELOW, Optional.empty()));
    }
    Supplier<SampleJob> odd = () -> some(SampleJob.whole(odd(), PartKind.all()));
    shots.add(page("engine-above-odd", odd, View.ABOVE, Optional.empty()));
    shots.add(page("engine-below-odd", odd, View.BELOW, Optional.empty()));
    Supplier<SampleJob> all = () -> some(SampleJob.whole("v8-odd-even", PartKind.all()));
    shots.add(page("engine-kind-pushrods", all, View.ABOVE, Optional.of(PartKind.PUSHROD)));
    shots.add(page("engine-kind-shells", all, View.BELOW, Optional.of(PartKind.MAIN_SHELL)));
    shots.add(page("engine-kind-cam", all, View.ABOVE, Optional.of(PartKind.CAM_BEARING)));
    shots.add(tapped("engine-cylinder", CylinderPageScreen.class, all, View.ABOVE, "cylinder 3"));
    shots.add(tapped("engine-mains", MainsPageScreen.class, all, View.BELOW, "M2"));
    shots.add(page("engine-kind-pivots", all, View.ABOVE, Optional.of(PartKind.PIVOT)));
    Supplier<SampleJob> away = EngineShots::headAway;
    shots.add(page("engine-head-away", away, View.ABOVE, Optional.empty()));
    shots.add(
        tapped("engine-cylinder-away", CylinderPageScreen.class, away, View.ABOVE, "cylinder 3"));
    Supplier<SampleJob> few = EngineShots::few;
    shots.add(shot("bench-few", BenchMapScreen.class, few, (window, sample) -> bench(window)));
    shots.add(shot("bench-all", BenchMapScreen.class, all, (window, sample) -> bench(window)));
    shots.add(shot("bench-rods", BenchMapScreen.class, all, (window, sample) -> rods(window)));
    shots.add(shot("bench-list", PlaceListScreen.class, few, (window, sample) -> list(window)));
    Supplier<SampleJob> bent = EngineShots::bent;
    shots.add(shot("part-bent", PartScreen.class, bent, EngineShots::part));
    shots.add(shot("part-all", PartDetailsScreen.class, bent, EngineShots::known));
    return shots;
  }

  /** A pushrod that hopped when it was rolled, measured, photographed. */
  private static SampleJob bent() {
    SampleJob sample = SampleJob.apart();
    Subject pushrod = Subject.ofPart(sample.part("pushrod@3EX").item());
    new Inspecting(sample.job)
        .answer(pushrod, "pushrod-roll", Look.SUSPECT, "bow, seen when rolled");
    MeasureShots.mic(sample);
    Instruments tools = new Instruments(sample.job);
    tools.zero("MIC 2-3", "0.0000");
    tools.limit("pushrod-runout", "value", "", "0.002", "common practice, no source");
    MeasureShots.take(sample, pushrod, "pushrod-runout", "0.0030");
    Photographing photos = new Photographing(sample.job);
    photos.add(Optional.of(pushrod), "", "p1.png", "bent");
    photos.add(Optional.of(pushrod), "", "tall2.png", "");
    return sample;
  }

  private static void part(SampleWindow window, SampleJob sample) {
    int item = sample.part("pushrod@3EX").item();
    window.shell.context().navigator().show(ScreenId.PART, item);
  }

  private static void known(SampleWindow window, SampleJob sample) {
    part(window, sample);
    window.layOut();
    window.press("More");
    window.press("All that is known");
  }

  /** A V of five and four on shaft rockers with roller lifters, six mains. */
  private static Layout odd() {
    return new Layout(
        "v9",
        "V9",
        Arrangement.V,
        72,
        List.of(
            new Bank("left", List.of(1, 2, 3, 4), "EIIEEIIE"),
            new Bank("right", List.of(5, 6, 7, 8, 9), "IEEIIEEIIE")),
        "right",
        List.of(1, 9, 2, 8, 3, 7, 4, 6, 5),
        6,
        3,
        true,
        9,
        6,
        LifterType.ROLLER,
        RockerMount.SHAFT);
  }

  /** Some parts out, some away, one lost. */
  private static SampleJob some(SampleJob sample) {
    for (String key : List.of("rocker@1EX", "rocker@1IN", "pushrod@1EX", "rocker@2EX")) {
      out(sample, key);
    }
    List.of("pivot@1EX", "pivot@1IN").stream()
        .filter(key -> sample.job.state().kinds().contains(PartKind.PIVOT))
        .forEach(key -> out(sample, key));
    List.of("rod-shell@R2L", "rod-shell@R2U", "main-shell@M2L").forEach(key -> out(sample, key));
    new Handling(sample.job).offForWashing(sample.part("rocker@2EX").item(), 4);
    return sample;
  }

  /** The left head is at the machine shop, its rockers, pivots and pushrods are out. */
  private static SampleJob headAway() {
    SampleJob sample = some(SampleJob.whole("v8-odd-even", PartKind.all()));
    for (int cylinder : new int[] {1, 3, 5, 7}) {
      for (String kind : List.of("rocker@", "pivot@", "pushrod@")) {
        for (String side : List.of("EX", "IN")) {
          out(sample, kind + cylinder + side);
        }
      }
    }
    BigParts parts = new BigParts(sample.job);
    parts.nameUsual();
    parts.off(10, "for the picture");
    parts.move(10, Whereabouts.AT_SHOP, "");
    return sample;
  }

  private static void out(SampleJob sample, String place) {
    sample.job.record(new PartOut(sample.part(place).item()));
  }

  private static SampleJob few() {
    SampleJob sample = SampleJob.apart();
    Handling handling = new Handling(sample.job);
    handling.offForWashing(sample.part("pushrod@6EX").item(), 4);
    handling.lost(sample.part("pushrod@2IN").item(), "fell behind the bench");
    int bent = sample.part("pushrod@3EX").item();
    sample.job.record(new SentToShop(1, List.of(bent), "measure runout", ShopWork.OTHER));
    return sample;
  }

  private static Shot page(
      String name, Supplier<SampleJob> job, View side, Optional<PartKind> kind) {
    return shot(name, EnginePageScreen.class, job, (window, sample) -> open(window, side, kind));
  }

  private static void open(SampleWindow window, View side, Optional<PartKind> kind) {
    ScreenContext context = window.shell.context();
    new EnginePages(context, new PartIndex(context, kind)).open(side);
  }

  private static Shot tapped(
      String name,
      Class<? extends Screen> screen,
      Supplier<SampleJob> job,
      View side,
      String words) {
    return shot(
        name,
        screen,
        job,
        (window, sample) -> {
          open(window, side, Optional.empty());
          window.layOut();
          boolean each =
              window.targets().stream().anyMatch(node -> window.words(node).startsWith(words));
          window.press(each ? words : "Mains");
        });
  }

  private static void bench(SampleWindow window) {
    kind(window, "pushrods");
  }

  private static void kind(SampleWindow window, String plural) {
    window.shell.context().navigator().show(ScreenId.BENCH_MAP);
    window.layOut();
    if (window.shell.context().touch().isLarge()) {
      window.press("Rockers");
      window.pressOnSomePage(plural);
    } else {
      window.press(Words.capital(plural));
    }
  }

  private static void rods(SampleWindow window) {
    kind(window, "rod shells");
  }

  private static void list(SampleWindow window) {
    bench(window);
    window.layOut();
    window.press("13 bench");
  }

  private static Shot shot(
      String name,
      Class<? extends Screen> screen,
      Supplier<SampleJob> job,
      BiConsumer<SampleWindow, SampleJob> arrange) {
    return Shot.of(name, screen, job, arrange);
  }
}
