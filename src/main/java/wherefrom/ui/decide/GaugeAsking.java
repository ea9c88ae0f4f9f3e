package wherefrom.ui.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import wherefrom.inspection.measure.Tool;
import wherefrom.job.FigureParser;
import wherefrom.job.entry.GoodsWay;
import wherefrom.job.money.BuyLine;
import wherefrom.job.money.Buying;
import wherefrom.job.money.Gauging;
import wherefrom.job.money.OneMeasured;
import wherefrom.job.money.UsualTool;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Dimension;
import wherefrom.text.Words;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.TextEntryScreen;
import wherefrom.ui.measure.SizeScreen;

/** Asks what one of the things that came measures, says whether it is right, and checks them in. */
final class GaugeAsking {
  private static final String USUAL = "";

  /** Where the tolerance is not typed yet. */
  private static final String NONE = "0";

  private final ScreenContext context;
  private final BuyLine line;
  private final int pieces;
  private final Gauging gauging;

  GaugeAsking(ScreenContext context, BuyLine line, int pieces) {
    this.context = context;
    this.line = line;
    this.pieces = pieces;
    gauging = new Gauging(context.state(), line);
  }

  /**
   * In which way one of them is measured, or that it is only read off the box; a gasket set cannot
   * be measured.
   */
  void ask() {
    if (line.isGasketSet()) {
      readOff();
      return;
    }
    List<Choice<Runnable>> choices = new ArrayList<>();
    if (gauging.hasSteps()) {
      gauging.ways().forEach(way -> choices.add(measured(way)));
    }
    choices.add(
        new Choice<>(this::readOff, "Only read off the box", detail("nothing is measured")));
    if (!gauging.hasSteps()) {
      gauging.ways().forEach(way -> choices.add(measured(way)));
    }
    open("How do you know?", choices);
  }

  private Choice<Runnable> measured(GoodsWay way) {
    return new Choice<>(
        () -> askReading(way), "Measured: " + way.words(), detail("on one of them"));
  }

  /** Large letters leave no room for what the question says already. */
  private String detail(String words) {
    return context.touch().brief(words, "");
  }

  private void readOff() {
    if (line.size().isNone()) {
      askRight("Is it the right part number?", right -> keep("", right));
    } else {
      context
          .navigator()
          .open(
              () ->
                  new TextEntryScreen(
                      context,
                      "The size on the box",
                      "",
                      found ->
                          askRight(
                              "Is it " + line.size().words() + "?", right -> keep(found, right))));
    }
  }

  private void askReading(GoodsWay way) {
    figure(
        way,
        "What does one of them measure?",
        reading -> {
          require(reading, reading, NONE);
          askStandard(way, reading);
        });
  }

  /**
   * A figure that cannot be is refused where it was typed, not after the last question.
   *
   * @throws IllegalArgumentException with what is wrong
   */
  private void require(String reading, String standard, String tolerance) {
    Gauging.findFault(length(reading), length(standard), length(tolerance))
        .ifPresent(
            sentence -> {
              throw new IllegalArgumentException(sentence);
            });
  }

  private Amount length(String typed) {
    return FigureParser.read(
        typed,
        context.state().units(),
        Dimension.LENGTH,
        amount -> amount,
        sentence -> {
          throw new IllegalArgumentException(sentence);
        });
  }

  /** What was typed as standard before is asked for no more. */
  private void askStandard(GoodsWay way, String reading) {
    gauging
        .findStandard(way)
        .ifPresentOrElse(
            known -> {
              require(reading, known.text(), NONE);
              askTolerance(way, reading, known.text());
            },
            () ->
                figure(
                    way,
                    gauging.hasSteps()
                        ? "What does a standard one measure? The box or the manual says."
                        : "What must it measure? The box or the manual says.",
                    standard -> {
                      require(reading, standard, NONE);
                      askTolerance(way, reading, standard);
                    }));
  }

  private void askTolerance(GoodsWay way, String reading, String standard) {
    if (gauging.hasSteps()) {
      askTool(way, reading, standard, "");
    } else {
      figure(
          way,
          "By how much may it differ, either way?",
          allowed -> {
            require(reading, standard, allowed);
            askTool(way, reading, standard, allowed);
          });
    }
  }

  private void askTool(GoodsWay way, String reading, String standard, String tolerance) {
    List<Choice<String>> tools = new ArrayList<>();
    for (Tool tool : context.state().measures().tools()) {
      if (tool.dimension() == Dimension.LENGTH) {
        tools.add(new Choice<>(tool.name(), tool.name(), ""));
      }
    }
    UsualTool usual = UsualTool.of(way);
    tools.add(new Choice<>(USUAL, usual.words(), usual.offWords()));
    Consumer<String> then =
        tool -> judge(new Gauging.Typed(way, reading, standard, tolerance, tool));
    context.navigator().open(() -> new ChoiceScreen<>(context, "Measured with?", tools, then));
  }

  private void judge(Gauging.Typed typed) {
    Gauging.Outcome outcome = gauging.judge(typed);
    if (outcome instanceof Gauging.Outcome.Refused refused) {
      context.fail(refused.sentence());
      return;
    }
    OneMeasured one = ((Gauging.Outcome.Judged) outcome).one();
    switch (one.ruling()) {
      case ACCEPT -> keep(one, true);
      case REJECT -> keep(one, false);
      case UNDECIDED -> askRight(one.sentence(), right -> keep(one, right));
    }
  }

  private void askRight(String question, Consumer<Boolean> then) {
    List<Choice<Boolean>> choices =
        List.of(
            new Choice<>(true, "Yes, it is right", "counted"),
            new Choice<>(false, "No, it is wrong", "not counted"));
    context.navigator().open(() -> new ChoiceScreen<>(context, question, choices, then));
  }

  private void keep(OneMeasured one, boolean right) {
    keep(
        one.sentence() + " ",
        right,
        () -> Buying.arrive(context.getJob(), line, pieces, one, right));
  }

  private void keep(String found, boolean right) {
    keep("", right, () -> Buying.arrive(context.getJob(), line, pieces, found, right));
  }

  private void keep(String before, boolean right, Supplier<Optional<String>> deed) {
    context.attempt(
        () ->
            context.say(
                deed.get()
                    .orElseGet(() -> before + new Buying(context.state()).told(line, right))));
    context.navigator().changed();
  }

  private void figure(GoodsWay way, String question, Consumer<String> then) {
    context
        .navigator()
        .open(
            () ->
                new SizeScreen(
                    context, Words.capital(way.words()), question, Dimension.LENGTH, then));
  }

  private void open(String title, List<Choice<Runnable>> choices) {
    context.navigator().open(() -> new ChoiceScreen<>(context, title, choices, Runnable::run));
  }
}
