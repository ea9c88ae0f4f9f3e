package wherefrom.ui;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.job.entry.OffForWashing;
import wherefrom.job.entry.PartOut;
import wherefrom.job.entry.SentToShop;
import wherefrom.job.puttogether.PutTogether;
import wherefrom.rules.consequence.ShopWork;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.FailedScreen;
import wherefrom.ui.app.NumberEntryScreen;
import wherefrom.ui.app.RestOfRailScreen;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.app.TextEntryScreen;
import wherefrom.ui.files.FilesScreen;
import wherefrom.ui.home.BetweenScreen;
import wherefrom.ui.home.JobHomeScreen;
import wherefrom.ui.home.MoreScreen;
import wherefrom.ui.jobs.JobListScreen;
import wherefrom.ui.jobs.JobsScreen;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/** Every screen, in the states worth looking at. A new screen gets a line here. */
final class Gallery {
  /** By then a message was read, and goes with the next press. */
  private static final long LATER = 2_000_000_000L;

  private Gallery() {}

  /** The one of a name. */
  static Shot shot(String name) {
    return all().stream().filter(one -> one.name().equals(name)).findFirst().orElseThrow();
  }

  static List<Shot> all() {
    List<Shot> shots = new ArrayList<>();
    shots.add(new Shot("jobs", JobsScreen.class, Gallery::jobs));
    shots.add(new Shot("jobs-none", JobsScreen.class, window -> {}));
    shots.add(new Shot("text-entry", TextEntryScreen.class, Gallery::text));
    shots.add(new Shot("number-entry", NumberEntryScreen.class, Gallery::number));
    shots.add(new Shot("choice", ChoiceScreen.class, Gallery::choice));
    shots.add(new Shot("jobs-one", JobsScreen.class, Gallery::oneJob));
    shots.add(new Shot("job-list", JobListScreen.class, Gallery::jobList));
    shots.add(new Shot("job-home", JobHomeScreen.class, Gallery::jobHome));
    shots.add(new Shot("job-home-first", JobHomeScreen.class, Gallery::firstHome));
    shots.add(new Shot("job-home-stop", JobHomeScreen.class, Gallery::stopHome));
    shots.add(new Shot("job-home-more", MoreScreen.class, Gallery::more));
    shots.add(new Shot("jobs-stick-away", JobsScreen.class, Gallery::stickAway));
    shots.add(new Shot("job-home-stick-away", JobHomeScreen.class, Gallery::jobHomeStickAway));
    shots.add(new Shot("between", BetweenScreen.class, Gallery::between));
    shots.add(new Shot("files", FilesScreen.class, Gallery::files));
    shots.add(new Shot("failed", FailedScreen.class, Gallery::failed));
    shots.addAll(MachineShots.all());
    shots.addAll(NewJobShots.all());
    shots.addAll(AnswerShots.all());
    shots.addAll(TogetherShots.all());
    shots.addAll(WorkShots.all());
    shots.addAll(ShopShots.all());
    shots.addAll(MoneyShots.all());
    shots.addAll(NumbersShots.all());
    shots.addAll(DecideShots.all());
    shots.addAll(TorqueShots.all());
    shots.addAll(TimingShots.all());
    shots.addAll(ChangesShots.all());
    shots.addAll(DebrisShots.all());
    shots.addAll(BeforeShots.all());
    shots.addAll(TrayShots.all());
    shots.addAll(PhotoShots.all());
    shots.addAll(InspectShots.all());
    shots.addAll(MeasureShots.all());
    shots.addAll(CameraShots.all());
    shots.addAll(EngineShots.all());
    shots.addAll(BagShots.all());
    shots.addAll(PhoneShots.all());
    shots.addAll(SharedShots.all());
    shots.addAll(ServiceShots.all());
    return shots;
  }

  /** A job was put away, and the stick for its copy is not there. */
  private static void stickAway(SampleWindow window) {
    ScreenContext context = window.shell.context();
    context.change(context.settings().withSecondCopy(Optional.of(Path.of("/media/stick/engines"))));
    SampleJob sample = SampleJob.apart();
    window.services.shelf.put(sample.job.folder().toString(), sample.job);
    context.open(sample.job);
    window.layOut();
    window.nanos.addAndGet(LATER);
    window.pressRail("Jobs");
  }

