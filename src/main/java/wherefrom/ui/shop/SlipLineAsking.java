package wherefrom.ui.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import wherefrom.job.shop.ShopOrder;
import wherefrom.rules.consequence.ShopWork;
import wherefrom.text.UsualWords;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.NumberEntryScreen;
import wherefrom.ui.app.ReasonAsking;
import wherefrom.ui.app.ScreenContext;

/** Asks for a line of the slip: what carries no tag, how many, and what is wanted. */
final class SlipLineAsking {
  private static final UsualWords THINGS =
      UsualWords.orOther(
          "block",
          "crankshaft",
          "cylinder heads",
          "camshaft",
          "flywheel",
          "rods with their caps",
          "main caps");
  private static final UsualWords SMALL =
      UsualWords.orOther(
          "dowels",
          "main cap bolts or studs",
          "rod bolts and nuts",
          "woodruff keys",
          "oil gallery plugs",
          "keepers in a bag");

  private final ScreenContext context;
  private final ShopWork work;
  private final Consumer<ShopOrder> taker;

  private SlipLineAsking(ScreenContext context, ShopWork work, Consumer<ShopOrder> taker) {
    this.context = context;
    this.work = work;
    this.taker = taker;
  }

  /** Work on something that carries no tag, in words. */
  static void ask(ScreenContext context, ShopWork work, Consumer<ShopOrder> taker) {
    SlipLineAsking asking = new SlipLineAsking(context, work, taker);
    ReasonAsking.ask(
        context,
        "What goes?",
        THINGS,
        what ->
            asking.count(what, count -> asking.wanted(wanted -> asking.keep(what, count, wanted))));
  }

  /** Small pieces that go along and must not get lost. */
  static void askSmall(ScreenContext context, Consumer<ShopOrder> taker) {
    SlipLineAsking asking = new SlipLineAsking(context, ShopWork.OTHER, taker);
    ReasonAsking.ask(
        context,
        "Do not lose",
        SMALL,
        what ->
            asking.count(
                what,
                count -> asking.take(what, count, WorkWanted.of("come back with the rest"), true)));
  }

  private void count(String what, Consumer<Integer> then) {
    context
        .navigator()
        .open(
            () ->
                NumberEntryScreen.digits(
                    context,
                    what,
                    "How many pieces go?",
                    3,
                    typed -> then.accept(typed.isEmpty() ? 0 : Integer.parseInt(typed))));
  }

  private void keep(String what, int count, WorkWanted wanted) {
    List<Choice<Boolean>> choices = new ArrayList<>();
    choices.add(new Choice<>(true, "Yes: it goes back to one place only", ""));
    choices.add(new Choice<>(false, "No", ""));
    context
        .navigator()
        .open(
            () ->
                new ChoiceScreen<>(
                    context,
                    "On the list “do not lose”?",
                    choices,
                    keep -> take(what, count, wanted, keep)));
  }

  /** A kind of work says itself what is wanted. */
  private void wanted(Consumer<WorkWanted> then) {
    if (work == ShopWork.OTHER) {
      WantedAsking.ask(context, then);
    } else {
      then.accept(WorkWanted.of(work.words()));
    }
  }

  private void take(String what, int count, WorkWanted wanted, boolean keep) {
    taker.accept(
        new ShopOrder(
            work, List.of(), what, count, wanted.work(), wanted.size(), wanted.within(), keep));
  }
}
