package wherefrom.ui;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Subject;
import wherefrom.inspection.measure.ClearancePair;
import wherefrom.inspection.measure.ClearancePairs;
import wherefrom.inspection.measure.ReadingPlan;
import wherefrom.inspection.measure.ReadingPlans;
import wherefrom.job.measure.Instruments;
import wherefrom.job.measure.Measuring;
import wherefrom.job.numbers.BobWeight;
import wherefrom.job.numbers.Ring;
import wherefrom.job.numbers.RingFiling;
import wherefrom.quantity.Dimension;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.measure.ClearanceScreen;
import wherefrom.ui.measure.ClearancesScreen;
import wherefrom.ui.measure.CompareScreen;
import wherefrom.ui.measure.LimitsScreen;
import wherefrom.ui.measure.MeasureScreen;
import wherefrom.ui.measure.PairScreen;
import wherefrom.ui.measure.ReadingsScreen;
import wherefrom.ui.measure.RingScreen;
import wherefrom.ui.measure.RingsScreen;
import wherefrom.ui.measure.SizeScreen;
import wherefrom.ui.measure.ToolsScreen;
import wherefrom.ui.measure.WeightsScreen;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/** Measuring, in the states worth looking at. */
final class MeasureShots {
  private static final Subject JOURNAL = new Subject.AFeature(Feature.MAIN_JOURNAL, "M2");

  private MeasureShots() {}

  static List<Shot> all() {
    List<Shot> shots = new ArrayList<>();
    shots.add(shot("measure", MeasureScreen.class, (window, sample) -> show(window)));
    shots.add(shot("measure-no-tool", ReadingsScreen.class, MeasureShots::journal));
    shots.add(shot("measure-half-way", ReadingsScreen.class, MeasureShots::halfWay));
    shots.add(shot("measure-asked", ReadingsScreen.class, MeasureShots::asked));
    shots.add(shot("measure-undecided", ReadingsScreen.class, MeasureShots::undecided));
    shots.add(shot("measure-crown", ReadingsScreen.class, MeasureShots::crown));
    shots.add(shot("measure-runout", ReadingsScreen.class, MeasureShots::runout));
    shots.add(shot("measure-tools", ToolsScreen.class, MeasureShots::tools));
    shots.add(shot("measure-limits", LimitsScreen.class, MeasureShots::limits));
    shots.add(shot("measure-size", SizeScreen.class, MeasureShots::size));
    shots.add(shot("measure-pair", SizeScreen.class, MeasureShots::pair));
    shots.add(shot("measure-pair-wrong", ToolsScreen.class, MeasureShots::wrongPair));
    shots.add(shot("measure-clearance", ClearanceScreen.class, MeasureShots::clearance));
    shots.add(shot("measure-clearances", ClearancesScreen.class, MeasureShots::clearances));
    shots.add(shot("measure-fit", PairScreen.class, MeasureShots::fit));
    shots.add(shot("measure-rings-empty", RingsScreen.class, MeasureShots::openRings));
    shots.add(shot("measure-rings", RingsScreen.class, MeasureShots::rings));
    shots.add(shot("measure-ring", RingScreen.class, MeasureShots::ring));
    shots.add(shot("measure-weights", WeightsScreen.class, MeasureShots::weights));
    shots.add(shot("measure-studs", CompareScreen.class, MeasureShots::studs));
    shots.add(shot("measure-pushrods", CompareScreen.class, MeasureShots::pushrods));
    return shots;
  }

  private static Shot shot(
      String name, Class<? extends Screen> screen, BiConsumer<SampleWindow, SampleJob> arrange) {
    return Shot.of(name, screen, SampleJob::apart, arrange);
  }

  private static void show(SampleWindow window) {
    window.shell.context().navigator().show(ScreenId.MEASURE);
  }

  private static void open(SampleWindow window, Subject subject, String plan) {
    ScreenContext context = window.shell.context();
    context.navigator().open(() -> new ReadingsScreen(context, subject, plan));
  }

  private static void journal(SampleWindow window, SampleJob sample) {
    open(window, JOURNAL, "main-journal");
  }

  static void mic(SampleJob sample) {
    new Instruments(sample.job).list("MIC 2-3", Dimension.LENGTH, "0.0001", "0.0001", "0.0001");
  }

