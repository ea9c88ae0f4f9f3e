package wherefrom.ui.money;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import wherefrom.job.change.PlannedChange;
import wherefrom.job.entry.CostState;
import wherefrom.job.money.CostLine;
import wherefrom.text.UsualWords;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.NumberEntryScreen;
import wherefrom.ui.app.ReasonAsking;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.TextEntryScreen;

/** Asks for a cost line, and what to do with one. */
final class CostLineAsking {
  private static final int MOST = 12;

  /** What can be done with a line. */
  private enum Deed {
    AMOUNT("Another amount"),
    NOTE("A note on it"),
    DROP("Strike it out");

    private final String words;

    Deed(String words) {
      this.words = words;
    }
  }

  private final ScreenContext context;
  private final MoneyModel model;

  CostLineAsking(ScreenContext context, MoneyModel model) {
    this.context = context;
    this.model = model;
  }

  /** A new line: what for, how far it has gone, how much, for which plan. */
  void ask() {
    ReasonAsking.ask(context, "What is it for?", model.subjects(), this::state);
  }

  private void state(String what) {
    List<Choice<CostState>> states = new ArrayList<>();
    for (CostState state : CostState.values()) {
      states.add(new Choice<>(state, state.words(), meaning(state)));
    }
    context
        .navigator()
        .open(() -> new ChoiceScreen<>(context, what, states, state -> plan(what, state)));
  }

  private static String meaning(CostState state) {
    return switch (state) {
      case QUOTED -> "a price was given";
      case COMMITTED -> "ordered, and to be paid";
      case PAID -> "the money is spent";
      case AVOIDED -> "not spent: the old part goes back";
    };
  }

  private void plan(String what, CostState state) {
    List<PlannedChange> plans = model.plans();
    if (plans.isEmpty()) {
      amount(what, state, 0);
      return;
    }
    List<Choice<Integer>> choices = new ArrayList<>();
    choices.add(new Choice<>(0, "Needed in any case", ""));
    for (PlannedChange plan : plans) {
      choices.add(
          new Choice<>(
              plan.number(),
              "Only for the plan: " + plan.change().words(),
              "gone if it is dropped"));
    }
    context
        .navigator()
        .open(
            () ->
                new ChoiceScreen<>(context, what, choices, number -> amount(what, state, number)));
  }

  private void amount(String what, CostState state, int plan) {
    figure(what, "How much, in " + unit() + "?", typed -> model.note(what, state, typed, plan));
  }

  private String unit() {
    return model.tender().symbol(java.util.Locale.getDefault());
  }

  private void figure(
      String title, String question, java.util.function.Function<String, String> then) {
    context
        .navigator()
        .open(
            () ->
                NumberEntryScreen.size(
                    context, title, question, MOST, typed -> said(() -> then.apply(typed))));
  }

  private void said(Supplier<String> deed) {
    context.attempt(() -> context.say(deed.get()));
    context.navigator().changed();
  }

  /** Moves a line on, changes it or strikes it out. */
  void change(CostLine line) {
    List<Choice<Runnable>> choices = new ArrayList<>();
    for (CostState state : CostState.values()) {
      if (state != line.state()) {
        choices.add(
            new Choice<>(() -> said(() -> model.move(line, state)), "Now " + state.words(), ""));
      }
    }
    for (Deed deed : Deed.values()) {
      choices.add(new Choice<>(() -> act(line, deed), deed.words, ""));
    }
    context
        .navigator()
        .open(
            () ->
                new ChoiceScreen<>(
                    context,
                    line.what().words() + ": " + model.text(line.amount()),
                    choices,
                    Runnable::run));
  }

  private void act(CostLine line, Deed deed) {
    switch (deed) {
      case AMOUNT ->
          figure(
              line.what().words(),
              "How much, in " + unit() + "?",
              typed -> model.amount(line, typed));
      case NOTE ->
          context
              .navigator()
              .open(
                  () ->
                      new TextEntryScreen(
                          context,
                          line.what().words(),
                          line.note(),
                          words -> said(() -> model.noteWords(line, words))));
      case DROP ->
          ReasonAsking.ask(
              context,
              "Why struck out?",
              UsualWords.orOther("noted twice", "not bought after all", "noted wrong"),
              reason -> said(() -> model.drop(line, reason)));
    }
  }
}
