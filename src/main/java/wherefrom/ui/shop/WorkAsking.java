package wherefrom.ui.shop;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import wherefrom.engine.Layout;
import wherefrom.engine.Spots;
import wherefrom.job.shop.ShopOrder;
import wherefrom.quantity.UnitSystem;
import wherefrom.rules.consequence.ShopWork;
import wherefrom.text.Words;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.NumberEntryScreen;
import wherefrom.ui.app.ScreenContext;

/** Asks for work on what carries no tag: its kind first, then where, then its size. */
final class WorkAsking {
  private final ScreenContext context;
  private final Consumer<ShopOrder> done;
  private final String unit;

  private WorkAsking(ScreenContext context, Consumer<ShopOrder> done) {
    this.context = context;
    this.done = done;
    unit = context.state().units() == UnitSystem.INCH ? "in" : "mm";
  }

  /** Any other work, or such without a thing of its own, is asked for in words. */
  static void ask(ScreenContext context, Consumer<ShopOrder> done) {
    List<Choice<ShopWork>> choices =
        Arrays.stream(ShopWork.values())
            .map(work -> new Choice<>(work, Words.capital(work.words()), ""))
            .toList();
    context
        .navigator()
        .open(
            () ->
                new ChoiceScreen<>(
                    context,
                    "Which work?",
                    choices,
                    work -> {
                      if (work.usualThing().isEmpty()) {
                        SlipLineAsking.ask(context, work, done);
                      } else {
                        new WorkAsking(context, done).where(work);
                      }
                    }));
  }

  private void where(ShopWork work) {
    Layout layout = context.state().layout();
    List<String> known = work.listWhere(layout);
    if (known.size() == 1) {
      size(work, List.of(), 1);
      return;
    }
    List<Choice<List<String>>> choices = new ArrayList<>();
    choices.add(new Choice<>(known, "All " + known.size(), ""));
    for (String place : known) {
      String words = Spots.find(place).map(spot -> spot.words()).orElse(place);
      choices.add(new Choice<>(List.of(place), Words.capital(words), ""));
    }
    context
        .navigator()
        .open(
            () ->
                new ChoiceScreen<>(
                    context,
                    Words.capital(work.words()) + ": where?",
                    choices,
                    where -> size(work, where, work.countPieces(where))));
  }

  private void size(ShopWork work, List<String> where, int pieces) {
    if (!work.isSized()) {
      finish(work, where, pieces, "", "");
      return;
    }
    figure(
        Words.capital(work.words()),
        work.sizeQuestion(unit),
        size -> {
          if (size.isEmpty()) {
            finish(work, where, pieces, "", "");
          } else {
            within(work, where, pieces, size);
          }
        });
  }

  private void within(ShopWork work, List<String> where, int pieces, String size) {
    figure(
        Words.capital(work.words()) + " " + size + " " + unit,
        "How far off is still good, in " + unit + "? Done alone: not said.",
        within -> finish(work, where, pieces, size, within));
  }

  private void figure(String title, String question, Consumer<String> then) {
    context.navigator().open(() -> NumberEntryScreen.size(context, title, question, 9, then));
  }

  private void finish(ShopWork work, List<String> where, int pieces, String size, String within) {
    done.accept(
        new ShopOrder(work, where, work.usualThing(), pieces, work.words(), size, within, false));
  }
}
