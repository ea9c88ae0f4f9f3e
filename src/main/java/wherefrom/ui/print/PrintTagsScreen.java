package wherefrom.ui.print;

import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import wherefrom.files.FileNames;
import wherefrom.job.print.Nudge;
import wherefrom.job.print.PrintOrder;
import wherefrom.job.print.PrintOutcome;
import wherefrom.job.print.TagChoice;
import wherefrom.job.tags.Tracking;
import wherefrom.parts.PartKind;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.NumberEntryScreen;
import wherefrom.ui.app.Screen;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.controls.TouchKey;
import wherefrom.ui.files.FilesScreen;
import wherefrom.ui.files.Saving;

/** Printing tags and cards: what, on which label stock, from which label on. */
public final class PrintTagsScreen implements Screen {
  private static final DateTimeFormatter STAMP =
      DateTimeFormatter.ofPattern("uuuuMMdd-HHmmss", Locale.ROOT);
  private static final double KEYS_MM = 70;
  private static final double SHEET_MM = 92;
  private static final double SHEET_LONG_MM = 160;
  private static final List<String> STOCK_FILE = List.of(".json");

  private final Desk desk;
  private final PrintTagsModel model;
  private final TouchKey what;
  private final TouchKey stock;
  private final TouchKey start;
  private final TouchKey nudge;
  private final FitText count;
  private final FitText warning;
  private final SheetView sheet;
  private final HBox view;

  /**
   * @param item the part whose tag alone is meant; 0 for what is not printed yet
   */
  public PrintTagsScreen(Desk desk, int item) {
    this.desk = desk;
    Touch touch = desk.touch();
    model =
        new PrintTagsModel(desk.getJob(), desk.equipment().printer(), item, Locale.getDefault());
    what = touch.primary("", this::chooseWhat).left();
    stock = touch.primary("", this::chooseStock).left();
    start = touch.key("", this::chooseStart).left();
    nudge = touch.key("", this::chooseNudge).left();
    count = touch.heading("");
    warning = touch.small("");
    Region chosen =
        Panes.column(desk.scale(), what, stock, start, nudge, count, warning, Panes.space());
    sheet = SheetView.key(desk, (int) desk.scale().px(SHEET_LONG_MM), this::preview);
    Tiles keys = Tiles.of(desk.scale(), 1, keys(touch));
    double wide = Math.max(KEYS_MM, keys.minWidth(-1) / desk.scale().pixelsPerMm());
    view = Panes.row(desk.scale(), Panes.grow(chosen));
    if (!touch.isLarge()) {
      view.getChildren().add(Panes.wide(sheet, SHEET_MM, desk.scale()));
    }
    view.getChildren().add(Panes.wide(keys, wide, desk.scale()));
  }

  private Node[] keys(Touch touch) {
    TouchKey print = touch.primary("Print…", () -> print(false));
    TouchKey save = touch.primary("Save PDF…", () -> save(false));
    return touch.isLarge()
        ? new Node[] {
          print, save, touch.key("See it", this::preview), touch.key("Test page", this::testPage)
        }
        : new Node[] {
          print,
          save,
          touch.key("Test page: print", () -> print(true)),
          touch.key("Test page: PDF", () -> save(true))
        };
  }

  private void testPage() {
    List<Choice<Runnable>> ways =
        List.of(
            new Choice<>(() -> print(true), "Print…", ""),
            new Choice<>(() -> save(true), "Save PDF…", ""));
    desk.navigator().open(() -> new ChoiceScreen<>(desk, "Test page", ways, Runnable::run));
  }

  private void preview() {
    Optional<PrintOrder> order = model.order(false);
    desk.navigator().open(() -> new PreviewScreen(desk, order));
  }

  @Override
  public String title() {
    return "Print tags";
  }

  @Override
  public Region view() {
    return view;
  }

  @Override
  public void shown() {
    what.setWords("What: " + model.choiceWords());
    stock.setWords("On: " + model.stockWords());
    start.setWords("Start at label " + model.start());
    String brief = model.nudge().equals(Nudge.NONE) ? "Position: not moved" : "Position: moved";
    nudge.setWords(desk.touch().brief(NudgeScreen.words(model.nudge()), brief));
    count.setWords(model.count());
    String said = model.warning();
    warning.setWords(said);
    warning.setVisible(!said.isEmpty());
    warning.setManaged(!said.isEmpty());
    if (!desk.touch().isLarge()) {
      sheet.show(model.order(false));
    }
  }

  @Override
  public void changed() {
    shown();
  }

  private void chooseWhat() {
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
    if (!new Tracking(desk.getJob()).offered().isEmpty()) {
      choices.add(new Choice<>(this::track, "Track more kinds of part", "then print their tags"));
    }
    desk.navigator().open(() -> new ChoiceScreen<>(desk, "What to print", choices, Runnable::run));
  }

  private Choice<Runnable> choice(TagChoice choice) {
    return new Choice<>(() -> chosen(choice), ChoiceWords.of(desk.state(), choice), "");
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
    shown();
  }

  private void baskets(String typed) {
    int many = typed.isEmpty() ? 0 : Integer.parseInt(typed);
    if (many > 0) {
      model.choose(new TagChoice.Baskets(many));
    }
    shown();
  }

  private void chooseStock() {
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
    shown();
  }

  private void chooseStart() {
    model
        .stock()
        .ifPresent(
            sheet ->
                desk.navigator()
                    .open(() -> new SheetScreen(desk, sheet, model.start(), model::startAt)));
  }

  private void chooseNudge() {
    desk.navigator().open(() -> new NudgeScreen(desk, model));
  }

  private Optional<PrintOrder> order(boolean testPage) {
    Optional<PrintOrder> order = model.order(testPage);
    if (order.isEmpty()) {
      desk.say(model.count());
    }
    return order;
  }

  private void print(boolean testPage) {
    order(testPage).ifPresent(order -> work(order, () -> desk.equipment().printer().print(order)));
  }

  private void save(boolean testPage) {
    order(testPage).ifPresent(this::save);
  }

  private void save(PrintOrder order) {
    String stamp = STAMP.format(ZonedDateTime.now(desk.equipment().clock()));
    String name = FileNames.of(desk.state().name(), model.fileKind(order) + " " + stamp, ".pdf");
    new Saving<>(
            desk,
            "Where to save the PDF",
            name,
            out -> desk.equipment().printer().save(order, out),
            (file, outcome) -> printed(order, outcome, " The file is " + file + "."))
        .ask();
  }

  private void work(PrintOrder order, Callable<PrintOutcome> work) {
    desk.longWork("Printing", work, outcome -> printed(order, outcome, ""));
  }

  private void printed(PrintOrder order, PrintOutcome outcome, String where) {
    desk.attempt(
        () -> {
          String said = model.printed(order, outcome);
          desk.say(outcome instanceof PrintOutcome.Printed ? said + where : said);
        });
    desk.navigator().changed();
  }
}
