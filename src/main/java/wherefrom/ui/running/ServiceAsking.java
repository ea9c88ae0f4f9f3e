package wherefrom.ui.running;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import wherefrom.job.FigureParser;
import wherefrom.job.running.ServiceBook;
import wherefrom.job.running.ServicePoint;
import wherefrom.job.running.Serving;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.Unit;
import wherefrom.quantity.UnitSystem;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.app.TextEntryScreen;
import wherefrom.ui.debris.DebrisScreen;
import wherefrom.ui.measure.SizeScreen;

/** What is asked about hours, miles, points of service, and service itself. */
final class ServiceAsking {
  private final ScreenContext context;
  private final Serving serving;

  ServiceAsking(ScreenContext context, Serving serving) {
    this.context = context;
    this.serving = serving;
  }

  private void choose(String title, List<Choice<Runnable>> ways) {
    context.navigator().open(() -> new ChoiceScreen<>(context, title, ways, Runnable::run));
  }

  private static Choice<Runnable> way(String words, String more, Runnable run) {
    return new Choice<>(run, words, more);
  }

  private void words(String title, Consumer<String> done) {
    context.navigator().open(() -> new TextEntryScreen(context, title, "", done));
  }

  /** Hours or a distance, then the figure. */
  private void usage(String title, String question, Consumer<Amount> done) {
    choose(
        title,
        List.of(
            way("Hours", "", () -> figure("Hours", question, Dimension.RUNNING_TIME, done)),
            way(far(), "", () -> figure(far(), question, Dimension.DISTANCE, done))));
  }

  private String far() {
    boolean metric = context.state().units() == UnitSystem.METRIC;
    return metric ? "Kilometers" : "Miles";
  }

  private void figure(String title, String question, Dimension of, Consumer<Amount> done) {
    Unit usual = FigureParser.usual(context.state().units(), of);
    Consumer<String> typed =
        text ->
            done.accept(
                FigureParser.find(text, usual)
                    .orElseThrow(() -> new IllegalArgumentException("Type the figure first.")));
    context.navigator().open(() -> new SizeScreen(context, title, question, of, typed));
  }

  void note() {
    usage(
        "What has it run?",
        "In all, since the first start.",
        run -> {
          serving.note(run, "");
          context.navigator().changed();
        });
  }

  /** What can be done about a point. */
  void line(ServiceBook.Line line) {
    ServicePoint point = line.point();
    List<Choice<Runnable>> ways = new ArrayList<>();
    if (line.state() == ServiceBook.State.DONE) {
      ways.add(way("To be done again", "", () -> tick(point, "", false)));
    } else {
      ways.add(way("It is done", point.how(), () -> askDone(point)));
    }
    more(point, ways);
    ways.add(way("When it is due", "now from: " + line.source(), () -> askDue(point)));
    choose(point.title(), ways);
  }

  private void more(ServicePoint point, List<Choice<Runnable>> ways) {
    switch (point) {
      case OIL, OIL_AGAIN ->
          ways.add(
              way(
                  "Something is in it",
                  "debris: what it is, what to open",
                  () -> context.navigator().open(() -> new DebrisScreen(context))));
      case TORQUE, TORQUE_AGAIN ->
          ways.add(
              way("Torque cards", "bolt by bolt", () -> context.navigator().show(ScreenId.TORQUE)));
      case LASH, LASH_AGAIN ->
          ways.add(
              way(
                  "Measure it",
                  "valve by valve",
                  () -> context.navigator().show(ScreenId.MEASURE)));
      case LEVELS -> {}
    }
  }

  private void askDone(ServicePoint point) {
    words(point.title() + ": what was seen", words -> tick(point, words, true));
  }

  private void tick(ServicePoint point, String words, boolean done) {
    serving.tick(point.key(), words, done);
  }

  private void askDue(ServicePoint point) {
    usage(
        point.title(),
        "Due after so much, since the first start.",
        after ->
            words("Which sheet says so?", source -> serving.typeDue(point.key(), after, source)));
  }

  /** Closing the record is asked about: little can be added then. */
  void putInService() {
    String due = ServiceWords.due(serving.book());
    choose(
        "Put it in service?",
        List.of(
            way(
                "Close the record",
                "Then only notes of use and photographs. " + due,
                () -> words("Which vehicle or machine is it in?", serving::putInService)),
            way("Not yet", "", () -> {})));
  }

  /** Something is to be added to the record; or the engine comes apart, with every part known. */
  void reopen() {
    choose(
        "Reopen",
        List.of(
            way(
                "Open the record",
                "something is to be added to it",
                () -> words("Why is the record opened again?", serving::reopen)),
            way(
                "It comes apart again",
                "all parts are in, under their old tags",
                this::warnOfRecord)));
  }

  /** The next life has a record of its own: on paper alone is the one of before left. */
  private void warnOfRecord() {
    choose(
        "Print the record first",
        List.of(
            way(
                "Print the record",
                "afterwards this build's record can no longer be printed",
                () -> context.navigator().show(ScreenId.BUILD_RECORD)),
            way(
                "It is printed, it comes apart",
                "a record of its own begins",
                () -> words("Why does it come apart?", this::comesApart))));
  }

  private void comesApart(String why) {
    serving.comesApartAgain(why);
    context.navigator().home();
  }
}
