package wherefrom.ui;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.job.inspect.Inspecting;
import wherefrom.job.photos.Photograph;
import wherefrom.job.photos.Photographing;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.inspect.CardScreen;
import wherefrom.ui.photos.OfferScreen;
import wherefrom.ui.photos.PhotoScreen;
import wherefrom.ui.photos.PhotosScreen;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;
import wherefrom.ui.subject.GridScreen;

/** Photographs, in the states worth looking at. */
final class PhotoShots {
  private static final Subject LOBE = new Subject.AFeature(Feature.LOBE, "3EX");
  private static final Subject DECK = new Subject.AFeature(Feature.DECK, "left");

  private PhotoShots() {}

  static List<Shot> all() {
    return List.of(
        shot("photos", PhotosScreen.class, PhotoShots::several),
        shot("photos-none", PhotosScreen.class, PhotoShots::none),
        shot("photos-of", GridScreen.class, PhotoShots::index),
        shot("photo-large", PhotoScreen.class, (window, sample) -> large(window, 1)),
        shot("photo-offer", OfferScreen.class, PhotoShots::offer),
        shot("photo-gone", PhotoScreen.class, (window, sample) -> large(window, 2)),
        shot("photo-card", CardScreen.class, PhotoShots::card));
  }

  private static Shot shot(
      String name, Class<? extends Screen> screen, BiConsumer<SampleWindow, SampleJob> arrange) {
    return new Shot(
        name,
        screen,
        window -> {
          SampleJob sample = SampleJob.apart();
          window.shell.context().open(sample.job);
          Photographing photos = new Photographing(sample.job);
          photos.add(Optional.of(LOBE), "", "p1.png", "the nose, flat at its rear edge");
          photos.add(Optional.of(LOBE), "lobe-look", "tall2.png", "");
          photos.add(Optional.of(LOBE), "", "gone3.png", "");
          photos.add(Optional.of(DECK), "", "p4.png", "");
          arrange.accept(window, sample);
          window.layOut();
        });
  }

  private static void several(SampleWindow window, SampleJob sample) {
    for (int at = 5; at < 22; at++) {
      String name = (at % 3 == 0 ? "tall" : "p") + at + ".png";
      new Photographing(sample.job).add(Optional.of(LOBE), "", name, "");
    }
    ScreenContext context = window.shell.context();
    context.navigator().open(() -> PhotosScreen.of(context, LOBE, "3 EX cam lobe"));
  }

  private static void none(SampleWindow window, SampleJob sample) {
    ScreenContext context = window.shell.context();
    Subject bore = new Subject.AFeature(Feature.LIFTER_BORE, "3EX");
    context.navigator().open(() -> PhotosScreen.of(context, bore, "3 EX lifter bore"));
  }

  private static void index(SampleWindow window, SampleJob sample) {
    window.shell.context().navigator().show(ScreenId.BENCH_MAP);
    window.layOut();
    if (window.shell.context().touch().isLarge()) {
      window.press("More");
      window.pressOnSomePage("Photo");
      return;
    }
    window.press("Photo");
  }

  private static void large(SampleWindow window, int number) {
    ScreenContext context = window.shell.context();
    context
        .navigator()
        .open(
            () -> new PhotoScreen(context, () -> Photograph.listOf(context.state(), LOBE), number));
  }

  private static void offer(SampleWindow window, SampleJob sample) {
    ScreenContext context = window.shell.context();
    List<Path> files = List.of(Path.of("p9.png"), Path.of("tall9.png"));
    OfferScreen.ask(context, files, Optional.empty(), "Read the folder again.");
  }

  private static void card(SampleWindow window, SampleJob sample) {
    Subject lifter = Subject.ofPart(sample.part("lifter@3EX").item());
    new Inspecting(sample.job).answer(lifter, "lifter-wheel", Look.PASS, "");
    Photographing photos = new Photographing(sample.job);
    photos.add(Optional.of(lifter), "lifter-foot", "p.png", "");
    photos.add(Optional.of(lifter), "lifter-foot", "tall.png", "");
    ScreenContext context = window.shell.context();
    context.navigator().open(() -> new CardScreen(context, lifter, List.of()));
  }
}
