package wherefrom.ui;

import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Function;
import wherefrom.inspection.Look;
import wherefrom.job.entry.PlaceExcused;
import wherefrom.job.inspect.DebrisBook;
import wherefrom.job.puttogether.ToFit;
import wherefrom.rules.debris.DebrisLook;
import wherefrom.rules.debris.DebrisPlace;
import wherefrom.rules.debris.Opening;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.debris.DebrisScreen;
import wherefrom.ui.debris.LookScreen;
import wherefrom.ui.debris.MainsScreen;
import wherefrom.ui.debris.NextScreen;
import wherefrom.ui.puttogether.FirstStartScreen;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/** The debris map, and what is seen to before the first start. */
final class DebrisShots {
  private DebrisShots() {}

  static List<Shot> all() {
    return List.of(
        shot("debris", DebrisScreen.class, DebrisScreen::new, (window, book) -> {}),
        shot(
            "debris-look",
            LookScreen.class,
            context -> new LookScreen(context, DebrisPlace.FILTER_PLEATS),
            (window, book) -> {}),
        shot("debris-next", NextScreen.class, NextScreen::new, (window, book) -> {}),
        shot("debris-mains", MainsScreen.class, MainsScreen::new, (window, book) -> {}),
        shot(
            "debris-mains-answered",
            MainsScreen.class,
            MainsScreen::new,
            (window, book) -> book.opened(Opening.ALL_BEARINGS, Look.PASS, "even gray")),
        new Shot("first-start", FirstStartScreen.class, DebrisShots::firstStart));
  }

  private static Shot shot(
      String name,
      Class<? extends Screen> screen,
      Function<ScreenContext, Screen> maker,
      BiConsumer<SampleWindow, DebrisBook> arrange) {
    return new Shot(
        name,
        screen,
        window -> {
          SampleJob sample = found();
          ScreenContext context = window.shell.context();
          context.open(sample.job);
          arrange.accept(window, new DebrisBook(sample.job));
          context.navigator().open(() -> maker.apply(context));
        });
  }

  private static SampleJob found() {
    SampleJob sample = SampleJob.apart();
    DebrisBook book = new DebrisBook(sample.job);
    book.found(DebrisPlace.PAN, DebrisLook.PLASTIC, "a spoonful");
    book.found(DebrisPlace.PAN, DebrisLook.GREY_PASTE, "");
    book.found(DebrisPlace.PICKUP_SCREEN, DebrisLook.PLASTIC, "");
    book.found(DebrisPlace.FILTER_PLEATS, DebrisLook.COPPER, "");
    book.opened(Opening.FILTER, Look.SUSPECT, "");
    return sample;
  }

  private static void firstStart(SampleWindow window) {
    SampleJob sample = found();
    sample.job.state().places().stream()
        .toList()
        .forEach(place -> sample.job.record(new PlaceExcused(place, "fitted at the shop")));
    ToFit missing = new ToFit(sample.job);
    missing.sections().forEach(missing::finish);
    ScreenContext context = window.shell.context();
    context.open(sample.job);
    context.navigator().open(() -> new FirstStartScreen(context));
  }
}
