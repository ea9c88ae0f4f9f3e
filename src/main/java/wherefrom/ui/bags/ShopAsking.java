package wherefrom.ui.bags;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wherefrom.inspection.Subject;
import wherefrom.job.FigureParser;
import wherefrom.job.bags.BagOutcome;
import wherefrom.job.shop.BesideAtShop;
import wherefrom.job.shop.MachineShop;
import wherefrom.job.shop.ShopOrder;
import wherefrom.job.shop.ShopVisit;
import wherefrom.parts.BigPartKind;
import wherefrom.quantity.Dimension;
import wherefrom.rules.consequence.ShopWork;
import wherefrom.text.Words;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.NumberEntryScreen;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.TextEntryScreen;

/** Puts a bag or a big part on the slip of the visit that is out, or of a new one. */
final class ShopAsking {
  private final ScreenContext context;
  private final BagAnswers answers;
  private final Subject.Beside what;

  ShopAsking(ScreenContext context, BagAnswers answers, Subject.Beside what) {
    this.context = context;
    this.answers = answers;
    this.what = what;
  }

  /** Asks what is wanted of a big part: all work of one visit, one after the other. */
  void ask(BigPartKind kind) {
    ask(kind, List.of());
  }

  private void ask(BigPartKind kind, List<ShopOrder> wanted) {
    List<Choice<Optional<ShopWork>>> choices = new ArrayList<>();
    if (!wanted.isEmpty()) {
      choices.add(new Choice<>(Optional.empty(), "That is all", "it goes for " + words(wanted)));
    }
    BesideAtShop.works(kind).stream()
        .filter(work -> wanted.stream().noneMatch(one -> one.work() == work))
        .forEach(work -> choices.add(choice(work, Words.capital(work.words()), "")));
    choices.add(choice(ShopWork.OTHER, "Something else…", "in your own words"));
    String title = wanted.isEmpty() ? "What is wanted?" : "What else is wanted?";
    context
        .navigator()
        .open(
            () -> new ChoiceScreen<>(context, title, choices, work -> chosen(kind, wanted, work)));
  }

  private static Choice<Optional<ShopWork>> choice(ShopWork work, String words, String more) {
    return new Choice<>(Optional.of(work), words, more);
  }

  private static String words(List<ShopOrder> wanted) {
    return wanted.stream().map(ShopOrder::wanted).collect(Collectors.joining(", "));
  }

  /** Asks what is wanted of a bag, in words. */
  void askWords() {
    askWords(words -> send(List.of(order(ShopWork.OTHER, words, ""))));
  }

  private void askWords(Consumer<String> then) {
    context
        .navigator()
        .open(() -> new TextEntryScreen(context, "What is wanted?", "", said -> then.accept(said)));
  }

  private void chosen(BigPartKind kind, List<ShopOrder> wanted, Optional<ShopWork> work) {
    if (work.isEmpty()) {
      send(wanted);
    } else if (work.get() == ShopWork.OTHER) {
      askWords(words -> more(kind, wanted, order(ShopWork.OTHER, named(words), "")));
    } else if (work.get().isSized()) {
      String unit = FigureParser.usual(context.state().units(), Dimension.LENGTH).symbol();
      String title = Words.capital(work.get().words());
      String question = work.get().sizeQuestion(unit);
      context
          .navigator()
          .open(
              () ->
                  NumberEntryScreen.size(
                      context,
                      title,
                      question,
                      9,
                      size -> more(kind, wanted, order(work.get(), "", size))));
    } else {
      more(kind, wanted, order(work.get(), "", ""));
    }
  }

  private static String named(String words) {
    if (words.isBlank()) {
      throw new IllegalArgumentException("Say what is wanted.");
    }
    return words;
  }

  private void more(BigPartKind kind, List<ShopOrder> wanted, ShopOrder next) {
    ask(kind, Stream.concat(wanted.stream(), Stream.of(next)).toList());
  }

  private static ShopOrder order(ShopWork work, String words, String size) {
    return new ShopOrder(work, List.of(), "", 1, words, size, "", true);
  }

  private void send(List<ShopOrder> wanted) {
    answers.take(none -> came(new BesideAtShop(context.getJob()).send(visit(), what, wanted)));
  }

  private static BagOutcome came(MachineShop.Answer answer) {
    return answer instanceof MachineShop.Answer.Done done
        ? new BagOutcome.Logged(done.sentence())
        : new BagOutcome.Refused(((MachineShop.Answer.Refused) answer).sentence());
  }

  /** Back from the shop: counted on its slip, where it is on one. */
  BagOutcome back() {
    return came(new BesideAtShop(context.getJob()).back(what));
  }

  /** Whether a slip that is out has it. */
  boolean isOnSlip() {
    return new BesideAtShop(context.getJob()).isOnSlip(what);
  }

  /** The visit it is on; else the last of which something is still away; else a new one. */
  private int visit() {
    if (isOnSlip()) {
      return MachineShop.NEW_VISIT;
    }
    MachineShop shop = new MachineShop(context.getJob());
    return shop.visits().stream()
        .filter(visit -> visit.missing() > 0)
        .map(ShopVisit::number)
        .reduce((one, two) -> two)
        .orElse(MachineShop.NEW_VISIT);
  }
}