  static void take(SampleJob sample, Subject subject, String plan, String... sizes) {
    ReadingPlan readings = ReadingPlans.find(plan).orElseThrow();
    Map<String, List<String>> taken = new LinkedHashMap<>();
    for (int at = 0; at < sizes.length; at++) {
      taken.put(readings.stations().get(at).key(), List.of(sizes[at]));
    }
    new Measuring(sample.job).take(new Measuring.Entry(subject, plan, "MIC 2-3", taken, true, ""));
  }

  private static void halfWay(SampleWindow window, SampleJob sample) {
    mic(sample);
    take(sample, JOURNAL, "main-journal", "2.6100", "2.6098");
    journal(window, sample);
    type(window, "2.61");
  }

  private static void type(SampleWindow window, String figures) {
    window.layOut();
    figures.chars().forEach(figure -> window.press(Character.toString(figure)));
  }

  private static void asked(SampleWindow window, SampleJob sample) {
    mic(sample);
    journal(window, sample);
    type(window, "66.29");
    window.press("Take");
  }

  private static void undecided(SampleWindow window, SampleJob sample) {
    mic(sample);
    Instruments tools = new Instruments(sample.job);
    tools.zero("MIC 2-3", "0.0000");
    tools.limit("main-journal", "out-of-round", "", "0.0005", "Manual, page 6-12");
    tools.limit("main-journal", "taper", "", "0.0020", "Manual, page 6-12");
    take(sample, JOURNAL, "main-journal", "2.6100", "2.6096", "2.6099", "2.6097");
    journal(window, sample);
  }

  private static void crown(SampleWindow window, SampleJob sample) {
    mic(sample);
    open(window, Subject.ofPart(sample.part("lifter@3EX").item()), "lifter-crown");
    type(window, "2.0134");
  }

  /** The plan that has the most to say. */
  private static void runout(SampleWindow window, SampleJob sample) {
    mic(sample);
    open(window, Subject.ofPart(sample.part("pushrod@3EX").item()), "pushrod-runout");
  }

  private static void tools(SampleWindow window, SampleJob sample) {
    mic(sample);
    Instruments tools = new Instruments(sample.job);
    tools.list("Caliper 150", Dimension.LENGTH, "0.01 mm", "0.02 mm", "0.01 mm");
    tools.zero("MIC 2-3", "0.0000");
    ScreenContext context = window.shell.context();
    context.navigator().open(() -> new ToolsScreen(context));
  }

  private static void limits(SampleWindow window, SampleJob sample) {
    Instruments tools = new Instruments(sample.job);
    tools.limit("main-journal", "clearance", "0.0010", "0.0025", "Manual, page 6-12");
    tools.limit("pushrod-runout", "value", "", "0.002", "common practice, no source");
    tools.size("bore", "3.8700", "Manual, page 6-3");
    ScreenContext context = window.shell.context();
    context.navigator().open(() -> new LimitsScreen(context));
  }

  private static void size(SampleWindow window, SampleJob sample) {
    mic(sample);
    ScreenContext context = window.shell.context();
    context.navigator().open(() -> new ToolsScreen(context));
    window.layOut();
    window.press("MIC 2-3");
  }

  private static void pair(SampleWindow window, SampleJob sample) {
    tools(window, sample);
    window.layOut();
    window.pressBelow("Check a printed pair");
    type(window, "0.004");
    window.press("Done");
  }

  private static void wrongPair(SampleWindow window, SampleJob sample) {
    pair(window, sample);
    type(window, "0.01");
    window.press("Done");
  }

  private static void clearances(SampleWindow window, SampleJob sample) {
    lifters(sample);
    ScreenContext context = window.shell.context();
    context.navigator().open(() -> new ClearancesScreen(context));
  }

  private static void fit(SampleWindow window, SampleJob sample) {
    lifters(sample);
    ScreenContext context = window.shell.context();
    ClearancePair pair = ClearancePairs.find("lifter-to-bore").orElseThrow();
    context.navigator().open(() -> new PairScreen(context, pair));
  }

  private static void weights(SampleWindow window, SampleJob sample) {
    ScreenContext context = window.shell.context();
    new BobWeight(sample.job).set(BobWeight.Typed.SHELLS, "45 g");
    context.navigator().open(() -> new WeightsScreen(context));
  }

