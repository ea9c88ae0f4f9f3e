package wherefrom.ui;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import wherefrom.inspection.Decision;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.job.before.BeforeTeardown;
import wherefrom.job.inspect.Castings;
import wherefrom.job.inspect.Inspecting;
import wherefrom.job.measure.Instruments;
import wherefrom.job.measure.Measuring;
import wherefrom.quantity.Dimension;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.before.BeforeScreen;
import wherefrom.ui.before.HeardScreen;
import wherefrom.ui.before.SignsScreen;
import wherefrom.ui.engine.EnginePageScreen;
import wherefrom.ui.inspect.CardScreen;
import wherefrom.ui.inspect.CastingsScreen;
import wherefrom.ui.measure.CompareScreen;
import wherefrom.ui.measure.ReadingsScreen;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/** Gauges on an engine that is still together, and what they point to. */
final class BeforeShots {
  private static final Subject RUNNING = new Subject.AFeature(Feature.RUNNING, "");

  private BeforeShots() {}

  static List<Shot> all() {
    return List.of(
        new Shot(
            "before-empty",
            BeforeScreen.class,
            window -> {
              ScreenContext context = window.shell.context();
              context.open(SampleJob.whole().job);
              context.navigator().open(() -> new BeforeScreen(context));
            }),
        shot("before", BeforeScreen.class, BeforeScreen::new),
        shot("before-signs", SignsScreen.class, SignsScreen::new),
        drawn("before-drawn", "Compression, dry"),
        drawn("before-drawn-leaks", "Where it leaks"),
        shot(
            "before-leaks",
            HeardScreen.class,
            context -> new HeardScreen(context, BeforeTeardown.cylinder(3))),
        shot("before-needle", HeardScreen.class, context -> new HeardScreen(context, RUNNING)),
        shot(
            "before-pressure",
            ReadingsScreen.class,
            context -> new ReadingsScreen(context, BeforeTeardown.cylinder(8), "compression-dry")),
        shot(
            "before-speed",
            ReadingsScreen.class,
            context -> new ReadingsScreen(context, RUNNING, "oil-hot-idle")),
        shot(
            "before-hint",
            CardScreen.class,
            context ->
                new CardScreen(
                    context, new Subject.AFeature(Feature.VALVE_SEAT, "3EX"), List.of())),
        shot(
            "before-photographs",
            CardScreen.class,
            context ->
                new CardScreen(context, new Subject.AFeature(Feature.OUTSIDE, ""), List.of())),
        shot(
            "valve-tip",
            CardScreen.class,
            context ->
                new CardScreen(context, new Subject.AFeature(Feature.VALVE_TIP, "3EX"), List.of())),
        new Shot("piston-valve", ReadingsScreen.class, window -> pistonValve(window, 3)),
        new Shot("piston-valve-read", ReadingsScreen.class, window -> pistonValve(window, 7)),
        shot("castings", CastingsScreen.class, CastingsScreen::new),
        shot(
            "castings-block",
            CardScreen.class,
            context -> new CardScreen(context, new Subject.AFeature(Feature.BLOCK, ""), List.of())),
        shot(
            "castings-chamber",
            CardScreen.class,
            context ->
                new CardScreen(context, new Subject.AFeature(Feature.CHAMBER, "B3"), List.of())),
        shot(
            "before-compared",
            CompareScreen.class,
            context ->
                new CompareScreen(
                    context,
                    wherefrom.inspection.measure.ReadingPlans.find("compression-dry")
                        .orElseThrow())));
  }

  /** The engine as an index: a tap on a cylinder reads it. */
  private static Shot drawn(String name, String key) {
    return new Shot(
        name,
        EnginePageScreen.class,
        window -> {
          ScreenContext context = window.shell.context();
          context.open(read().job);
          context.navigator().open(() -> new BeforeScreen(context));
          window.layOut();
          window.press(key);
        });
  }

  private static Shot shot(
      String name, Class<? extends Screen> screen, Function<ScreenContext, Screen> maker) {
    return new Shot(
        name,
        screen,
        window -> {
          ScreenContext context = window.shell.context();
          context.open(read().job);
          context.navigator().open(() -> maker.apply(context));
        });
  }

  /** So many of the seven readings of one valve. */
  private static void pistonValve(SampleWindow window, int readings) {
    SampleJob sample = SampleJob.apart();
    MeasureShots.mic(sample);
    String[] sizes = {"0.312", "0.230", "0.168", "0.126", "0.104", "0.102", "0.120"};
    Subject valve = new Subject.AFeature(Feature.VALVE_TIP, "3EX");
    MeasureShots.take(sample, valve, "piston-valve", Arrays.copyOf(sizes, readings));
    ScreenContext context = window.shell.context();
    context.open(sample.job);
    context.navigator().open(() -> new ReadingsScreen(context, valve, "piston-valve"));
  }

  /** Seven cylinders of eight read, the third low and leaking at the exhaust. */
  static SampleJob read() {
    SampleJob sample = SampleJob.whole();
    new Instruments(sample.job).list("GAUGE 0-200", Dimension.STRESS, "1", "2", "1");
    String[] dry = {"152", "148", "92", "150", "149", "151", "150"};
    for (int at = 0; at < dry.length; at++) {
      take(sample, BeforeTeardown.cylinder(at + 1), "compression-dry", "highest", dry[at]);
    }
    take(sample, BeforeTeardown.cylinder(3), "compression-wet", "highest", "93");
    take(sample, RUNNING, "oil-hot-idle", "pressure", "14");
    Inspecting looks = new Inspecting(sample.job);
    looks.answer(BeforeTeardown.cylinder(3), "leak-exhaust", Look.FAIL, "");
    looks.answer(BeforeTeardown.cylinder(3), "leak-intake", Look.PASS, "");
    looks.answer(RUNNING, "needle-beat", Look.FAIL, "");
    Subject block = new Subject.AFeature(Feature.BLOCK, "");
    looks.answer(block, "block-threads", Look.FAIL, "rear left, insert");
    new Castings(sample.job).decide("block@", Decision.MACHINE, "insert");
    return sample;
  }

  private static void take(
      SampleJob sample, Subject at, String plan, String station, String figure) {
    new Measuring(sample.job)
        .take(
            new Measuring.Entry(
                at, plan, "GAUGE 0-200", Map.of(station, List.of(figure)), true, ""));
  }
}
