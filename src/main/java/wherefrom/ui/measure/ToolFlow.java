package wherefrom.ui.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import wherefrom.inspection.measure.Tool;
import wherefrom.job.measure.Instruments;
import wherefrom.quantity.AmountReading;
import wherefrom.quantity.AmountText;
import wherefrom.quantity.Unit;
import wherefrom.quantity.UnitChoice;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.TextEntryScreen;

/** Lists a tool step by step, and checks a tool's zero. */
final class ToolFlow {
  private static final String TYPED = "";

  private final ScreenContext context;
  private final UnitChoice units;
  private final String name;

  private ToolFlow(ScreenContext context, UnitChoice units, String name) {
    this.context = context;
    this.units = units;
    this.name = name;
  }

  /** {@code reads 0.0001 in, error ±0.0001 in, repeat ±0.0001 in}. */
  static String words(Tool tool) {
    return "reads "
        + tool.resolution().text()
        + ", error ±"
        + tool.error().text()
        + ", repeat ±"
        + tool.repeat().text();
  }

  /** Asks for name, smallest step, error and repeat. */
  static void list(ScreenContext context, UnitChoice units) {
    String title =
        switch (units.dimension()) {
          case LENGTH -> "Name of the tool, such as MIC 2-3";
          case FORCE, MASS -> "Name of the scale";
          default -> "Name of the gauge";
        };
    context
        .navigator()
        .open(
            () ->
                new TextEntryScreen(
                    context, title, "", words -> new ToolFlow(context, units, words).step()));
  }

  private void step() {
    if (name.isBlank()) {
      context.fail("Give the tool a name: you will choose it by its name.");
      return;
    }
    context
        .navigator()
        .open(
            () ->
                new SizeScreen(
                    context,
                    name,
                    "What is the smallest step it shows? A vernier micrometer shows 0.0001 in. A"
                        + " caliper shows 0.0005 in or 0.01 mm.",
                    units,
                    this::error));
  }

  /** One answer does for both, error and repeat, unless they are typed. */
  private void error(String step) {
    List<Choice<String>> choices = new ArrayList<>();
    choices.add(new Choice<>(TYPED, "Type both", "error as its card says, repeat as you find it"));
    choices.add(new Choice<>(step, "One step: ±" + step, "each; common practice, no source"));
    twice(step)
        .ifPresent(two -> choices.add(new Choice<>(two, "Two steps: ±" + two, "each, to be safe")));
    context
        .navigator()
        .open(
            () ->
                new ChoiceScreen<>(
                    context,
                    "How far may " + name + " be off, and its repeats differ?",
                    choices,
                    chosen -> chosen(step, chosen)));
  }

  private void chosen(String step, String chosen) {
    if (chosen.equals(TYPED)) {
      type("How far may " + name + " be off, either way?", off -> repeat(step, off));
    } else {
      keep(step, chosen, chosen);
    }
  }

  private void repeat(String step, String off) {
    type(
        "Measure one part five times. How far do the readings differ, either way?",
        again -> keep(step, off, again));
  }

  private static Optional<String> twice(String step) {
    return AmountText.read(step) instanceof AmountReading.Understood one
        ? Optional.of(one.amount().plus(one.amount()).text())
        : Optional.empty();
  }

  private void type(String title, Consumer<String> done) {
    context.navigator().open(() -> new SizeScreen(context, name, title, units, done));
  }

  private void keep(String step, String off, String again) {
    Answers.say(context, new Instruments(context.getJob()).list(name, units, step, off, again));
  }

  /** Asks what a tool shows at zero. */
  static void zero(ScreenContext context, Tool tool) {
    context
        .navigator()
        .open(
            () ->
                SizeScreen.signed(
                    context,
                    "Zero of " + tool.name(),
                    "Clean the faces. Close it, or put it on its setting standard. How far is it"
                        + " off zero? Minus where it reads low.",
                    "minus if low",
                    unitsOf(tool),
                    shown ->
                        Answers.say(
                            context, new Instruments(context.getJob()).zero(tool.name(), shown))));
  }

  /** A tester that shows a share is off by a share, and a vacuum gauge by a vacuum. */
  private static UnitChoice unitsOf(Tool tool) {
    UnitChoice usual = UnitChoice.of(tool.dimension());
    Unit own = tool.resolution().unit();
    return usual.offered().contains(own) ? usual : new UnitChoice(List.of(own));
  }

  /** Keeps what was asked for, or tells why not. */
  static final class Answers {
    private Answers() {}

    static void say(ScreenContext context, Instruments.Answer answer) {
      context.say(
          answer instanceof Instruments.Answer.Kept kept
              ? kept.sentence()
              : ((Instruments.Answer.Refused) answer).sentence());
      context.navigator().changed();
    }
  }
}
