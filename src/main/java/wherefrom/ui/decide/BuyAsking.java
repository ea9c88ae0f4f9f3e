package wherefrom.ui.decide;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import wherefrom.job.money.BuyLine;
import wherefrom.job.money.Buying;
import wherefrom.job.money.MoneyBook;
import wherefrom.quantity.HomeCountry;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.NumberEntryScreen;
import wherefrom.ui.app.ReasonAsking;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.TextEntryScreen;

/** Asks what a supplier wants for a line, and what of it has come. */
final class BuyAsking {
  private static final int DIGITS = 3;
  private static final int MOST = 12;

  private final ScreenContext context;
  private final BuyLine line;

  BuyAsking(ScreenContext context, BuyLine line) {
    this.context = context;
    this.line = line;
  }

  /** Who, how many in a package, for how much. */
  void askOffer() {
    List<String> known = new Buying(context.state()).suppliers();
    if (known.isEmpty()) {
      context
          .navigator()
          .open(() -> new TextEntryScreen(context, "Who offers it?", "", this::askHolds));
    } else {
      List<String> names = new java.util.ArrayList<>(known);
      names.add("other");
      ReasonAsking.ask(context, "Who offers it?", names, this::askHolds);
    }
  }

  private void askHolds(String supplier) {
    number("How many in one package?", typed -> askPrice(supplier, Integer.parseInt(typed)));
  }

  private void askPrice(String supplier, int holds) {
    context
        .navigator()
        .open(
            () ->
                NumberEntryScreen.size(
                    context,
                    supplier,
                    "Price of one package?",
                    MOST,
                    typed -> keep(supplier, holds, typed)));
  }

  private void keep(String supplier, int holds, String price) {
    context.attempt(
        () -> {
          Locale here = HomeCountry.of(Locale.getDefault(), context.state().units());
          MoneyBook.Answer came =
              new MoneyBook(context.getJob())
                  .begin(
                      here,
                      () -> Buying.offer(context.getJob(), supplier, line.what(), holds, price));
          context.say(
              came instanceof MoneyBook.Answer.Refused refused
                  ? refused.sentence()
                  : supplier + ": price kept.");
        });
    context.navigator().changed();
  }

  /** How many; the size found on one of them; whether it is right. */
  void askArrived() {
    number(
        "How many came?",
        typed -> {
          int pieces = Integer.parseInt(typed);
          if (line.size().isEmpty()) {
            askRight(pieces, "");
          } else {
            askSize(pieces);
          }
        });
  }

  private void askSize(int pieces) {
    context
        .navigator()
        .open(
            () ->
                new TextEntryScreen(
                    context, "Measure one: its size", "", found -> askRight(pieces, found)));
  }

  private void askRight(int pieces, String found) {
    String wanted = line.size().isEmpty() ? "the right part number" : line.size();
    List<Choice<Boolean>> choices =
        List.of(
            new Choice<>(true, "Yes, it is right", "counted"),
            new Choice<>(false, "No, it is wrong", "not counted"));
    context
        .navigator()
        .open(
            () ->
                new ChoiceScreen<>(
                    context,
                    "Is it " + wanted + "?",
                    choices,
                    right -> checkIn(pieces, found, right)));
  }

  private void checkIn(int pieces, String found, boolean right) {
    context.attempt(
        () -> {
          Optional<String> fault = Buying.arrive(context.getJob(), line, pieces, found, right);
          context.say(fault.orElseGet(() -> new Buying(context.state()).told(line, right)));
        });
    context.navigator().changed();
  }

  private void number(String question, java.util.function.Consumer<String> then) {
    context
        .navigator()
        .open(() -> NumberEntryScreen.digits(context, line.what().words(), question, DIGITS, then));
  }
}
