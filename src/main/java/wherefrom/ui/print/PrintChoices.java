package wherefrom.ui.print;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import wherefrom.job.bags.BagBook;
import wherefrom.job.print.Stock;
import wherefrom.job.print.TagChoice;
import wherefrom.job.tags.Tracking;
import wherefrom.parts.PartKind;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.NumberEntryScreen;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.files.FilesScreen;

/** Asks what to print, and on which label stock. */
final class PrintChoices {
  private static final List<String> STOCK_FILE = List.of(".json");

  private final ScreenContext context;
  private final PrintTagsModel model;
  private final Runnable changed;

  /**
   * @param changed is run when something else was chosen
   */
  PrintChoices(ScreenContext context, PrintTagsModel model, Runnable changed) {
    this.context = context;
    this.model = model;
    this.changed = changed;
  }

  /** Asks what to print. */
  void what() {
    List<Choice<Runnable>> choices = new ArrayList<>();
    choices.add(choice(new TagChoice.NotYetPrinted()));
    choices.add(choice(new TagChoice.AllParts()));
    for (PartKind kind : context.state().kinds().stream().sorted().toList()) {
      choices.add(choice(new TagChoice.OfKind(kind)));
    }
    choices.add(choice(new TagChoice.PlaceCards()));
    choices.add(choice(new TagChoice.ActionCards()));
    choices.add(choice(new TagChoice.Baskets(6)));
    choices.add(choice(TagChoice.BagTags.more(12)));
    if (!BagBook.of(context.state()).bigParts().isEmpty()) {
      choices.add(choice(TagChoice.BigPartTags.all()));
    }
    choices.add(choice(new TagChoice.ScannerSetUp()));
    if (model.labels() > 0) {
      choices.add(
          new Choice<>(this::elsewhere, "Already on paper", "count what is chosen as printed"));
    }
    if (!new Tracking(context.getJob()).offered().isEmpty()) {
      choices.add(new Choice<>(this::track, "Track more kinds of part", "then print their tags"));
    }
    context
        .navigator()
        .open(() -> new ChoiceScreen<>(context, "What to print", choices, Runnable::run));
  }

  private Choice<Runnable> choice(TagChoice choice) {
    Runnable act = () -> chosen(choice);
    return new Choice<>(act, ChoiceWords.of(context.state(), choice), "", isChosen(choice));
  }

  /** How many baskets or bags there are tags for is asked after that. */
  private boolean isChosen(TagChoice choice) {
    TagChoice now = model.choice();
    return choice.equals(now)
        || (!(choice instanceof TagChoice.OfKind) && choice.getClass().equals(now.getClass()));
  }

  private void elsewhere() {
    model
        .order(false)
        .ifPresent(order -> context.attempt(() -> context.say(model.elsewhere(order))));
    context.navigator().changed();
  }

  private void track() {
    model.choose(new TagChoice.NotYetPrinted());
    context.navigator().open(() -> new TrackScreen(context));
  }

  private void chosen(TagChoice choice) {
    model.choose(choice);
    if (choice instanceof TagChoice.Baskets) {
      many("Basket tags", "How many, from number 1 on?", TagChoice.Baskets::new);
    }
    if (choice instanceof TagChoice.BagTags) {
      many("Bag tags", "How many, from the next number on?", TagChoice.BagTags::more);
    }
    changed.run();
  }

  private void many(String title, String question, IntFunction<TagChoice> choice) {
    context
        .navigator()
        .open(
            () ->
                NumberEntryScreen.digits(
                    context, title, question, 2, typed -> many(typed, choice)));
  }

  private void many(String typed, IntFunction<TagChoice> choice) {
    int many = typed.isEmpty() ? 0 : Integer.parseInt(typed);
    if (many > 0) {
      model.choose(choice.apply(many));
    }
    changed.run();
  }

  /** Asks on which label stock. */
  void stock() {
    List<Choice<String>> choices = new ArrayList<>();
    model
        .stocks()
        .forEach(
            each -> choices.add(new Choice<>(each.name(), each.title(), "").now(isChosen(each))));
    choices.add(new Choice<>("", "A stock file of your own", "JSON"));
    context
        .navigator()
        .open(() -> new ChoiceScreen<>(context, "Label stock", choices, this::stock));
  }

  private boolean isChosen(Stock stock) {
    return model.stock().filter(stock::equals).isPresent();
  }

  private void stock(String name) {
    if (name.isEmpty()) {
      context
          .navigator()
          .open(
              () ->
                  FilesScreen.file(
                      context, "Stock file", STOCK_FILE, file -> stock(file.toString())));
      return;
    }
    model.chooseStock(name);
    if (!model.trouble().isEmpty()) {
      context.say(model.trouble());
    }
    changed.run();
  }
}