  private static void openRings(SampleWindow window, SampleJob sample) {
    ScreenContext context = window.shell.context();
    context.navigator().open(() -> new RingsScreen(context));
  }

  /** One done, one to file, one near, the others not measured. */
  private static void rings(SampleWindow window, SampleJob sample) {
    mic(sample);
    new Instruments(sample.job).size("bore", "3.8700", "Manual, page 6-3");
    RingFiling filing = new RingFiling(sample.job);
    filing.wantPerBore(Ring.TOP, "0.004", "");
    filing.wantGap(Ring.SECOND, "0.0140", "Ring maker's sheet 7");
    take(sample, new Subject.AFeature(Feature.RINGS, "B1"), "ring-gap", "0.0170", "0.0140");
    take(sample, new Subject.AFeature(Feature.RINGS, "B2"), "ring-gap", "0.0120", "0.0110");
    filing.tick("B1", Ring.TOP);
    openRings(window, sample);
  }

  private static void ring(SampleWindow window, SampleJob sample) {
    rings(window, sample);
    window.layOut();
    window.press("Next");
  }

  /** One is well, one is too near its limit to say, of one only the bore is read. */
  private static void lifters(SampleJob sample) {
    mic(sample);
    new Instruments(sample.job).limit("lifter-to-bore", "clearance", "", "0.0020", "Manual, 6-3");
    for (String where : List.of("1IN", "1EX", "2IN")) {
      Subject bore = new Subject.AFeature(Feature.LIFTER_BORE, where);
      take(sample, bore, "lifter-bore", "0.8432", "0.8432", "0.8431", "0.8431");
    }
    lifter(sample, "1IN", "0.8422");
    lifter(sample, "1EX", "0.8413");
  }

  private static void lifter(SampleJob sample, String where, String size) {
    Subject lifter = Subject.ofPart(sample.part("lifter@" + where).item());
    take(sample, lifter, "lifter-diameter", size, size, size, size);
  }

  private static void clearance(SampleWindow window, SampleJob sample) {
    mic(sample);
    take(sample, JOURNAL, "main-journal", "2.6100", "2.6100", "2.6100", "2.6100");
    Subject housing = new Subject.AFeature(Feature.MAIN_HOUSING, "M2");
    take(sample, housing, "main-housing", "2.8013", "2.8012", "2.8011");
    for (String half : List.of("U", "L")) {
      Subject shell = Subject.ofPart(sample.part("main-shell@M2" + half).item());
      take(sample, shell, "main-shell-wall", "0.0945", "0.0945", "0.0945");
    }
    new Instruments(sample.job)
        .limit("main-journal", "clearance", "0.0010", "0.0025", "Manual, page 6-12");
    ScreenContext context = window.shell.context();
    context.navigator().open(() -> new ClearanceScreen(context));
  }

  private static void studs(SampleWindow window, SampleJob sample) {
    mic(sample);
    List<String> heights =
        List.of("1.7510", "1.7512", "1.7509", "1.7511", "1.7630", "1.7510", "1.7513", "1.7508");
    List<String> spots = List.of("1IN", "1EX", "3IN", "3EX", "5IN", "5EX", "7IN", "7EX");
    for (int at = 0; at < spots.size(); at++) {
      Subject stud = new Subject.AFeature(Feature.STUD, spots.get(at));
      take(sample, stud, "stud-height", heights.get(at));
    }
    compare(window, "stud-height");
  }

  private static void pushrods(SampleWindow window, SampleJob sample) {
    mic(sample);
    int at = 0;
    for (int cylinder = 1; cylinder <= 8; cylinder++) {
      for (String side : List.of("IN", "EX")) {
        Subject rod = Subject.ofPart(sample.part("pushrod@" + cylinder + side).item());
        String size = at == 9 ? "7.7860" : "7.79" + (40 + at % 5);
        take(sample, rod, "pushrod-length", size);
        at++;
      }
    }
    compare(window, "pushrod-length");
  }

  private static void compare(SampleWindow window, String plan) {
    ScreenContext context = window.shell.context();
    context
        .navigator()
        .open(() -> new CompareScreen(context, ReadingPlans.find(plan).orElseThrow()));
  }
}
