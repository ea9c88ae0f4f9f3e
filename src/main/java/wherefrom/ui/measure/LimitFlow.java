package wherefrom.ui.measure;

import java.util.List;
import java.util.function.Consumer;
import wherefrom.inspection.measure.Derivation;
import wherefrom.inspection.measure.LimitTarget;
import wherefrom.inspection.measure.ReadingPlan;
import wherefrom.inspection.measure.ResultKeys;
import wherefrom.job.measure.Instruments;
import wherefrom.quantity.UnitChoice;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.TextEntryScreen;

/** Asks for a limit of this engine step by step: of what, from, to, and where it stands. */
final class LimitFlow {
  private static final String PRACTICE = "common practice, no source";

  private final ScreenContext context;
  private final LimitTarget target;

  private LimitFlow(ScreenContext context, LimitTarget target) {
    this.context = context;
    this.target = target;
  }

  /** Asks which result, then the rest. */
  static void ask(ScreenContext context, LimitTarget target) {
    List<ResultKeys.Bounded> results = target.results();
    if (results.size() == 1) {
      bounds(context, target, results.get(0).key(), results.get(0).words());
      return;
    }
    List<Choice<ResultKeys.Bounded>> choices =
        results.stream().map(result -> new Choice<>(result, result.words(), "")).toList();
    context
        .navigator()
        .open(
            () ->
                new ChoiceScreen<>(
                    context,
                    target.title() + ": limit of what?",
                    choices,
                    result -> bounds(context, target, result.key(), result.words())));
  }

  /** Asks what the manual gives of a result: its most, its least or both; then its source. */
  static void bounds(ScreenContext context, LimitTarget target, String result, String words) {
    LimitFlow flow = new LimitFlow(context, target);
    List<Choice<Runnable>> choices =
        List.of(
            new Choice<>(() -> flow.most(result, words, ""), "Upper limit", "one figure"),
            new Choice<>(() -> flow.least(result, words, false), "Lower limit", "one figure"),
            new Choice<>(() -> flow.least(result, words, true), "Both limits", "two figures"),
            new Choice<>(() -> flow.keep(result, "", "", "removed"), "No limit", "removes one"));
    context
        .navigator()
        .open(
            () ->
                new ChoiceScreen<>(
                    context,
                    "What does the manual give for " + words + "?",
                    choices,
                    Runnable::run));
  }

  private void least(String result, String words, boolean both) {
    size(
        "At least: " + words,
        "The smallest value the manual allows. Type it as printed.",
        low -> {
          if (both) {
            most(result, words, low);
          } else {
            source(source -> keep(result, low, "", source));
          }
        });
  }

  private void most(String result, String words, String low) {
    size(
        "At most: " + words,
        "The largest value the manual allows. Type it as printed.",
        high -> source(source -> keep(result, low, high, source)));
  }

  /** Asks for the size when new of what a plan measures. */
  static void standard(ScreenContext context, ReadingPlan plan) {
    LimitFlow flow = new LimitFlow(context, LimitTarget.of(plan));
    boolean wanted = plan.shape() == Derivation.SHIM;
    flow.size(
        (wanted ? "Wanted: " : "Size when new: ") + plan.title(),
        "Type it as printed in this engine's manual. "
            + (wanted ? "The shim follows from it." : "Wear and the next size follow from it."),
        size ->
            flow.source(
                source ->
                    ToolFlow.Answers.say(
                        context,
                        new Instruments(context.getJob()).size(plan.key(), size, source))));
  }

  private void size(String title, String question, Consumer<String> done) {
    UnitChoice units = target.units();
    context
        .navigator()
        .open(
            () ->
                target.signed()
                    ? SizeScreen.signed(context, title, question, "", units, done)
                    : new SizeScreen(context, title, question, units, done));
  }

  private void source(Consumer<String> done) {
    List<Choice<Runnable>> choices =
        List.of(
            new Choice<>(
                () -> type("Manual, page ", done),
                "This engine's own manual",
                "type its name and the page"),
            new Choice<>(() -> type("", done), "Another published source", "type what and where"),
            new Choice<>(
                () -> done.accept(PRACTICE),
                "Common practice",
                "no source: the weakest of the three"));
    context
        .navigator()
        .open(() -> new ChoiceScreen<>(context, "Where is it printed?", choices, Runnable::run));
  }

  private void type(String begun, Consumer<String> done) {
    context
        .navigator()
        .open(
            () -> new TextEntryScreen(context, "Where it is printed: book and page", begun, done));
  }

  private void keep(String result, String low, String high, String source) {
    ToolFlow.Answers.say(
        context, new Instruments(context.getJob()).limit(target.key(), result, low, high, source));
  }
}
