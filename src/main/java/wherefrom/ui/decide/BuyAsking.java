package wherefrom.ui.decide;

import java.util.List;
import java.util.Locale;
import java.util.function.IntConsumer;
import wherefrom.job.money.BuyLine;
import wherefrom.job.money.Buying;
import wherefrom.job.money.MoneyBook;
import wherefrom.job.money.PartNumbers;
import wherefrom.quantity.HomeCountry;
import wherefrom.text.UsualWords;
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
      ReasonAsking.ask(context, "Who offers it?", UsualWords.orOther(known), this::askHolds);
    }
  }

  private void askHolds(String supplier) {
    number("How many in one package?", holds -> askPrice(supplier, holds));
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

  /** The number on its box, for whoever scans it when it comes. */
  void askNumber() {
    context
        .navigator()
        .open(
            () ->
                new TextEntryScreen(
                    context, "Scan or type the number on the box", "", this::keepNumber));
  }

  private void keepNumber(String typed) {
    context.attempt(
        () ->
            context.say(
                PartNumbers.keep(context.getJob(), line, typed)
                    .orElse("Kept. Scan the box when it comes.")));
    context.navigator().changed();
  }

  /** How many; what one of them measures; whether it is right. */
  void askArrived() {
    number("How many came?", count -> new GaugeAsking(context, line, count).ask());
  }

  /** The box was scanned: all that are open at once, or a count. */
  void askScanned() {
    List<Choice<Runnable>> choices =
        List.of(
            new Choice<>(
                () -> new GaugeAsking(context, line, line.open()).ask(),
                "All " + line.open(),
                line.words()),
            new Choice<>(this::askArrived, "Another count", ""));
    if (line.open() == 0) {
      askArrived();
    } else {
      context
          .navigator()
          .open(
              () ->
                  new ChoiceScreen<>(
                      context, "Right number. How many came?", choices, Runnable::run));
    }
  }

  private void number(String question, IntConsumer then) {
    context
        .navigator()
        .open(() -> NumberEntryScreen.count(context, line.what().words(), question, DIGITS, then));
  }
}