  private static void jobHomeStickAway(SampleWindow window) {
    stickAway(window);
    window.shell.context().open(SampleJob.apart().job);
  }

  private static void jobs(SampleWindow window) {
    window
        .services
        .shelf
        .put("launch", SampleJob.whole().job)
        .put("second", SampleJob.apart().job)
        .putDamaged("spoilt", "The logbook is damaged in line 12. Bring it back from its copy.");
    window.shell.context().navigator().home();
  }

  private static void oneJob(SampleWindow window) {
    window.services.shelf.put("launch", SampleJob.apart().job);
    window.shell.context().navigator().home();
  }

  private static void jobList(SampleWindow window) {
    jobs(window);
    window.layOut();
    if (window.shell.context().touch().isLarge()) {
      window.press("More");
    }
    window.pressOnSomePage("All jobs");
  }

  private static void firstHome(SampleWindow window) {
    window.shell.context().open(SampleJob.whole().job);
  }

  private static void stopHome(SampleWindow window) {
    SampleJob sample = SampleJob.apart();
    PutTogether together = new PutTogether(sample.job);
    together.scan(sample.read(sample.tag("pushrod@3EX")));
    together.scan(sample.read(sample.card("5EX")));
    window.shell.context().open(sample.job);
  }

  private static void more(SampleWindow window) {
    jobHome(window);
    window.layOut();
    String words = "More";
    window.pressRail(words);
    if (window.shell.current() instanceof RestOfRailScreen) {
      window.press(words);
    }
  }

  private static void jobHome(SampleWindow window) {
    SampleJob sample = SampleJob.whole();
    int rocker = sample.part("rocker@1IN").item();
    int pushrod = sample.part("pushrod@1IN").item();
    int lifter = sample.part("lifter@1IN").item();
    for (int item : new int[] {rocker, pushrod, lifter}) {
      sample.job.record(new PartOut(item));
    }
    sample.job.record(new OffForWashing(rocker, 4));
    sample.job.record(new SentToShop(1, List.of(pushrod, lifter), "measure", ShopWork.OTHER));
    window.shell.context().open(sample.job);
  }

  private static void between(SampleWindow window) {
    window.shell.context().open(SampleJob.apart().job);
    window.shell.context().navigator().show(ScreenId.BETWEEN);
  }

  private static void files(SampleWindow window) {
    ScreenContext context = window.shell.context();
    context
        .navigator()
        .open(() -> FilesScreen.folder(context, "Jobs folder", Path.of("src/main"), folder -> {}));
  }

  private static void failed(SampleWindow window) {
    ScreenContext context = window.shell.context();
    List<FailedScreen.Failed> failed = new ArrayList<>();
    for (int at = 1; at <= 9; at++) {
      String name = "picture-" + at + ".jpg";
      failed.add(
          new FailedScreen.Failed(
              name,
              "/home/bench/" + name + " is empty. Take the picture again, or copy it again."));
    }
    context.navigator().open(() -> new FailedScreen(context, failed, 300));
  }

  private static void text(SampleWindow window) {
    ScreenContext context = window.shell.context();
    context
        .navigator()
        .open(() -> new TextEntryScreen(context, "Name of the job", "Launch V8", words -> {}));
  }

  private static void number(SampleWindow window) {
    ScreenContext context = window.shell.context();
    context
        .navigator()
        .open(
            () ->
                NumberEntryScreen.digits(
                    context, "Type a code", "The six digits under the symbol.", 6, words -> {}));
  }

  private static void choice(SampleWindow window) {
    ScreenContext context = window.shell.context();
    List<Choice<Integer>> choices = new ArrayList<>();
    for (int at = 1; at <= 14; at++) {
      choices.add(new Choice<>(at, "Stock number " + at, "24 labels of 63.5 by 33.9 mm"));
    }
    context
        .navigator()
        .open(() -> new ChoiceScreen<>(context, "Label stock", choices, chosen -> {}));
  }
}
