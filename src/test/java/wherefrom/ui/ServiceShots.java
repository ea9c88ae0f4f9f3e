package wherefrom.ui;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.Consumer;
import java.util.function.Function;
import wherefrom.engine.LifterType;
import wherefrom.job.OpenJob;
import wherefrom.job.entry.RunInEnd;
import wherefrom.job.entry.RunInGauge;
import wherefrom.job.running.RunInBook;
import wherefrom.job.running.RunInPlan;
import wherefrom.job.running.Serving;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.home.JobHomeScreen;
import wherefrom.ui.jobs.JobsScreen;
import wherefrom.ui.running.RunInHeldScreen;
import wherefrom.ui.running.RunInPlanScreen;
import wherefrom.ui.running.RunInScreen;
import wherefrom.ui.running.ServiceScreen;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/** The run-in's clock, and what is due after it. */
final class ServiceShots {
  private static final RunInPlan PLAN = RunInPlan.usual(LifterType.FLAT);

  private ServiceShots() {}

  static List<Shot> all() {
    return List.of(
        shot("run-in-plan", RunInPlanScreen.class, RunInPlanScreen::new, job -> {}),
        shot(
            "run-in-held",
            RunInHeldScreen.class,
            context -> new RunInHeldScreen(context, PLAN),
            job -> {}),
        shot("run-in", RunInScreen.class, RunInScreen::new, ServiceShots::begin),
        shot("run-in-alarm", RunInScreen.class, RunInScreen::new, ServiceShots::alarm),
        shot("run-in-stopped", RunInScreen.class, RunInScreen::new, ServiceShots::stop),
        shot("run-in-done", RunInScreen.class, RunInScreen::new, ServiceShots::finish),
        shot("service", ServiceScreen.class, ServiceScreen::new, ServiceShots::drive),
        shot("service-none", ServiceScreen.class, ServiceScreen::new, job -> {}),
        new Shot("job-home-run-in", JobHomeScreen.class, window -> home(window, false)),
        new Shot("job-home-in-service", JobHomeScreen.class, window -> home(window, true)),
        new Shot("jobs-in-service", JobsScreen.class, ServiceShots::jobs));
  }

  private static Shot shot(
      String name,
      Class<? extends Screen> screen,
      Function<ScreenContext, Screen> maker,
      Consumer<OpenJob> arrange) {
    return new Shot(
        name,
        screen,
        window -> {
          ScreenContext context = window.shell.context();
          OpenJob job = SampleJob.apart().job;
          arrange.accept(job);
          context.open(job);
          context.navigator().open(() -> maker.apply(context));
        });
  }

  private static void begin(OpenJob job) {
    RunInBook book = new RunInBook(job);
    book.begin(PLAN, "ticked on paper");
    book.note(RunInGauge.OIL_PRESSURE, Amount.of("52", Unit.PSI));
    book.note(RunInGauge.COOLANT, Amount.of("165", Unit.FAHRENHEIT));
  }

  private static void alarm(OpenJob job) {
    begin(job);
    new RunInBook(job).note(RunInGauge.OIL_PRESSURE, Amount.of("2", Unit.PSI));
  }

  private static void stop(OpenJob job) {
    begin(job);
    Instant later = job.state().lastTouched().plus(Duration.ofSeconds(447));
    new RunInBook(job).stop(RunInEnd.FUEL_LEAK, "", later, OptionalInt.empty());
  }

  private static void finish(OpenJob job) {
    begin(job);
    Instant later = job.state().lastTouched().plus(Duration.ofMinutes(20));
    new RunInBook(job).stop(RunInEnd.TIME_UP, "", later, OptionalInt.empty());
  }

  private static void drive(OpenJob job) {
    finish(job);
    Serving serving = new Serving(job);
    serving.tick("oil", "pleats clean", true);
    serving.note(Amount.of("460", Unit.MILE), "");
    serving.note(Amount.of("12.5", Unit.HOUR), "");
  }

  private static void home(SampleWindow window, boolean inService) {
    ScreenContext context = window.shell.context();
    OpenJob job = SampleJob.apart().job;
    if (inService) {
      drive(job);
      new Serving(job).putInService("in the truck");
    } else {
      begin(job);
    }
    context.open(job);
  }

  private static void jobs(SampleWindow window) {
    OpenJob job = SampleJob.apart().job;
    drive(job);
    new Serving(job).putInService("in the truck");
    window.services.shelf.put("launch", job);
    window.shell.context().navigator().home();
  }
}
