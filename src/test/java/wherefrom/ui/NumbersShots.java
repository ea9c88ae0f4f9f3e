package wherefrom.ui;

import java.util.List;
import java.util.function.Consumer;
import wherefrom.job.measure.Instruments;
import wherefrom.job.numbers.NumbersSample;
import wherefrom.job.numbers.PlanBook;
import wherefrom.job.numbers.PlotSample;
import wherefrom.job.numbers.WorkingBook;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.numbers.AboutWorkingScreen;
import wherefrom.ui.numbers.ClearanceLimitsScreen;
import wherefrom.ui.numbers.FigureScreen;
import wherefrom.ui.numbers.NumbersScreen;
import wherefrom.ui.numbers.PlanFiguresScreen;
import wherefrom.ui.numbers.PlanScreen;
import wherefrom.ui.numbers.PlotsScreen;
import wherefrom.ui.numbers.RowsScreen;
import wherefrom.ui.numbers.SolveScreen;
import wherefrom.ui.numbers.WorkingScreen;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;
import wherefrom.workings.catalogue.compression.CompressionRatio;

/** The numbers, in the states worth looking at. */
final class NumbersShots {
  private NumbersShots() {}

  static List<Shot> all() {
    return List.of(
        shot("numbers", NumbersScreen.class),
        shot("numbers-working", WorkingScreen.class, NumbersShots::ratio),
        shot("numbers-about", AboutWorkingScreen.class, NumbersShots::ratio, "Formula|Source"),
        shot("numbers-solve", SolveScreen.class, NumbersShots::ratio, "Solve", "Chamber"),
        plan("numbers-plan", PlanScreen.class),
        plan("numbers-figures", PlanFiguresScreen.class, "Figures"),
        shot("numbers-figures-taken", PlanFiguresScreen.class, NumbersShots::toTakeOver),
        plan("numbers-figure", FigureScreen.class, "Figures", "Wanted"),
        plan("numbers-details", RowsScreen.class, "Shares"),
        plan("numbers-parts", RowsScreen.class, "Idea 3: what"),
        plan("numbers-plot", PlotsScreen.class, "Plots"),
        plan("numbers-plot-lift", PlotsScreen.class, "Plots", "Next plot"),
        shot("numbers-plot-clearance", PlotsScreen.class, NumbersShots::clearances),
        shot("numbers-plot-set", PlotsScreen.class, NumbersShots::set),
        plan("numbers-limits", ClearanceLimitsScreen.class, "Plots", "Clearance"));
  }

  private static Shot shot(String name, Class<? extends Screen> screen) {
    return shot(name, screen, window -> {});
  }

  private static Shot shot(
      String name,
      Class<? extends Screen> screen,
      Consumer<SampleWindow> arrange,
      String... presses) {
    return new Shot(
        name,
        screen,
        window -> {
          window.shell.context().open(SampleJob.apart().job);
          window.shell.context().navigator().show(ScreenId.NUMBERS);
          window.layOut();
          arrange.accept(window);
          for (String press : presses) {
            pressAny(window, press);
          }
        });
  }

  /** Presses the first target that begins with one of the words; the last is behind More. */
  private static void pressAny(SampleWindow window, String words) {
    List<String> shown = window.targets().stream().map(window::words).toList();
    for (String word : words.split("\\|", -1)) {
      if (shown.stream().anyMatch(each -> each.startsWith(word))) {
        window.press(word);
        return;
      }
    }
    String[] all = words.split("\\|", -1);
    window.pressBelow(all[all.length - 1]);
  }

  private static void ratio(SampleWindow window) {
    var context = window.shell.context();
    WorkingBook book = new WorkingBook(new CompressionRatio(), context.job());
    NumbersSample.figures()
        .forEach(
            (key, text) -> {
              if (book.working().card().findInput(key).isPresent()) {
                book.set(key, text);
              }
            });
    context.navigator().open(() -> new WorkingScreen(context, new CompressionRatio()));
    window.layOut();
  }

  private static Shot plan(String name, Class<? extends Screen> screen, String... presses) {
    return shot(
        name,
        screen,
        window -> {
          var context = window.shell.context();
          PlanBook book = new PlanBook(context.getJob());
          NumbersSample.now(book);
          book.add(1);
          book.set(1, "target", "9.5");
          book.add(2);
          book.set(2, "head-cut", "0.060 in");
          book.set(2, "lobe-lift", "0.330 in");
          book.add(3);
          book.set(3, "gasket-thickness", "0.028 in");
          window.press("The plan");
        },
        presses);
  }

  private static void clearances(SampleWindow window) {
    var context = window.shell.context();
    context.open(PlotSample.measured());
    new Instruments(context.getJob())
        .limit("main-journal", "clearance", "0.0010", "0.0025", "manual, page 6-12");
    context.navigator().open(() -> PlotsScreen.ofRecord(context));
    window.layOut();
  }

  private static void set(SampleWindow window) {
    clearances(window);
    for (int next = 0; next < 4; next++) {
      window.press("Next plot");
    }
  }

  /** Figures typed for a working wait to be taken into the plan. */
  private static void toTakeOver(SampleWindow window) {
    ratio(window);
    window.shell.context().navigator().back();
    window.layOut();
    window.press("The plan");
    window.pressBelow("Figures");
  }
}
