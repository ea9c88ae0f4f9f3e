package wherefrom.ui.changes;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import wherefrom.drawing.View;
import wherefrom.engine.Layout;
import wherefrom.job.FigureParser;
import wherefrom.parts.PartKind;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.Unit;
import wherefrom.quantity.UnitSystem;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;
import wherefrom.rules.consequence.Reach;
import wherefrom.rules.size.ChangeText;
import wherefrom.text.Words;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.NumberEntryScreen;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.drawn.EngineView;
import wherefrom.ui.engine.EnginePages;

/** Asks what is changed, where and by how much, one question at a time, then shows the change. */
final class ChangeQuestions {
  private final ScreenContext context;

  ChangeQuestions(ScreenContext context) {
    this.context = context;
  }

  private Layout layout() {
    return context.state().layout();
  }

  void ask(ChangesModel.Group group) {
    List<Choice<ChangeKind>> kinds =
        new ChangesModel(context.getJob())
            .kinds(group).stream()
                .map(kind -> new Choice<>(kind, Words.capital(kind.words()), ""))
                .toList();
    context
        .navigator()
        .open(() -> new ChoiceScreen<>(context, group.question(), kinds, this::askWhere));
  }

  private void askWhere(ChangeKind kind) {
    if (kind.reach() == Reach.WHOLE) {
      askSize(kind, "");
    } else if (kind.reach() == Reach.PLACE) {
      askKind(kind);
    } else if (kind.reach() == Reach.BANK) {
      askBank(kind);
    } else {
      WherePlaces places = WherePlaces.of(layout(), kind.reach());
      pick(kind, whatIsTapped(kind.reach()), places, where -> askSize(kind, where));
    }
  }

  private void askBank(ChangeKind kind) {
    WherePlaces banks = WherePlaces.of(layout(), Reach.BANK);
    WhereIndex index =
        new WhereIndex(
            context,
            title(kind, "bank"),
            aside(kind, "tap the bank"),
            Optional.empty(),
            banks,
            where -> askSize(kind, where));
    context.navigator().open(() -> new WhereScreen(context, index));
  }

  /** A place is a kind at a spot: first the kind, then the spot. */
  private void askKind(ChangeKind kind) {
    List<Choice<PartKind>> kinds =
        context.state().kinds().stream()
            .sorted()
            .map(each -> new Choice<>(each, Words.capital(each.word()), ""))
            .toList();
    context
        .navigator()
        .open(
            () ->
                new ChoiceScreen<>(
                    context,
                    "Which kind of part?",
                    kinds,
                    each ->
                        pick(
                            kind,
                            each.word(),
                            WherePlaces.of(layout(), each),
                            where -> askSize(kind, each.key() + "@" + where))));
  }

  private static String whatIsTapped(Reach reach) {
    return switch (reach) {
      case VALVE -> "valve";
      case CYLINDER -> "cylinder";
      case ROD_OR_MAIN -> "rod or main";
      case BANK -> "bank";
      case WHOLE, PLACE -> "place";
    };
  }

  /** Large letters may leave only the title: it says what to do, and what is beside it why. */
  private String title(ChangeKind kind, String tapped) {
    return context.touch().brief(Words.capital(kind.words()), "Tap the " + tapped);
  }

  private String aside(ChangeKind kind, String whole) {
    return context.touch().brief(whole, kind.words());
  }

  private void pick(ChangeKind kind, String tapped, WherePlaces places, Consumer<String> done) {
    WhereIndex index =
        new WhereIndex(
            context, title(kind, tapped), aside(kind, "tap where"), places.kind(), places, done);
    boolean below = kind.reach() == Reach.ROD_OR_MAIN;
    EnginePages pages = new EnginePages(context, index);
    pages.open(places.kind().map(EngineView::sideOf).orElse(below ? View.BELOW : View.ABOVE));
  }

  private void askSize(ChangeKind kind, String where) {
    boolean inch = context.state().units() == UnitSystem.INCH;
    List<String> steps = UsualSizes.steps(kind, inch);
    if (steps.isEmpty()) {
      show(kind, where, "");
      return;
    }
    List<Choice<String>> choices = new ArrayList<>();
    choices.add(new Choice<>("", "Not known yet", ""));
    for (String step : steps) {
      String words = step.equals(UsualSizes.OTHER) ? "Another figure" : step;
      choices.add(new Choice<>(step, words, ""));
    }
    context
        .navigator()
        .open(
            () ->
                new ChoiceScreen<>(
                    context,
                    UsualSizes.question(kind),
                    choices,
                    size -> sized(kind, where, size, inch)));
  }

  private void sized(ChangeKind kind, String where, String size, boolean inch) {
    if (!size.equals(UsualSizes.OTHER)) {
      show(kind, where, size);
      return;
    }
    String unit = inch ? "in" : "mm";
    context
        .navigator()
        .open(
            () ->
                NumberEntryScreen.size(
                    context,
                    UsualSizes.question(kind),
                    "In " + (inch ? "inches" : "millimeters") + ".",
                    7,
                    typed -> show(kind, where, typed.isEmpty() ? "" : size(typed, unit, kind))));
  }

  private static String size(String typed, String unit, ChangeKind kind) {
    return String.format(Locale.ROOT, "%s %s%s", typed, unit, UsualSizes.suffix(kind));
  }

  private void show(ChangeKind kind, String where, String detail) {
    Unit usual = FigureParser.usual(context.state().units(), Dimension.LENGTH);
    Change change = ChangeText.read(kind, where, detail, usual);
    context.navigator().open(() -> ChangeScreen.fresh(context, change));
  }
}
