package wherefrom.ui.running;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Consumer;
import wherefrom.job.FigureParser;
import wherefrom.job.entry.RunInEnd;
import wherefrom.job.entry.RunInGauge;
import wherefrom.job.running.RunIn;
import wherefrom.job.running.RunInAlarm;
import wherefrom.job.running.RunInBook;
import wherefrom.quantity.Amount;
import wherefrom.rules.Cue;
import wherefrom.text.Words;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.NumberEntryScreen;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.TextEntryScreen;
import wherefrom.ui.measure.SizeScreen;

/**
 * What is asked while the engine runs in: a gauge's figure, why it was stopped, how long it ran.
 */
final class RunInAsking {
  private static final int DIGITS = 4;

  private final ScreenContext context;
  private final RunInBook book;

  RunInAsking(ScreenContext context) {
    this.context = context;
    this.book = new RunInBook(context.getJob());
  }

  void note(RunInGauge gauge) {
    String title = Words.capital(gauge.words());
    Consumer<String> done =
        typed -> {
          Optional<RunInAlarm> alarm = book.note(gauge, amount(typed, gauge));
          context.navigator().changed();
          alarm.ifPresent(this::warn);
        };
    context
        .navigator()
        .open(() -> new SizeScreen(context, title, "Read it now.", gauge.dimension(), done));
  }

  /** Asked at once why it was stopped, so that nobody has to look for the key. */
  private void warn(RunInAlarm alarm) {
    stop();
    context.sounds().play(Cue.STOP);
    context.say(alarm.sentence());
  }

  private Amount amount(String typed, RunInGauge gauge) {
    return FigureParser.read(
        typed,
        context.state().units(),
        gauge.dimension(),
        amount -> amount,
        sentence -> {
          throw new IllegalArgumentException(sentence);
        });
  }

  /**
   * The moment of the press counts, however long the reason takes; where a gauge asks for it that
   * is when the gauge was noted, also where the question was left and is asked again.
   */
  void stop() {
    RunIn run = book.find().orElseThrow();
    Instant pressed = run.findAlarmed().orElseGet(context.services().clock()::instant);
    if (run.isUnclear(pressed)) {
      askMinutes(pressed, run.isSetBack(pressed) ? "set back" : "left on");
    } else if (run.left(pressed).isZero() && run.findAlarm().isEmpty()) {
      context.perform(() -> book.stop(RunInEnd.TIME_UP, "", pressed, OptionalInt.empty()));
    } else {
      askWhy(pressed, OptionalInt.empty());
    }
  }

  private void askMinutes(Instant pressed, String how) {
    String question = "The clock was " + how + ". How many minutes did it run?";
    Consumer<String> done = typed -> askWhy(pressed, OptionalInt.of(RunInFigures.number(typed)));
    context
        .navigator()
        .open(() -> NumberEntryScreen.digits(context, "Minutes", question, DIGITS, done));
  }

  private void askWhy(Instant pressed, OptionalInt minutes) {
    List<Choice<RunInEnd>> choices = new ArrayList<>();
    if (minutes.isPresent()) {
      choices.add(choice(RunInEnd.TIME_UP));
    }
    RunInEnd.atOnce().forEach(end -> choices.add(choice(end)));
    Consumer<RunInEnd> done = end -> stop(end, pressed, minutes);
    context.navigator().open(() -> new ChoiceScreen<>(context, "Engine off. Why?", choices, done));
  }

  private static Choice<RunInEnd> choice(RunInEnd end) {
    return new Choice<>(end, Words.capital(end.words()), "");
  }

  private void stop(RunInEnd end, Instant pressed, OptionalInt minutes) {
    context.sounds().hush();
    if (end == RunInEnd.OTHER) {
      Consumer<String> done = words -> book.stop(end, words, pressed, minutes);
      context.navigator().open(() -> new TextEntryScreen(context, "Why was it stopped?", "", done));
    } else {
      book.stop(end, "", pressed, minutes);
    }
  }
}
