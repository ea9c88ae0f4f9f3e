package wherefrom.ui.bags;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import wherefrom.job.bags.Bag;
import wherefrom.job.bags.BagBook;
import wherefrom.job.bags.BagOutcome;
import wherefrom.job.bags.Bags;
import wherefrom.job.bags.BigPartRecord;
import wherefrom.job.entry.AtAssembly;
import wherefrom.job.entry.BagFilled;
import wherefrom.text.UsualWords;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.NumberEntryScreen;
import wherefrom.ui.app.ReasonAsking;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.TextEntryScreen;

/** Asks what is in a bag: what, for what, how many; and mends what was said. */
final class BagFilling {
  /** What usually comes off in a bunch; the last one wants words of the person's own. */
  private static final UsualWords USUAL =
      UsualWords.orOther(
          "head bolts, long",
          "head bolts, short",
          "rocker nuts",
          "rod bolts and nuts",
          "main cap bolts or nuts",
          "intake bolts",
          "exhaust bolts",
          "cover bolts",
          "pan bolts");

  private final ScreenContext context;

  BagFilling(ScreenContext context) {
    this.context = context;
  }

  private BagBook book() {
    return BagBook.of(context.state());
  }

  /** A bag that holds nothing yet: the first whose tag is printed, or else the next number. */
  void fresh() {
    fill(book().nextEmpty());
  }

  /** The bag of this number, which holds nothing yet. */
  void fill(int number) {
    ReasonAsking.ask(
        context,
        "What is in bag " + number + "?",
        USUAL,
        what -> whose((bigPart, where) -> count(number, what, bigPart, where)));
  }

  /** A bag for what holds this big part. */
  void fillFor(BigPartRecord part) {
    count(book().nextEmpty(), part.words() + " bolts", part.number(), "");
  }

  private interface Whose {
    void take(int bigPart, String where);
  }

  private void whose(Whose taken) {
    List<Choice<Integer>> choices = new ArrayList<>();
    List<BigPartRecord> parts = new ArrayList<>(book().bigPartsOff());
    book().bigParts().stream().filter(BigPartRecord::isOn).forEach(parts::add);
    parts.forEach(
        part -> choices.add(new Choice<>(part.number(), part.words(), part.where().words())));
    if (choices.isEmpty()) {
      ownPlace(taken);
      return;
    }
    choices.add(new Choice<>(0, "Something else…", "in your own words"));
    context
        .navigator()
        .open(
            () ->
                new ChoiceScreen<>(
                    context,
                    "For what?",
                    choices,
                    number -> {
                      if (number == 0) {
                        ownPlace(taken);
                      } else {
                        taken.take(number, "");
                      }
                    }));
  }

  private void ownPlace(Whose taken) {
    context
        .navigator()
        .open(() -> new TextEntryScreen(context, "For what?", "", words -> taken.take(0, words)));
  }

  private void count(int number, String what, int bigPart, String where) {
    askCount(
        "Bag " + number,
        "How many " + what + "?",
        pieces ->
            keep(
                new BagFilled(
                    number, what, bigPart, where, pieces, List.of(), "", AtAssembly.NOT_SAID),
                Bags::fillEmpty));
  }

  private void askCount(String title, String question, Consumer<Integer> done) {
    context
        .navigator()
        .open(
            () ->
                NumberEntryScreen.digits(
                    context,
                    title,
                    question,
                    3,
                    typed -> done.accept(typed.isEmpty() ? 0 : Integer.parseInt(typed))));
  }

  private void keep(BagFilled mended) {
    keep(mended, Bags::mend);
  }

  private void keep(BagFilled filled, BiFunction<Bags, BagFilled, BagOutcome> deed) {
    context.attempt(
        () -> {
          BagOutcome came = deed.apply(new Bags(context.getJob()), filled);
          context.say(came.sentence());
          if (came instanceof BagOutcome.Logged) {
            show(filled.number());
          }
        });
    context.navigator().changed();
  }

  /** The bag's page; where it is up already, it stays. */
  private void show(int number) {
    if (!(context.navigator().current() instanceof BagScreen)) {
      context.navigator().open(() -> new BagScreen(context, number));
    }
  }

  /** Asks what is to be mended of what was said. */
  void mend(Bag bag) {
    BagFilled said = bag.filled();
    List<Choice<Runnable>> ways =
        List.of(
            new Choice<>(() -> what(said), "What it holds", said.what()),
            new Choice<>(() -> pieces(said), "How many", Integer.toString(said.pieces())),
            new Choice<>(() -> whose(said), "For what", book().belongsTo(bag)),
            new Choice<>(() -> order(said), "Washer order", said.order()),
            new Choice<>(() -> with(said), "On the threads", said.with().words()));
    context.navigator().open(() -> new ChoiceScreen<>(context, bag.words(), ways, Runnable::run));
  }

  private void what(BagFilled said) {
    words(
        "What it holds",
        said.what(),
        words -> BagBits.with(said, words, said.bigPart(), said.where(), said.pieces()));
  }

  private void pieces(BagFilled said) {
    askCount(
        said.what(),
        "How many are in the bag?",
        pieces -> keep(BagBits.with(said, said.what(), said.bigPart(), said.where(), pieces)));
  }

  private void whose(BagFilled said) {
    whose((bigPart, where) -> keep(BagBits.with(said, said.what(), bigPart, where, said.pieces())));
  }

  /** Thread and washer order, from the head of the bolt. */
  void order(BagFilled said) {
    words(
        "From the head of the bolt: washers, threads",
        said.order(),
        words -> BagBits.with(said, words, said.with()));
  }

  private void with(BagFilled said) {
    List<Choice<AtAssembly>> choices = new ArrayList<>();
    for (AtAssembly each : AtAssembly.values()) {
      choices.add(new Choice<>(each, each.words(), ""));
    }
    context
        .navigator()
        .open(
            () ->
                new ChoiceScreen<>(
                    context,
                    "On the threads at assembly",
                    choices,
                    chosen -> keep(BagBits.with(said, said.order(), chosen))));
  }

  private void words(
      String title, String now, java.util.function.Function<String, BagFilled> changed) {
    context
        .navigator()
        .open(() -> new TextEntryScreen(context, title, now, words -> keep(changed.apply(words))));
  }
}
