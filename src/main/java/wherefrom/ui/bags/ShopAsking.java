package wherefrom.ui.bags;

import java.util.ArrayList;
import java.util.List;
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

  /** Asks what is wanted of a big part. */
  void ask(BigPartKind kind) {
    List<Choice<ShopWork>> choices = new ArrayList<>();
    BesideAtShop.works(kind)
        .forEach(work -> choices.add(new Choice<>(work, Words.capital(work.words()), "")));
    choices.add(new Choice<>(ShopWork.OTHER, "Something else…", "in your own words"));
    context
        .navigator()
        .open(() -> new ChoiceScreen<>(context, "What is wanted?", choices, this::chosen));
  }

  /** Asks what is wanted of a bag, in words. */
  void askWords() {
    context
        .navigator()
        .open(
            () ->
                new TextEntryScreen(
                    context, "What is wanted?", "", words -> send(ShopWork.OTHER, words, "")));
  }

  private void chosen(ShopWork work) {
    if (work == ShopWork.OTHER) {
      askWords();
    } else if (work.isSized()) {
      String unit = FigureParser.usual(context.state().units(), Dimension.LENGTH).symbol();
      String title = Words.capital(work.words());
      context
          .navigator()
          .open(
              () ->
                  NumberEntryScreen.size(
                      context, title, work.sizeQuestion(unit), 9, size -> send(work, "", size)));
    } else {
      send(work, "", "");
    }
  }

  private void send(ShopWork work, String words, String size) {
    ShopOrder order = new ShopOrder(work, List.of(), "", 1, words, size, "", true);
    answers.take(none -> came(new BesideAtShop(context.getJob()).send(visit(), what, order)));
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

  /** The last visit of which something is still away; else a new one. */
  private int visit() {
    MachineShop shop = new MachineShop(context.getJob());
    return shop.visits().stream()
        .filter(visit -> visit.missing() > 0)
        .map(ShopVisit::number)
        .reduce((one, two) -> two)
        .orElse(MachineShop.NEW_VISIT);
  }
}
