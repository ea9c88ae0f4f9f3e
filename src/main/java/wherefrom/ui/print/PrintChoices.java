package wherefrom.ui.print;

import java.util.ArrayList;
import java.util.List;
import wherefrom.job.print.TagChoice;
import wherefrom.job.tags.Tracking;
import wherefrom.parts.PartKind;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.NumberEntryScreen;
import wherefrom.ui.files.FilesScreen;

/** Asks what to print, and on which label stock. */
final class PrintChoices {
  private static final List<String> STOCK_FILE = List.of(".json");

  private final Desk desk;
  private final PrintTagsModel model;
  private final Runnable changed;

  /**
   * @param changed is run when something else was chosen
   */
  PrintChoices(Desk desk, PrintTagsModel model, Runnable changed) {
    this.desk = desk;
    this.model = model;
    this.changed = changed;
  }

  /** Asks what to print. */
  void what() {
    List<Choice<Runnable>> choices = new ArrayList<>();
    choices.add(choice(new TagChoice.NotYetPrinted()));
    choices.add(choice(new TagChoice.AllParts()));
    for (PartKind kind : desk.state().kinds().stream().sorted().toList()) {
      choices.add(choice(new TagChoice.OfKind(kind)));
    }
    choices.add(choice(new TagChoice.PlaceCards()));
    choices.add(choice(new TagChoice.ActionCards()));
    choices.add(choice(new TagChoice.Baskets(6)));
    choices.add(choice(new TagChoice.ScannerSetUp()));
    if (model.labels() > 0) {
      choices.add(
          new Choice<>(this::elsewhere, "Already on paper", "count what is chosen as printed"));
    }
    if (!new Tracking(desk.getJob()).offered().isEmpty()) {
      choices.add(new Choice<>(this::track, "Track more kinds of part", "then print their tags"));
    }
    desk.navigator().open(() -> new ChoiceScreen<>(desk, "What to print", choices, Runnable::run));
  }

  private Choice<Runnable> choice(TagChoice choice) {
    return new Choice<>(() -> chosen(choice), ChoiceWords.of(desk.state(), choice), "");
  }

  private void elsewhere() {
    model.order(false).ifPresent(order -> desk.attempt(() -> desk.say(model.elsewhere(order))));
    desk.navigator().changed();
  }

  private void track() {
    model.choose(new TagChoice.NotYetPrinted());
    desk.navigator().open(() -> new TrackScreen(desk));
  }

  private void chosen(TagChoice choice) {
    model.choose(choice);
    if (choice instanceof TagChoice.Baskets) {
      desk.navigator()
          .open(
              () ->
                  NumberEntryScreen.digits(
                      desk, "Basket tags", "How many, from number 1 on?", 2, this::baskets));
    }
    changed.run();
  }

  private void baskets(String typed) {
    int many = typed.isEmpty() ? 0 : Integer.parseInt(typed);
    if (many > 0) {
      model.choose(new TagChoice.Baskets(many));
    }
    changed.run();
  }

  /** Asks on which label stock. */
  void stock() {
    List<Choice<String>> choices = new ArrayList<>();
    model.stocks().forEach(each -> choices.add(new Choice<>(each.name(), each.title(), "")));
    choices.add(new Choice<>("", "A stock file of your own", "JSON"));
    desk.navigator().open(() -> new ChoiceScreen<>(desk, "Label stock", choices, this::stock));
  }

  private void stock(String name) {
    if (name.isEmpty()) {
      desk.navigator()
          .open(
              () ->
                  FilesScreen.file(desk, "Stock file", STOCK_FILE, file -> stock(file.toString())));
      return;
    }
    model.chooseStock(name);
    if (!model.trouble().isEmpty()) {
      desk.say(model.trouble());
    }
    changed.run();
  }
}
